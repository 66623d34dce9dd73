package putback.store.books;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.ledger.Event;

/** An event as the one line of JSON in which it is kept: exactly what is sealed, in one fixed order, ASCII. */
final class EventText {
    private static final int ROUGH = 240;
    private static final String HEX = "0123456789abcdef";

    private final StringBuilder text = new StringBuilder(ROUGH).append('{');

    private EventText() {}

    static String of(Event event) {
        EventText line = new EventText();
        line.put("id", event.id());
        line.put("at", event.at() == null ? null : event.at().toString());
        line.put("by", orNull(event.by()));
        line.put("device", orNull(event.signature().device()));
        Long seq = event.signature().seq();
        line.bare("seq", seq == null ? null : seq.toString());
        line.put("do", event.did().word());
        line.put("joint", event.joint());
        line.put("part", event.part());
        line.list("with", event.with());
        line.put("aid", event.aid());
        line.put("followUp", event.followUp());
        line.put("height", event.height() == null ? null : event.height().word());
        line.bare("torqueNm", number(event.torqueNm()));
        line.bare("angleDeg", number(event.angleDeg()));
        line.put("wrench", event.wrench());
        line.put("untorqued", event.untorqued());
        line.put("reason", event.reason());
        line.put("corrects", event.corrects());
        return line.text.append('}').toString();
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    private static @Nullable String number(@Nullable Double value) {
        return value == null ? null : BigDecimal.valueOf(value).toPlainString();
    }

    private void put(String key, @Nullable String value) {
        if (value != null) {
            key(key);
            quote(value);
        }
    }

    private void bare(String key, @Nullable String value) {
        if (value != null) {
            key(key);
            text.append(value);
        }
    }

    private void list(String key, List<String> values) {
        if (!values.isEmpty()) {
            key(key);
            char before = '[';
            for (String value : values) {
                text.append(before);
                quote(value);
                before = ',';
            }
            text.append(']');
        }
    }

    private void key(String key) {
        if (text.length() > 1) {
            text.append(',');
        }
        text.append('"').append(key).append("\":");
    }

    private void quote(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '"' || c == '\\') {
                text.append('\\').append(c);
            } else if (c >= ' ' && c < 127) {
                text.append(c);
            } else {
                text.append("\\u");
                for (int shift = 12; shift >= 0; shift -= 4) {
                    text.append(HEX.charAt(c >> shift & 15));
                }
            }
        }
        text.append('"');
    }
}
