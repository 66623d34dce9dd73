package putback.app.wheels;

/** Where a drawing is looked at. */
public enum DrawnFor {
    /** A telephone: 358 px wide, in the colours of the page. */
    PHONE,
    /** A screen, in the colours of the page. */
    SCREEN,
    /** A file or a sheet of paper: always light, its colours written out for programs that know no variables. */
    FILE;

    boolean narrow() {
        return this == PHONE;
    }
}
