package putback.app.json;

import putback.quantity.Force;
import putback.quantity.Torque;
import putback.tightening.Plausibility;
import putback.tightening.Tightness;

/** How tight a fastener is, for other programs. */
public final class TightnessJson {
    private TightnessJson() {}

    /** One object, ASCII. */
    public static String of(Tightness answer) {
        JsonWriter json = new JsonWriter(1500);
        json.beginObject();
        json.key("thread").value(answer.asked().thread().designation());
        json.key("class").value(answer.asked().grade().mark());
        json.key("stressAreaMm2").number(answer.asked().thread().stressAreaMm2());
        json.key("proofLoadKn").number(answer.proofLoad().kilonewtons());
        json.key("clampKn").number(answer.clamp().kilonewtons());
        json.key("proofUse").number(answer.proofUse());
        json.key("yieldUse").number(answer.yieldUse());
        json.key("torqueNm").number(answer.torque().newtonMetres());
        json.key("torqueLbfFt").number(answer.torque().poundFeet());
        range(
                json,
                "clampRangeKn",
                answer.clampLow().kilonewtons(),
                answer.clampHigh().kilonewtons());
        torques(json, "looseningNm", answer.looseningLow(), answer.looseningHigh());
        Force after = answer.clampAfterAngle();
        json.key("clampAfterAngleKn").number(after == null ? null : after.kilonewtons());
        json.key("plausible").value(answer.plausible());
        Plausibility plausibility = answer.plausibility();
        json.key("reading").value(word(plausibility.verdict()));
        torques(json, "fullyUsedNm", plausibility.low(), plausibility.high());
        return json.key("notes").strings(answer.notes()).endObject().toString();
    }

    private static String word(Plausibility.Verdict verdict) {
        return switch (verdict) {
            case FITS -> "fits";
            case CANNOT_TELL -> "cannot tell";
            case WRONG -> "cannot be right";
        };
    }

    private static void torques(JsonWriter json, String key, Torque low, Torque high) {
        range(json, key, low.newtonMetres(), high.newtonMetres());
    }

    private static void range(JsonWriter json, String key, double low, double high) {
        json.key(key).beginArray().number(low).number(high).endArray();
    }
}
