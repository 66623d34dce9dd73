package putback.proof;

import java.util.List;
import putback.quantity.Force;
import putback.quantity.Torque;
import putback.tightening.BearingFace;
import putback.tightening.Friction;
import putback.tightening.PropertyClass;
import putback.tightening.ScrewThread;
import putback.tightening.TorqueLaw;
import putback.tightening.Utilisation;

/** Clamp load and torque at nine tenths of the yield stress against published VDI 2230 tables. */
final class ClampCases {
    private static final double NINE_TENTHS = 0.9;
    private static final double ONE_PERCENT = 0.01;
    private static final String PRINT =
            "half the last printed digit, or 1 % where that is more: yield stress rounded in print";
    private static final String CUT =
            "one unit of the last printed digit, or 1 % where that is more: this publisher cuts"
                    + " digits off (39 N·m for M10 of class 80, where another table of the same edition has 40)";
    private static final String SCALES = "2.5 %: rounded by the publisher to the scales of tools";
    private static final String OLDER = "an older edition, with elastic twist and lower yield stresses: 6 to 12 % below"
            + " the edition of 2001 and later";

    private ClampCases() {}

    static void add(List<Case> cases) {
        both(cases, "vdi-fine.csv", false);
        both(cases, "vdi-stainless.csv", true);
        Table torques = Table.of("stainless-torques.csv");
        for (List<String> row : torques.rows()) {
            for (int i = 2; i < row.size(); i++) {
                Row one = new Row(row, torques.columns().get(i).substring(3), "0.10");
                cases.add(new FastenerCase(torques.citation(), one.at() + ", tool scales", "torque, N·m", row.get(i))
                        .within(one.torque(), 0.025, SCALES));
            }
        }
        Table older = Table.of("older-edition.csv");
        for (List<String> row : older.rows()) {
            for (int i = 3; i < row.size(); i++) {
                Row one = new Row(row, older.columns().get(i).substring(3), row.get(2));
                cases.add(new FastenerCase(older.citation(), one.at(), "clamp load, N", row.get(i))
                        .known(one.clamp().newtons(), OLDER));
            }
        }
    }

    private static void both(List<Case> cases, String file, boolean cutsOff) {
        Table table = Table.of(file);
        for (List<String> row : table.rows()) {
            for (int i = 3; i < row.size(); i++) {
                boolean isClamp = table.columns().get(i).startsWith("FM");
                Row one = new Row(row, table.columns().get(i).substring(3), row.get(2));
                FastenerCase printed = new FastenerCase(
                        table.citation(), one.at(), isClamp ? "clamp load, kN" : "torque, N·m", row.get(i));
                double ours = isClamp ? one.clamp().kilonewtons() : one.torque();
                cases.add(
                        cutsOff
                                ? printed.withinADigit(ours, ONE_PERCENT, CUT)
                                : printed.within(ours, ONE_PERCENT, PRINT));
            }
        }
    }

    private record Row(ScrewThread thread, PropertyClass grade, double friction) {
        Row(List<String> cells, String grade, String friction) {
            this(
                    ThreadCases.thread("M" + cells.get(0) + "x" + leading(cells.get(1))),
                    ThreadCases.grade(grade),
                    Double.parseDouble(friction));
        }

        private static String leading(String pitch) {
            return pitch.startsWith(".") ? "0" + pitch : pitch;
        }

        String at() {
            return thread.designation() + " " + grade.mark() + " friction " + friction;
        }

        Force clamp() {
            return Utilisation.clamp(thread, grade.strength(thread), friction, NINE_TENTHS);
        }

        double torque() {
            return new TorqueLaw.ByFriction(thread, Friction.same(friction), BearingFace.usual(thread))
                    .torque(clamp(), Torque.ZERO)
                    .newtonMetres();
        }
    }
}
