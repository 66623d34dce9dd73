package putback.proof;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Layout;
import putback.angles.linkage.Travel;
import putback.angles.linkage.WheelPosition;
import putback.angles.space.Vector;
import putback.quantity.Length;

/** Corners through their travel: where outside code, run on the same points, puts the wheel. */
final class CornerCases {
    static final String ROOM = "angles";
    private static final int PLACES = 8;
    private static final String DIGIT = "half the last printed digit";
    private static final Layout.Arm LOWER =
            new Layout.Arm(new Vector(250, 400, 200), new Vector(-250, 450, 200), new Vector(0, 900, 200));

    private CornerCases() {}

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        add(cases, "strut.csv", strut());
        add(cases, "strut-rack.csv", strut());
        add(cases, "strut-e90.csv", e90());
        add(cases, "wishbones.csv", wishbones());
        return cases;
    }

    private static void add(List<Case> cases, String name, Corner corner) {
        Table table = Table.in(ROOM, name);
        for (List<String> row : table.rows()) {
            WheelPosition wheel = wheel(corner, row);
            Map<String, Double> ours = Map.of(
                    "camber", wheel.camberDeg(),
                    "camberFront", wheel.frontViewCamberDeg(),
                    "toe", wheel.toeDeg(),
                    "caster", wheel.casterDeg(),
                    "sai", wheel.saiDeg(),
                    "scrub", wheel.scrubMm(),
                    "trail", wheel.trailMm(),
                    "halfTrack", wheel.halfTrackMm(),
                    "strut", wheel.strutMm() == null ? 0 : wheel.strutMm());
            for (int i = 2; i < row.size(); i++) {
                String column = table.columns().get(i);
                cases.add(figure(name, table, row, column, row.get(i), ours.getOrDefault(column, Double.NaN)));
            }
        }
    }

    private static WheelPosition wheel(Corner corner, List<String> row) {
        Travel.Span span = new Travel.Span(Double.parseDouble(row.get(0)), 1, 1);
        return Travel.of(corner, new Length(Double.parseDouble(row.get(1))), span)
                .positions()
                .get(0);
    }

    private static Case figure(String name, Table table, List<String> row, String column, String printed, double ours) {
        boolean length = column.equals("scrub")
                || column.equals("trail")
                || column.equals("halfTrack")
                || column.equals("strut");
        String at = "travel " + row.get(0) + " mm, rack " + row.get(1) + " mm";
        String quantity = quantity(column) + (length ? ", mm" : ", deg");
        return new Case(
                ROOM,
                (name + " " + at.replace("-", "minus ") + " " + quantity).replaceAll("[^A-Za-z0-9./]+", "-"),
                table.citation(),
                at,
                quantity,
                new BigDecimal(printed),
                BigDecimal.valueOf(ours).round(new MathContext(PLACES, RoundingMode.HALF_EVEN)),
                Table.halfDigit(printed),
                DIGIT,
                false);
    }

    private static String quantity(String column) {
        return switch (column) {
            case "camberFront" -> "camber in front view";
            case "sai" -> "inclination";
            case "scrub" -> "scrub radius";
            case "halfTrack" -> "half track";
            case "strut" -> "strut length";
            default -> column;
        };
    }

    private static Corner strut() {
        return corner(new Layout.Strut(LOWER, new Vector(-40, 700, 850), new Vector(-14, 830, 427.5)));
    }

    private static Corner wishbones() {
        return corner(new Layout.DoubleWishbone(
                LOWER,
                new Layout.Arm(new Vector(225, 350, 500), new Vector(-275, 350, 500), new Vector(-25, 750, 500))));
    }

    private static Corner corner(Layout layout) {
        return new Corner(
                false,
                layout,
                new Vector(50, 200, 250),
                new Vector(150, 800, 275),
                new Vector(-20, 950, 313.426),
                new Vector(0, 150, 5).unit(),
                313.6,
                null,
                null);
    }

    /** With the clamp on the line from ball joint to top mount. */
    private static Corner e90() {
        Layout.Arm lower = new Layout.Arm(
                new Vector(270.51, 345.44, -59.69),
                new Vector(-43.18, 373.38, -125.73),
                new Vector(27.94, 662.94, -104.14));
        return new Corner(
                false,
                new Layout.Strut(lower, new Vector(-83.82, 541.02, 468.63), new Vector(6.59686, 639.65657, 5.24360)),
                new Vector(-200, 200, -50),
                new Vector(-200, 574.80376, -1.27),
                new Vector(0, 750.062, 0),
                Vector.LEFT,
                316,
                null,
                null);
    }
}
