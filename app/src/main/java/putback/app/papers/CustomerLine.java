package putback.app.papers;

import java.util.List;

/**
 * Whose car it is. Whatever is not known is empty.
 *
 * @param address line by line
 * @param phone where somebody answers during the day
 */
public record CustomerLine(String name, List<String> address, String phone, String mail) {
    public static final CustomerLine NONE = new CustomerLine("", List.of(), "", "");

    public CustomerLine {
        address = List.copyOf(address);
    }

    /** Name, address and how to reach them, line by line. */
    public List<String> lines() {
        Lines lines = new Lines();
        lines.add("", name);
        for (String line : address) {
            lines.add("", line);
        }
        lines.add("", phone.replace(' ', Lines.FIRM));
        lines.add("", mail);
        return lines.all();
    }
}
