package putback.store.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Layout;
import putback.angles.reach.Tie;
import putback.angles.space.Vector;
import putback.quantity.Length;
import putback.store.sheets.Node.Entries;

/**
 * Reads the points of one suspension. Whatever the file holds, the answer is a corner or a list of faults with their
 * places; nothing is thrown.
 */
public final class CornerReader {
    private static final String STRUT = "strut";
    private static final Map<String, Set<String>> SUSPENSIONS =
            new TreeMap<>(Map.of(STRUT, Keys.STRUT_POINTS, "double wishbone", Keys.WISHBONE_POINTS));
    private static final Map<String, Boolean> SIDES = new TreeMap<>(Map.of("left", false, "right", true));

    private final Faults faults = new Faults();
    private final List<Tie> ties = new ArrayList<>();

    private CornerReader() {}

    public static CornerRead read(String file) {
        CornerReader reader = new CornerReader();
        return reader.answer(Documents.top(file, Form.CORNER, reader.faults));
    }

    /** The same for what was typed on a page. */
    public static CornerRead readText(String text, String name) {
        CornerReader reader = new CornerReader();
        return reader.answer(Documents.typed(text, name, Form.CORNER, reader.faults));
    }

    private CornerRead answer(@Nullable Entries top) {
        Corner corner = top == null ? null : corner(top);
        return corner == null || !faults.isEmpty()
                ? new CornerRead.Faulty(faults.sorted())
                : new CornerRead.Sound(corner, ties);
    }

    private @Nullable Corner corner(Entries top) {
        Fields file = Fields.of(top, top.place(), "the file", Keys.CORNER, faults);
        file.require("suspension", "points", "tyre-radius");
        Set<String> names = file.word("suspension", SUSPENSIONS, Set.of());
        boolean right = file.word("side", SIDES, false);
        Length radius = file.amounts().length("tyre-radius", false);
        Fields points = names.isEmpty() ? null : file.map("points", names);
        Fields adjust = file.map("adjust", Keys.ADJUST);
        Fields bolt = adjust == null ? null : adjust.map("bolt", Keys.BOLT);
        Fields rod = adjust == null ? null : adjust.map("rod", Keys.ROD);
        Corner.Bolt joint = bolt == null ? null : bolt(bolt, right);
        Double pitch = rod == null ? null : pitch(rod);
        ties.addAll(new TieReader(right, faults).all(file));
        Vector spin = spin(file, right);
        if (points == null || radius == null || spin == null) {
            return null;
        }
        points.require(names.toArray(new String[0]));
        return made(file, points, names, right, spin, radius.millimetres(), joint, pitch);
    }

    private @Nullable Corner made(
            Fields file,
            Fields points,
            Set<String> names,
            boolean right,
            Vector spin,
            double radius,
            Corner.@Nullable Bolt bolt,
            @Nullable Double pitch) {
        Map<String, Vector> found = new Coordinates(points, right).all(names);
        if (found.size() < names.size() || !faults.isEmpty()) {
            return null;
        }
        Corner corner = new Corner(
                right,
                layout(found),
                at(found, "rod-inner"),
                at(found, "rod-outer"),
                at(found, "wheel-centre"),
                spin,
                radius,
                bolt,
                pitch);
        for (Corner.Doubt doubt : corner.doubts()) {
            Fields about = file.has(doubt.point()) ? file : points;
            about.fault(doubt.point(), doubt.message());
        }
        return corner;
    }

    private static Layout layout(Map<String, Vector> at) {
        if (at.containsKey("strut-top")) {
            Layout.Arm arm = new Layout.Arm(at(at, "arm-front"), at(at, "arm-rear"), at(at, "ball-joint"));
            return new Layout.Strut(arm, at(at, "strut-top"), at(at, "strut-lower"));
        }
        return new Layout.DoubleWishbone(
                new Layout.Arm(at(at, "lower-front"), at(at, "lower-rear"), at(at, "lower-ball")),
                new Layout.Arm(at(at, "upper-front"), at(at, "upper-rear"), at(at, "upper-ball")));
    }

    /** Every name was found before. */
    private static Vector at(Map<String, Vector> points, String name) {
        return points.getOrDefault(name, Vector.UP);
    }

    private static @Nullable Vector spin(Fields file, boolean right) {
        if (!file.has("spin-axis")) {
            return Vector.LEFT;
        }
        Vector axis = new Coordinates(file, right).vector("spin-axis");
        if (axis != null && !(axis.length() > 0)) {
            file.fault("spin-axis", "it has no length; write a direction such as [0, 150, 5]");
            return null;
        }
        return axis == null ? null : axis.unit();
    }

    private static Corner.@Nullable Bolt bolt(Fields bolt, boolean right) {
        bolt.require("pivot", "spacing");
        Vector pivot = new Coordinates(bolt, right).vector("pivot");
        Length spacing = bolt.amounts().length("spacing", false);
        return pivot == null || spacing == null ? null : new Corner.Bolt(pivot, spacing.millimetres());
    }

    private static @Nullable Double pitch(Fields rod) {
        rod.require("pitch");
        Length pitch = rod.amounts().length("pitch", false);
        return pitch == null ? null : pitch.millimetres();
    }
}
