package putback.app.papers;

import java.util.Locale;

/** The sheets that a garage's printer holds. */
public enum PaperSize {
    A4("210mm 297mm", 210, 297),
    LETTER("8.5in 11in", 215.9, 279.4),
    /** A roll of labels, 62 mm wide, cut every 29 mm. */
    ROLL("62mm 29mm", 62, 29);

    private final String css;
    private final double widthMm;
    private final double heightMm;

    PaperSize(String css, double widthMm, double heightMm) {
        this.css = css;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** Width and height as a style sheet has them. */
    public String css() {
        return css;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** {@code a4}, {@code letter} or {@code roll}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
