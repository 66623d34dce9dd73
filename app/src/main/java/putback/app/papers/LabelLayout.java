package putback.app.papers;

/** How labels lie on their sheet, in mm. A common cut of each paper (common practice, no source). */
public enum LabelLayout {
    /** 24 on A4: 70 by 37 mm, edge to edge. */
    A4_3_BY_8(PaperSize.A4, 3, 8, 70, 37, 0, 0.5, 70),
    /** 30 on Letter: 2 5/8 by 1 in. */
    LETTER_3_BY_10(PaperSize.LETTER, 3, 10, 66.675, 25.4, 4.7625, 12.7, 69.85),
    /** One by one from a roll. */
    ROLL_62_BY_29(PaperSize.ROLL, 1, 1, 62, 29, 0, 0, 62);

    private static final double MOST_CODE = 24;
    private static final double GAP = 3;

    private final PaperSize paper;
    private final int across;
    private final int down;
    private final double width;
    private final double height;
    private final double marginLeft;
    private final double marginTop;
    private final double pitch;

    LabelLayout(
            PaperSize paper,
            int across,
            int down,
            double width,
            double height,
            double marginLeft,
            double marginTop,
            double pitch) {
        this.paper = paper;
        this.across = across;
        this.down = down;
        this.width = width;
        this.height = height;
        this.marginLeft = marginLeft;
        this.marginTop = marginTop;
        this.pitch = pitch;
    }

    /** The layout that goes with a paper. */
    static LabelLayout on(PaperSize paper) {
        return switch (paper) {
            case A4 -> A4_3_BY_8;
            case LETTER -> LETTER_3_BY_10;
            case ROLL -> ROLL_62_BY_29;
        };
    }

    /** How many labels a page holds. */
    public int perPage() {
        return across * down;
    }

    /** Sizes for the style sheet. A page is a little lower than the paper, so that rounding never starts another. */
    public String css() {
        return "@page { size: " + paper.css() + "; margin: 0; }\n.page { width: " + paper.widthMm() + "mm; height: "
                + (paper.heightMm() - 0.4) + "mm; }\n.label { width: " + width + "mm; height: " + height
                + "mm; }\n.words { width: " + (width - code() - 2 * GAP) + "mm; height: " + (height - GAP)
                + "mm; }\n.code { left: " + (width - code() - GAP / 2) + "mm; top: " + GAP / 2 + "mm; width: " + code()
                + "mm; }\n.code svg { width: " + code() + "mm; height: " + code() + "mm; }";
    }

    /** As large as the label allows, with its quiet zone. */
    private double code() {
        return Math.min(MOST_CODE, height - GAP);
    }

    /** From the left edge of the page, in mm. */
    public double left(Label label) {
        return marginLeft + label.place() % across * pitch;
    }

    /** From the top edge of the page, in mm. */
    public double top(Label label) {
        int row = label.place() / across;
        return marginTop + row * height;
    }
}
