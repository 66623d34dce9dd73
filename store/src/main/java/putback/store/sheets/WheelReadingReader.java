package putback.store.sheets;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.readings.Place;
import putback.angles.readings.SteerReading;
import putback.angles.readings.SteerSweep;
import putback.angles.readings.WheelReading;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Text;

/** Reads what the gauge showed, wheel by wheel. */
final class WheelReadingReader {
    private static final double MOST_CAMBER = 30;
    private static final double MOST_TOE = 30;
    private static final double MOST_STEER = 70;
    private static final double MOST_CASTER = 45;
    private static final double MOST_SAI = 60;
    private static final String EXAMPLE = "{toe: -20 deg, camber: 1.2 deg}";

    private final AngleAmounts amounts;
    private final Faults faults;

    WheelReadingReader(AngleAmounts amounts, Faults faults) {
        this.amounts = amounts;
        this.faults = faults;
    }

    Map<Place, WheelReading> all(Fields file) {
        Map<Place, WheelReading> wheels = new EnumMap<>(Place.class);
        for (Place place : Place.values()) {
            String axle = place.isFront() ? "front" : "rear";
            Fields sides = file.node(axle) == null ? null : file.map(axle, Keys.SIDES);
            String side = place.isLeft() ? "left" : "right";
            Fields wheel = sides == null ? null : sides.map(side, place.isFront() ? Keys.FRONT_WHEEL : Keys.REAR_WHEEL);
            if (wheel != null) {
                wheels.put(place, wheel(wheel));
            }
        }
        return wheels;
    }

    private WheelReading wheel(Fields wheel) {
        Double camber = amounts.angle(wheel, "camber", MOST_CAMBER);
        Double toe = toe(wheel, MOST_TOE);
        List<SteerReading> sweep = sweep(wheel);
        WheelReading reading = new WheelReading(
                camber, toe, amounts.angle(wheel, "caster", MOST_CASTER), amounts.angle(wheel, "sai", MOST_SAI), sweep);
        if (wheel.has("sweep") && faults.isEmpty()) {
            sound(wheel, reading);
        }
        return reading;
    }

    private @Nullable Double toe(Fields fields, double most) {
        Text text = fields.single("toe");
        return text == null ? null : amounts.toe(fields, "toe", text, most, false);
    }

    private static void sound(Fields wheel, WheelReading reading) {
        if (reading.camberDeg() == null || reading.toeDeg() == null) {
            wheel.fault("sweep", "it needs camber and toe with the wheel straight ahead too, beside the sweep");
            return;
        }
        SteerSweep sweep = reading.steerSweep();
        if (sweep != null && !sweep.knowsCaster()) {
            wheel.fault("sweep", sweep.doubt());
        }
    }

    private List<SteerReading> sweep(Fields wheel) {
        List<SteerReading> sweep = new ArrayList<>();
        List<Entries> readings = wheel.lists().maps("sweep", EXAMPLE);
        if (wheel.has("sweep") && readings.size() < 2) {
            wheel.fault(
                    "sweep",
                    "it needs two readings, steered to the left and to the right, such as [" + EXAMPLE
                            + ", {toe: 20 deg, camber: -0.8 deg}]");
        }
        for (Entries entries : readings) {
            Fields reading = Fields.of(entries, entries.place(), "a reading of the sweep", Keys.SWEEP, faults);
            reading.require("toe", "camber");
            Double toe = amounts.angle(reading, "toe", MOST_STEER);
            Double camber = amounts.angle(reading, "camber", MOST_CAMBER);
            if (toe != null && camber != null) {
                sweep.add(new SteerReading(toe, camber));
            }
        }
        return sweep;
    }
}
