package putback.app.json;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes JSON from left to right. The commas come by themselves; the caller keeps brackets in pairs. */
public final class JsonWriter {
    private static final String HEX = "0123456789abcdef";

    private final StringBuilder text;
    private boolean first = true;

    public JsonWriter(int roughLength) {
        text = new StringBuilder(roughLength);
    }

    public JsonWriter beginObject() {
        return begin('{');
    }

    public JsonWriter endObject() {
        return end('}');
    }

    public JsonWriter beginArray() {
        return begin('[');
    }

    public JsonWriter endArray() {
        return end(']');
    }

    /** The key of what is written next. */
    public JsonWriter key(String key) {
        comma();
        quote(key);
        text.append(':');
        first = true;
        return this;
    }

    /** A string; null where there is none. */
    public JsonWriter value(@Nullable String value) {
        comma();
        if (value == null) {
            text.append("null");
        } else {
            quote(value);
        }
        return this;
    }

    public JsonWriter value(int value) {
        comma();
        text.append(value);
        return this;
    }

    public JsonWriter value(boolean value) {
        comma();
        text.append(value);
        return this;
    }

    /** An exact decimal, never with an exponent. */
    public JsonWriter value(BigDecimal value) {
        comma();
        text.append(value.toPlainString());
        return this;
    }

    /** The shortest decimal that reads back as the same number; null where there is none or it is not finite. */
    public JsonWriter number(@Nullable Double value) {
        comma();
        if (value == null || Double.isNaN(value) || Double.isInfinite(value)) {
            text.append("null");
            return this;
        }
        String shortest = Double.toString(value);
        text.append(shortest.endsWith(".0") ? shortest.substring(0, shortest.length() - 2) : shortest);
        return this;
    }

    /** JSON that somebody else wrote. */
    public JsonWriter raw(String written) {
        comma();
        text.append(written);
        return this;
    }

    /** A list of strings. */
    public JsonWriter strings(List<String> values) {
        beginArray();
        for (String value : values) {
            value(value);
        }
        return endArray();
    }

    private JsonWriter begin(char bracket) {
        comma();
        text.append(bracket);
        first = true;
        return this;
    }

    private JsonWriter end(char bracket) {
        text.append(bracket);
        first = false;
        return this;
    }

    private void comma() {
        if (!first) {
            text.append(',');
        }
        first = false;
    }

    private void quote(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            switch (c) {
                case '"' -> text.append("\\\"");
                case '\\' -> text.append("\\\\");
                case '\n' -> text.append("\\n");
                case '\t' -> text.append("\\t");
                default -> {
                    if (c >= ' ' && c < 127) {
                        text.append(c);
                    } else {
                        escape(c);
                    }
                }
            }
        }
        text.append('"');
    }

    private void escape(char c) {
        text.append("\\u");
        for (int shift = 12; shift >= 0; shift -= 4) {
            text.append(HEX.charAt(c >> shift & 15));
        }
    }

    /** What was written so far. */
    @Override
    public String toString() {
        return text.toString();
    }
}
