package putback.app.web.job;

import java.util.Map;

/**
 * What was typed into one form of a job's page and could not be kept yet: it stands there again.
 *
 * @param form the last part of its address, such as {@code finding}; empty for none
 */
public record Typed(String form, Map<String, String> values) {
    /** Nothing. */
    static final Typed NOTHING = new Typed("", Map.of());

    public Typed {
        values = Map.copyOf(values);
    }

    /** Whether it is this form. */
    public boolean isIn(String name) {
        return form.equals(name);
    }

    /** What was typed into a field of a form, or what stands there otherwise. */
    public String in(String name, String field, String otherwise) {
        String value = isIn(name) ? values.get(field) : null;
        return value == null ? otherwise : value;
    }
}
