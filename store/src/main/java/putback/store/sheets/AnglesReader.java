package putback.store.sheets;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Adjuster;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Wanted;
import putback.angles.readings.CarReading;
import putback.angles.readings.Gauge;
import putback.angles.readings.SetBack;
import putback.angles.readings.WheelReading;
import putback.quantity.Length;
import putback.store.sheets.Node.Entries;

/**
 * Reads a car's wheel angles, what is wanted of them, and what can be turned. Whatever the file holds, the answer is a
 * job or a list of faults with their places; nothing is thrown.
 */
public final class AnglesReader {
    private static final BigDecimal HIGHEST_RATIO = BigDecimal.valueOf(100);
    private static final double COARSEST_GAUGE = 10;

    private final Faults faults = new Faults();

    private AnglesReader() {}

    public static AnglesRead read(String file) {
        AnglesReader reader = new AnglesReader();
        Entries top = Documents.top(file, Form.ANGLES, reader.faults);
        return reader.answer(top);
    }

    /** The same for what was typed on a page. */
    public static AnglesRead readText(String text, String name) {
        AnglesReader reader = new AnglesReader();
        return reader.answer(Documents.typed(text, name, Form.ANGLES, reader.faults));
    }

    private AnglesRead answer(@Nullable Entries top) {
        AngleJob job = top == null ? null : job(top);
        return job == null || !faults.isEmpty() ? new AnglesRead.Faulty(faults.sorted()) : new AnglesRead.Sound(job);
    }

    private AngleJob job(Entries top) {
        Fields file = Fields.of(top, top.place(), "the file", Keys.ANGLES, faults);
        if (!file.has("front") && !file.has("rear")) {
            faults.add(
                    top.place(),
                    "the file has no readings; it needs front or rear, such as"
                            + " front: {left: {camber: -0.5 deg, toe: 0.10 deg}}");
        }
        Length diameter = file.amounts().length("toe-read-at", false);
        Double readAt = diameter == null ? null : diameter.millimetres();
        AngleAmounts amounts = new AngleAmounts(readAt);
        Map<putback.angles.readings.Place, WheelReading> wheels = new WheelReadingReader(amounts, faults).all(file);
        Double ratio = file.amounts().positive("steering-ratio", HIGHEST_RATIO);
        CarReading reading = new CarReading(wheels, ratio, setBack(file), gauge(file, amounts), readAt);
        Fields heights = file.map("ride-height", Keys.AXLES);
        if (heights != null) {
            heights.amounts().length("front", false);
            heights.amounts().length("rear", false);
        }
        List<Wanted> wanted = new WantedReader(amounts, heights, faults).all(file);
        List<Adjuster> adjusters = new AdjusterReader(amounts, faults).all(file);
        return new AngleJob(file.text("title", ""), reading, wanted, adjusters);
    }

    private static @Nullable SetBack setBack(Fields file) {
        Length track = file.amounts().length("track", false);
        Fields base = file.map("wheelbase", Keys.SIDES);
        if (base == null) {
            return null;
        }
        base.require("left", "right");
        Length left = base.amounts().length("left", false);
        Length right = base.amounts().length("right", false);
        if (track == null && !file.has("track")) {
            file.fault("wheelbase", "it needs the track of the front axle beside it, such as track: 1500 mm");
        }
        return track == null || left == null || right == null
                ? null
                : new SetBack(left.millimetres(), right.millimetres(), track.millimetres());
    }

    private static @Nullable Gauge gauge(Fields file, AngleAmounts amounts) {
        Fields gauge = file.map("gauge", Keys.GAUGE);
        if (gauge == null) {
            return null;
        }
        gauge.require("camber", "toe");
        Double camber = deviation(gauge, "camber", amounts);
        Double toe = deviation(gauge, "toe", amounts);
        Double steer = deviation(gauge, "steer", amounts);
        Double caster = deviation(gauge, "caster", amounts);
        Double sai = deviation(gauge, "sai", amounts);
        return camber == null || toe == null ? null : new Gauge(camber, toe, steer == null ? toe : steer, caster, sai);
    }

    private static @Nullable Double deviation(Fields gauge, String key, AngleAmounts amounts) {
        Double deviation = amounts.angle(gauge, key, COARSEST_GAUGE);
        if (deviation != null && deviation < 0) {
            gauge.fault(key, "it is how far a reading may be off, so it cannot be negative");
            return null;
        }
        return deviation;
    }
}
