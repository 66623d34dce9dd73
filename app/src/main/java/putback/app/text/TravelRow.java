package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import putback.angles.linkage.Travel;
import putback.angles.linkage.WheelPosition;

/**
 * One figure of a wheel, as designed and at a travel.
 *
 * @param name with its unit
 * @param standing as designed
 * @param there at the travel; empty where the linkage does not go there
 * @param change from one to the other; empty likewise
 */
public record TravelRow(String name, String standing, String there, String change) {
    private static final int DEGREES = 3;
    private static final int MILLIMETRES = 2;

    /** All figures that the wheel has. */
    public static List<TravelRow> of(Travel standing, Travel there) {
        List<TravelRow> rows = new ArrayList<>();
        if (standing.positions().isEmpty()) {
            return rows;
        }
        WheelPosition one = standing.positions().get(0);
        WheelPosition other =
                there.positions().isEmpty() ? null : there.positions().get(0);
        add(rows, "camber, deg", DEGREES, one, other, WheelPosition::camberDeg);
        add(rows, "toe, deg", DEGREES, one, other, WheelPosition::toeDeg);
        add(rows, "caster, deg", DEGREES, one, other, WheelPosition::casterDeg);
        add(rows, "inclination (SAI), deg", DEGREES, one, other, WheelPosition::saiDeg);
        add(rows, "included angle, deg", DEGREES, one, other, WheelPosition::includedDeg);
        add(rows, "scrub radius, mm", MILLIMETRES, one, other, WheelPosition::scrubMm);
        add(rows, "trail, mm", MILLIMETRES, one, other, WheelPosition::trailMm);
        add(rows, "half track, mm", MILLIMETRES, one, other, WheelPosition::halfTrackMm);
        add(rows, "strut, mm", MILLIMETRES, one, other, WheelPosition::strutMm);
        return rows;
    }

    private static void add(
            List<TravelRow> rows,
            String name,
            int places,
            WheelPosition one,
            @Nullable WheelPosition other,
            Function<WheelPosition, @Nullable Double> figure) {
        Double standing = figure.apply(one);
        Double there = other == null ? null : figure.apply(other);
        if (standing != null) {
            rows.add(new TravelRow(
                    name,
                    AngleFigures.plain(standing, places),
                    there == null ? "" : AngleFigures.plain(there, places),
                    there == null ? "" : AngleFigures.plain(there - standing, places)));
        }
    }
}
