package putback.store.books;

/**
 * Ride heights at arrival, hub centre to arch, as written; empty where not measured.
 */
public record Heights(String frontLeft, String frontRight, String rearLeft, String rearRight) {
    /** Nothing measured. */
    public static final Heights NONE = new Heights("", "", "", "");
}
