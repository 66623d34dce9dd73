package putback.tightening.toolbox;

import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.quantity.Parsed;

/**
 * A tool of a size.
 *
 * @param size across flats, above 0
 */
public record Tool(ToolForm form, Length size) {
    /** Two sizes of one name: a hundredth of a millimetre apart at most. */
    private static final double SAME_MM = 0.01;

    /** The tool that a plan means by {@code 18 mm socket}; null for one without a size, such as a trim lever. */
    public static @Nullable Tool named(String text) {
        for (ToolForm form : ToolForm.values()) {
            String end = " " + form.word();
            if (!text.endsWith(end)) {
                continue;
            }
            Parsed<Length> size = Length.parse(text.substring(0, text.length() - end.length()));
            if (size instanceof Parsed.Value<Length> read && read.value().millimetres() > 0) {
                return new Tool(form, read.value());
            }
        }
        return null;
    }

    boolean isSize(Length other) {
        return Math.abs(size.millimetres() - other.millimetres()) <= SAME_MM;
    }

    /** Such as {@code 18 mm socket}. */
    public String text() {
        return size.acrossFlats() + " " + form.word();
    }
}
