package putback.app.json;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Outcome;
import putback.angles.adjusting.Turned;
import putback.angles.meaning.Pointer;
import putback.angles.readings.CarAngles;
import putback.angles.readings.CarReading;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.SetBack;
import putback.angles.readings.SteerSweep;
import putback.angles.readings.ToeMillimetres;
import putback.angles.readings.Uncertainty;
import putback.app.text.AngleNotes;

/** Wheel angles and what to turn, for other programs. */
public final class AnglesJson {
    private final JsonWriter json = new JsonWriter(3000);
    private final CarReading reading;

    private AnglesJson(CarReading reading) {
        this.reading = reading;
    }

    /** One object, ASCII. */
    public static String of(AngleJob job, Turned turned) {
        return new AnglesJson(job.reading()).all(job, turned);
    }

    private String all(AngleJob job, Turned turned) {
        CarAngles angles = reading.angles();
        json.beginObject();
        car(angles);
        setBack();
        Uncertainty uncertainty = Uncertainty.of(reading);
        if (uncertainty != null) {
            json.key("uncertainty").beginObject();
            figures(uncertainty::of);
            json.endObject();
        }
        adjust(turned);
        json.key("after").beginObject();
        car(turned.after());
        json.endObject();
        outcome(turned);
        json.key("pointsTo").beginArray();
        for (Pointer pointer : AngleNotes.pointers(job)) {
            json.beginObject().key("sign").value(pointer.sign());
            json.key("to").value(pointer.pointsTo());
            json.key("because").value(pointer.because());
            json.key("source").value(pointer.source()).endObject();
        }
        json.endArray().key("notes").strings(AngleNotes.of(job, turned));
        return json.endObject().toString();
    }

    private void car(CarAngles angles) {
        figures(figure -> figure.of(angles));
        Double off = Figure.steering().of(angles);
        Double ratio = reading.steeringRatio();
        json.key("roadWheelsOffDeg").number(off);
        json.key("steeringWheelOffDeg").number(off == null || ratio == null ? null : Double.valueOf(ratio * off));
        Double diameter = reading.toeReadAtMm();
        if (diameter != null) {
            json.key("frontTotalToeMm").number(totalToe(angles, true, diameter));
            json.key("rearTotalToeMm").number(totalToe(angles, false, diameter));
        }
    }

    private static @Nullable Double totalToe(CarAngles angles, boolean front, double diameter) {
        Double left = angles.of(front ? Place.FRONT_LEFT : Place.REAR_LEFT, Measure.TOE);
        Double right = angles.of(front ? Place.FRONT_RIGHT : Place.REAR_RIGHT, Measure.TOE);
        return left == null || right == null ? null : ToeMillimetres.total(left, right, diameter);
    }

    private void figures(Function<Figure, @Nullable Double> value) {
        for (boolean front : new boolean[] {true, false}) {
            json.key(front ? "front" : "rear").beginObject();
            wheel("left", front ? Place.FRONT_LEFT : Place.REAR_LEFT, value);
            wheel("right", front ? Place.FRONT_RIGHT : Place.REAR_RIGHT, value);
            json.key("totalToeDeg").number(value.apply(Figure.totalToe(front)));
            json.key("crossCamberDeg").number(value.apply(Figure.cross(front, Measure.CAMBER)));
            if (front) {
                json.key("crossCasterDeg").number(value.apply(Figure.cross(true, Measure.CASTER)));
                json.key("crossSaiDeg").number(value.apply(Figure.cross(true, Measure.SAI)));
            } else {
                json.key("thrustDeg").number(value.apply(Figure.thrust()));
            }
            json.endObject();
        }
    }

    private void wheel(String side, Place place, Function<Figure, @Nullable Double> value) {
        json.key(side).beginObject();
        for (Measure measure : place.isFront() ? Measure.values() : new Measure[] {Measure.CAMBER, Measure.TOE}) {
            json.key(measure.word() + "Deg").number(value.apply(Figure.wheel(place, measure)));
        }
        if (place.isFront()) {
            json.key("includedDeg").number(value.apply(Figure.included(place)));
            SteerSweep sweep = reading.of(place).steerSweep();
            json.key("sweep").value(sweep == null ? null : sweep.isRough() ? "rough" : "sound");
        }
        json.endObject();
    }

    private void setBack() {
        SetBack setBack = reading.setBack();
        if (setBack != null) {
            json.key("setBackDeg").number(setBack.degrees());
            json.key("setBackMm").number(setBack.millimetres());
        }
    }

    private void adjust(Turned turned) {
        json.key("adjust").beginArray();
        for (Turned.Step step : turned.steps()) {
            json.beginObject().key("adjuster").value(step.adjuster().id());
            json.key("by").number(step.by());
            json.key("per").value(step.adjuster().per()).endObject();
        }
        json.endArray();
    }

    private void outcome(Turned turned) {
        Boolean inside = turned.inside();
        Boolean straight = turned.straight();
        flag("inside", inside);
        flag("straight", straight);
        flag("allTried", turned.allTried());
        json.key("wanted").beginArray();
        for (Outcome outcome : turned.outcomes()) {
            json.beginObject().key("figure").value(outcome.wanted().figure().name());
            json.key("lowDeg").number(outcome.wanted().lowDeg());
            json.key("highDeg").number(outcome.wanted().highDeg());
            json.key("beforeDeg").number(outcome.beforeDeg());
            json.key("afterDeg").number(outcome.afterDeg());
            json.key("outsideByDeg").number(outcome.isRead() ? Double.valueOf(outcome.missDeg()) : null);
            json.endObject();
        }
        json.endArray().key("stoppedBy").beginArray();
        for (Turned.Step stop : turned.stops()) {
            json.beginObject().key("adjuster").value(stop.adjuster().id());
            json.key("at").number(stop.by());
            json.key("per").value(stop.adjuster().per()).endObject();
        }
        json.endArray();
    }

    private void flag(String key, @Nullable Boolean value) {
        json.key(key);
        if (value == null) {
            json.value((String) null);
        } else {
            json.value(value.booleanValue());
        }
    }
}
