package putback.app.json;

import org.jspecify.annotations.Nullable;
import putback.angles.linkage.Adjustment;
import putback.angles.linkage.Lock;
import putback.angles.linkage.StrutJob;
import putback.angles.linkage.Travel;
import putback.angles.linkage.WheelPosition;
import putback.angles.reach.Hanging;
import putback.angles.reach.Reach;

/** A wheel through its travel, for other programs. */
public final class TravelJson {
    private TravelJson() {}

    /** One object, ASCII. */
    public static String of(
            Travel travel, @Nullable Adjustment adjustment, @Nullable StrutJob job, @Nullable Hanging hanging) {
        JsonWriter json = new JsonWriter(4000);
        json.beginObject().key("travel").beginArray();
        for (WheelPosition wheel : travel.positions()) {
            wheel(json, wheel);
        }
        json.endArray();
        if (adjustment != null) {
            json.key("adjust").beginObject();
            json.key("boltShiftMm").number(adjustment.boltShiftMm());
            json.key("rodMm").number(adjustment.rodMm());
            json.key("rodTurns").number(adjustment.rodTurns());
            json.key("doubts").strings(adjustment.doubts()).endObject();
            wheel(json.key("before"), adjustment.before());
            wheel(json.key("after"), adjustment.after());
        }
        if (job != null) {
            json.key("expect").beginObject();
            wheel(json.key("before"), job.before());
            wheel(json.key("playIn"), job.inward());
            wheel(json.key("playOut"), job.outward());
            json.endObject();
        }
        if (hanging != null) {
            json.key("reach").beginObject();
            reach(json.key("drop"), "Mm", hanging.dropping());
            reach(json.key("lean"), "Deg", hanging.leaning());
            json.endObject();
        }
        json.key("locks").beginArray();
        for (Lock lock : travel.locks()) {
            json.beginObject().key("atMm").number(lock.atMm());
            json.key("because").value(lock.words()).endObject();
        }
        return json.endArray().endObject().toString();
    }

    private static void reach(JsonWriter json, String unit, Reach reach) {
        json.beginObject();
        if (reach instanceof Reach.Until until) {
            json.key("until" + unit).number(until.amount()).key("tie").value(until.tie());
        } else if (reach instanceof Reach.Free free) {
            json.key("freeTo" + unit).number(free.amount());
        } else if (reach instanceof Reach.NotKnown unknown) {
            json.key("notKnown").value(unknown.tie());
        } else if (reach instanceof Reach.TightAlready tight) {
            json.key("tightAlready").value(tight.tie());
        }
        json.endObject();
    }

    private static void wheel(JsonWriter json, WheelPosition wheel) {
        json.beginObject().key("travelMm").number(wheel.travelMm());
        json.key("camberDeg").number(wheel.camberDeg());
        json.key("toeDeg").number(wheel.toeDeg());
        json.key("casterDeg").number(wheel.casterDeg());
        json.key("saiDeg").number(wheel.saiDeg());
        json.key("includedDeg").number(wheel.includedDeg());
        json.key("scrubMm").number(wheel.scrubMm());
        json.key("trailMm").number(wheel.trailMm());
        json.key("halfTrackMm").number(wheel.halfTrackMm());
        json.key("strutMm").number(wheel.strutMm());
        json.key("frontViewCamberDeg").number(wheel.frontViewCamberDeg());
        WheelPosition.Centre centre = wheel.centre();
        json.key("instantCentre");
        if (centre == null) {
            json.value((String) null);
        } else {
            json.beginObject().key("yMm").number(centre.yMm());
            json.key("zMm").number(centre.zMm());
            json.key("swingArmMm").number(centre.swingArmMm()).endObject();
        }
        json.endObject();
    }
}
