package putback.app.json;

import java.util.List;
import putback.angles.bounce.Decay;

/** The damping of one corner or two, for other programs. */
public final class BounceJson {
    private BounceJson() {}

    /**
     * One object, ASCII.
     *
     * @param decays one, or left and right
     */
    public static String of(List<Decay> decays) {
        JsonWriter json = new JsonWriter(300);
        json.beginObject();
        if (decays.size() == 1) {
            keys(json, decays.get(0));
            return json.endObject().toString();
        }
        keys(json.key("left").beginObject(), decays.get(0));
        json.endObject();
        keys(json.key("right").beginObject(), decays.get(1));
        json.endObject();
        double left = decays.get(0).dampingRatio();
        double right = decays.get(1).dampingRatio();
        json.key("weaker").value(left < right ? "left" : right < left ? "right" : null);
        json.key("weakerShare").number(Math.min(left, right) / Math.max(left, right));
        return json.endObject().toString();
    }

    private static void keys(JsonWriter json, Decay decay) {
        json.key("dampingRatio").number(decay.dampingRatio());
        json.key("frequencyHz").number(decay.frequencyHz());
        json.key("cycles").number(decay.cycles());
        json.key("fit").number(decay.fit());
        json.key("undampedHz").number(decay.naturalHz());
        json.key("leftAfterACycle").number(decay.leftAfterACycle());
        json.key("dampingRatioByPeaks").number(decay.byPeaks());
    }
}
