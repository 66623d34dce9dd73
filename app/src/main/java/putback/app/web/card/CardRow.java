package putback.app.web.card;

import java.util.Map;

/**
 * One fixing on the fill-in card.
 *
 * @param id of the joint, with its side where it differs by side
 * @param name with its side
 * @param pieces how many of what
 * @param fields by key of the sheet; empty where nothing turns
 * @param once whether a new one goes on
 * @param check what can be said of its torque
 * @param apart {@code splits} where left and right may be told apart, {@code joins} where they are; empty where there is
 *     one only
 */
public record CardRow(
        String id, String name, String pieces, Map<String, Field> fields, boolean once, CardCheck check, String apart) {
    public CardRow {
        fields = Map.copyOf(fields);
    }

    /**
     * One value.
     *
     * @param value as typed; empty where the sheets below are left to say it
     * @param below what they say, or that it is not known
     * @param fault what is wrong with what was typed; empty for nothing
     */
    public record Field(String value, String below, String fault) {}

    /** The one under a key. */
    public Field field(String key) {
        Field field = fields.get(key);
        return field == null ? new Field("", "", "") : field;
    }

    /** Whether anything is turned and tightened here. */
    public boolean turns() {
        return !fields.isEmpty();
    }

    /** Thread, class and condition as they hold, for judging a torque that is typed. */
    public String holds(String key) {
        Field field = field(key);
        return field.value().isEmpty() ? field.below().equals(CardRows.NOT_KNOWN) ? "" : field.below() : field.value();
    }
}
