package putback.app.web.desk;

import java.util.Map;

/**
 * The garage's settings as their page shows them.
 *
 * @param said what is wrong; empty for nothing
 */
public record SettingView(Map<String, String> values, String said) {
    public SettingView {
        values = Map.copyOf(values);
    }

    /** The value of a setting; empty where nothing was said. */
    public String value(String name) {
        String value = values.get(name);
        return value == null ? "" : value;
    }

    /** Whether a setting has this value. */
    public boolean is(String name, String word) {
        return value(name).equals(word);
    }
}
