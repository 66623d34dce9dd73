package putback.angles.meaning;

/**
 * Something that readings point to.
 *
 * @param sign what is seen
 * @param pointsTo what it may come from, or what it would do
 * @param because the reasoning
 * @param source who says so
 */
public record Pointer(String sign, String pointsTo, String because, String source) {
    /** As a sentence or two. */
    public String text() {
        return sign + ": points to " + pointsTo + ", since " + because + " (" + source + ").";
    }
}
