package putback.store.sheets;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Signature;
import putback.quantity.Shown;
import putback.sheet.Nearest;
import putback.store.sheets.Node.Entries;

/** Reads one event of a ledger. */
record EventReader(Faults faults) {
    /** Null, with the fault told, when nobody can tell what was done. */
    @Nullable
    Event event(Entries entries) {
        JsonFields fields = new JsonFields(entries, faults);
        Did did = did(fields);
        if (did == null) {
            return null;
        }
        Event event = new Event(
                signature(fields),
                did,
                fields.text("joint"),
                fields.text("part"),
                fields.texts("with"),
                fields.text("aid"),
                fields.text("followUp"),
                fields.height("height"),
                fields.number("torqueNm"),
                fields.number("angleDeg"),
                fields.named("wrench"),
                fields.text("untorqued"),
                fields.text("reason"),
                fields.text("corrects"));
        complete(event, fields);
        return event;
    }

    private Signature signature(JsonFields fields) {
        return new Signature(
                fields.text("id"),
                at(fields),
                or(fields.text("by"), ""),
                or(fields.text("device"), ""),
                fields.count("seq"));
    }

    private static String or(@Nullable String text, String otherwise) {
        return text == null ? otherwise : text;
    }

    private @Nullable Did did(JsonFields fields) {
        String word = fields.text("do");
        Did did = word == null ? null : Did.of(word);
        if (word == null) {
            faults.add(fields.place(), "the event has no do, which it needs");
        } else if (did == null) {
            List<String> words = new ArrayList<>();
            for (Did one : Did.values()) {
                words.add(one.word());
            }
            String near = Nearest.to(word, words);
            faults.add(
                    fields.place(),
                    "\"" + Shown.text(word) + "\" is nothing that is done; write "
                            + (near.isEmpty() ? "one of " + String.join(", ", words) : near));
        }
        return did;
    }

    private void complete(Event event, JsonFields fields) {
        String missing =
                switch (event.did()) {
                    case UNDO, START, RUN_DOWN, TIGHTEN, BREAK_LOOSE, REPLACE_FASTENER, SECOND_LOOK ->
                        event.joint() == null ? "joint" : "";
                    case TAKE_OFF, OFFER_UP, RENEW, SUPPORT, RELEASE -> event.part() == null ? "part" : "";
                    case FOLLOW_UP -> event.followUp() == null ? "followUp" : "";
                    case CARRY -> carried(event);
                    case CORRECT -> event.corrects() == null ? "corrects" : event.reason() == null ? "reason" : "";
                    case BREAK -> event.joint() == null && event.part() == null ? "joint or part" : "";
                    default -> "";
                };
        if (!missing.isEmpty()) {
            faults.add(fields.place(), event.did().word() + " has no " + missing + ", which it needs");
        }
    }

    private static String carried(Event event) {
        if (event.reason() == null) {
            return "reason";
        }
        boolean named = event.joint() != null || event.part() != null || event.followUp() != null;
        return named ? "" : "joint, part or followUp";
    }

    private @Nullable Instant at(JsonFields fields) {
        String text = fields.text("at");
        if (text == null) {
            return null;
        }
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException notOne) {
            faults.add(fields.place(), "at: \"" + Shown.text(text) + "\" is no time, such as 2026-03-02T09:14:05Z");
            return null;
        }
    }
}
