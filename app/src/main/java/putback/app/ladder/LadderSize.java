package putback.app.ladder;

/** What a ladder is drawn for. */
public enum LadderSize {
    /** A telephone: 390 px wide, figures between the rails. */
    NARROW,
    /** A screen: 1280 px wide, figures beside the rails. */
    WIDE,
    /** A sheet of paper: as wide as the screen's, always light, its colours written out for printers' software. */
    PAPER;

    boolean wide() {
        return this != NARROW;
    }

    boolean onScreen() {
        return this != PAPER;
    }

    String word() {
        return switch (this) {
            case NARROW -> "narrow";
            case WIDE -> "wide";
            case PAPER -> "paper";
        };
    }
}
