package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import putback.labour.seized.Hazard;
import putback.labour.seized.Nearby;
import putback.labour.seized.Row;
import putback.labour.seized.Try;

/** What to mind before a fastener is attempted: one sentence or two each, the same in the terminal, at the car and in JSON. */
public final class RowCautions {
    private RowCautions() {}

    /** In the order in which they matter; none where nothing can be hurt. */
    public static List<String> of(Row row) {
        List<String> cautions = new ArrayList<>();
        if (row.nearby().contains(Nearby.HIGH_VOLTAGE)) {
            cautions.add(
                    "High voltage nearby: nothing here before a trained person has isolated it and proved it dead.");
        }
        look(cautions, row);
        List<String> unknown = row.unknownHazards();
        if (!unknown.isEmpty()) {
            cautions.add("Nobody has said whether these bring flame, heat, sparks or blows: "
                    + String.join(", ", unknown) + ". Say it with hazards, and look before each.");
        }
        if (flameAfterPenetrant(row.tries())) {
            cautions.add("Penetrant burns: wipe it off and let it dry before there is a flame.");
        }
        if (penetrantAfterHeat(row.tries())) {
            cautions.add("Penetrant burns: not on what is still hot.");
        }
        return cautions;
    }

    private static boolean penetrantAfterHeat(List<Try> tries) {
        boolean hot = false;
        for (Try one : tries) {
            if (hot && one.attempt().id().contains("penetrant")) {
                return true;
            }
            hot |= one.attempt().hazards().contains(Hazard.FLAME)
                    || one.attempt().hazards().contains(Hazard.HOT_METAL);
        }
        return false;
    }

    private static void look(List<String> cautions, Row row) {
        List<String> hidden = new ArrayList<>();
        for (Nearby one : row.notNamed()) {
            hidden.add(one.word());
        }
        if (!hidden.isEmpty()) {
            String before = String.join(", ", row.hazardous());
            cautions.add(
                    row.nearby().isEmpty()
                            ? "Nobody has said what is near. Look first, before " + before + ": "
                                    + String.join(", ", hidden) + "?"
                            : "Not named as near, so look first, before " + before + ": " + String.join(", ", hidden)
                                    + "?");
        }
    }

    private static boolean flameAfterPenetrant(List<Try> tries) {
        boolean wet = false;
        for (Try one : tries) {
            if (wet && one.attempt().hazards().contains(Hazard.FLAME)) {
                return true;
            }
            wet |= one.attempt().id().contains("penetrant");
        }
        return false;
    }
}
