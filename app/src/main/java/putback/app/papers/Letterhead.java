package putback.app.papers;

import java.util.List;

/**
 * Whose paper it is. Whatever is not known is empty, and is then not printed.
 *
 * @param address line by line
 * @param taxNumber as the law of the place names it
 * @param registration of the business, as the law of the place names it
 */
public record Letterhead(
        String garage, List<String> address, String phone, String mail, String taxNumber, String registration) {
    /** A plain sheet. */
    public static final Letterhead NONE = new Letterhead("", List.of(), "", "", "", "");

    public Letterhead {
        address = List.copyOf(address);
    }

    /** What stands below the name, line by line. */
    public List<String> lines() {
        Lines lines = new Lines();
        for (String line : address) {
            lines.add("", line);
        }
        lines.add("", phone.replace(' ', Lines.FIRM));
        lines.add("", mail);
        lines.add("Tax no. ", taxNumber);
        lines.add("Registered ", registration);
        return lines.all();
    }
}
