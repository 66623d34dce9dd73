package putback.ledger.chain;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import putback.ledger.Event;

/**
 * An event as bytes, the same wherever it is reckoned: the line {@code putback-event-1}, then for each thing that it has a
 * line {@code KEY:LENGTH:VALUE}, in one fixed order. The length is that of the value in bytes of UTF-8, so that no value can
 * pass for another line.
 */
public final class Canonical {
    private static final String HEAD = "putback-event-1\n";

    private final StringBuilder text = new StringBuilder(HEAD);

    private Canonical() {}

    /** The bytes of an event. */
    public static byte[] bytes(Event event) {
        Canonical canonical = new Canonical();
        canonical.signature(event);
        canonical.put("do", event.did().word());
        canonical.put("joint", event.joint());
        canonical.put("part", event.part());
        for (String part : event.with()) {
            canonical.put("with", part);
        }
        canonical.put("aid", event.aid());
        canonical.put("followUp", event.followUp());
        canonical.put("height", event.height() == null ? null : event.height().word());
        canonical.put("torqueNm", number(event.torqueNm()));
        canonical.put("angleDeg", number(event.angleDeg()));
        canonical.put("wrench", event.wrench());
        canonical.put("untorqued", event.untorqued());
        canonical.put("reason", event.reason());
        canonical.put("corrects", event.corrects());
        return canonical.text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void signature(Event event) {
        Instant at = event.at();
        Long seq = event.signature().seq();
        put("id", event.id());
        put("at", at == null ? null : time(at));
        put("by", orNull(event.by()));
        put("device", orNull(event.signature().device()));
        put("seq", seq == null ? null : Long.toString(seq));
    }

    /** Seconds since 1970 in UTC, a point, and nine digits of a second. */
    private static String time(Instant at) {
        return BigDecimal.valueOf(at.getEpochSecond())
                .add(BigDecimal.valueOf(at.getNano(), 9))
                .setScale(9)
                .toPlainString();
    }

    /** The shortest decimal that reads back as the same number, without an exponent or zeros at its end. */
    private static @Nullable String number(@Nullable Double value) {
        if (value == null) {
            return null;
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    private void put(String key, @Nullable String value) {
        if (value != null) {
            int length = value.getBytes(StandardCharsets.UTF_8).length;
            text.append(key)
                    .append(':')
                    .append(length)
                    .append(':')
                    .append(value)
                    .append('\n');
        }
    }
}
