package putback.proof;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import putback.angles.readings.SteerReading;
import putback.angles.readings.SteerSweep;
import putback.angles.readings.ToeMillimetres;

/** Readings of a gauge: toe as an angle and in millimetres, and the steering axis from a sweep. */
final class ReadingCases {
    private static final int PLACES = 8;
    private static final double STEER = 20;
    private static final String PRINTED_CAMBER = "cambers printed to 1e-5 deg, half of that times what an error makes";
    private static final BigDecimal HALF_CAMBER = new BigDecimal("0.000005");

    private ReadingCases() {}

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        Table toe = Table.in(CornerCases.ROOM, "toe-mm.csv");
        for (List<String> row : toe.rows()) {
            double diameter = number(row, 1);
            double half = number(row, 0) / 60 / 2;
            String at = "0 deg " + row.get(0) + " min at " + row.get(1) + " mm";
            cases.add(new Case(
                    CornerCases.ROOM,
                    "toe-mm-" + row.get(0) + "-" + row.get(1),
                    toe.citation(),
                    at,
                    "total toe, mm",
                    new BigDecimal(row.get(2)),
                    figure(ToeMillimetres.total(half, half, diameter)),
                    Table.halfDigit(row.get(2)),
                    "half the last printed digit",
                    false));
        }
        Table sweep = Table.in(CornerCases.ROOM, "sweep.csv");
        for (List<String> row : sweep.rows()) {
            SteerSweep solved = SteerSweep.of(
                    new SteerReading(number(row, 1), number(row, 0)),
                    List.of(
                            new SteerReading(number(row, 1) - STEER, number(row, 2)),
                            new SteerReading(number(row, 1) + STEER, number(row, 3))));
            cases.add(axis(sweep, row, "caster", row.get(4), solved.casterDeg(), solved.casterGain()));
            cases.add(axis(sweep, row, "inclination", row.get(5), solved.saiDeg(), solved.saiGain()));
        }
        return cases;
    }

    private static Case axis(
            Table table, List<String> row, String quantity, String expected, double ours, double gain) {
        return new Case(
                CornerCases.ROOM,
                "sweep-" + row.get(4) + "-" + row.get(5) + "-camber" + row.get(0) + "-" + quantity,
                table.citation(),
                "camber " + row.get(0) + ", toe " + row.get(1) + ", steered " + row.get(2) + " and " + row.get(3),
                quantity + ", deg",
                new BigDecimal(expected),
                figure(ours),
                HALF_CAMBER.multiply(figure(2 * gain)),
                PRINTED_CAMBER,
                false);
    }

    private static double number(List<String> row, int column) {
        return Double.parseDouble(row.get(column));
    }

    private static BigDecimal figure(double ours) {
        return BigDecimal.valueOf(ours).round(new MathContext(PLACES, RoundingMode.HALF_EVEN));
    }
}
