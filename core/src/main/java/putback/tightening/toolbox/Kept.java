package putback.tightening.toolbox;

/**
 * A tool or an aid without a size: a trim lever, stands, a spring compressor.
 *
 * @param count how many, at least 1
 * @param rating what it may carry, as its plate says, such as {@code 3000 kg}; empty where nobody said
 * @param note anything else about it; empty for nothing
 */
public record Kept(String name, int count, String rating, String note) {
    /** Such as {@code rated 3000 kg; two hooks}; empty where nothing is known. */
    public String remark() {
        String rated = rating.isEmpty() ? "" : "rated " + rating;
        return rated + (rated.isEmpty() || note.isEmpty() ? "" : "; ") + note;
    }
}
