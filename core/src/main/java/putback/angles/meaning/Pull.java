package putback.angles.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Wanted;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;

/**
 * To which side the front wheels' differences would pull. A direction only: how much it takes is the maker's to say, so a
 * difference inside what is wanted is not named at all.
 */
public final class Pull {
    private static final String SOURCE = "course notes on wheel angles, Utah Valley University; trade guides";
    private static final double NOTHING_DEG = 0.005;

    private Pull() {}

    public static List<Pointer> of(CarAngles angles, List<Wanted> wanted) {
        List<Pointer> pointers = new ArrayList<>();
        add(
                pointers,
                angles,
                wanted,
                Measure.CAMBER,
                1,
                "a wheel that leans out rolls outward, so the side with more" + " positive camber wins");
        add(pointers, angles, wanted, Measure.CASTER, -1, "the side with less caster holds straight less");
        add(pointers, angles, wanted, Measure.SAI, -1, "the side with less inclination holds straight less");
        return pointers;
    }

    /**
     * @param sign 1 where more on the left pulls to the left
     */
    private static void add(
            List<Pointer> pointers, CarAngles angles, List<Wanted> wanted, Measure measure, int sign, String because) {
        Figure figure = Figure.cross(true, measure);
        Double cross = figure.of(angles);
        @Nullable Standing standing = Standing.of(figure.name(), angles, wanted);
        if (cross == null || Math.abs(cross) < NOTHING_DEG || standing == Standing.WITHIN) {
            return;
        }
        String limit = standing == null ? ", if it is enough to matter, for which no range is given" : "";
        pointers.add(new Pointer(
                "Cross " + measure.said() + " " + String.format(Locale.ROOT, "%.2f", cross) + " deg, left less right",
                "a pull to the " + (sign * cross > 0 ? "left" : "right") + limit,
                because,
                SOURCE));
    }
}
