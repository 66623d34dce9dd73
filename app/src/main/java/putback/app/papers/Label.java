package putback.app.papers;

/**
 * What sticks on a bag of fasteners.
 *
 * @param place on its page, from 0
 * @param bag such as {@code Bag 3}
 * @param side {@code left}, {@code right} or nothing
 * @param pieces how many, of what size
 * @param once whether they are not to be used again
 * @param code the QR code, SVG
 */
public record Label(
        int place, String bag, String side, String name, String pieces, boolean once, String job, String code) {
    private static final int LONG = 30;
    private static final int LONGEST = 60;

    /** How large its name is written: {@code usual}, {@code long} or {@code longest}. */
    public String letters() {
        return name.length() > LONGEST ? "longest" : name.length() > LONG ? "long" : "usual";
    }
}
