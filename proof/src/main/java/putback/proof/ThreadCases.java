package putback.proof;

import java.util.List;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.tightening.PropertyClass;
import putback.tightening.ScrewThread;
import putback.tightening.Strength;

/** Diameters, stress areas and loads of threads against published tables. */
final class ThreadCases {
    private static final double HALF_PERCENT = 0.005;
    private static final String ROUNDED =
            "half the last printed digit, or 0.5 % where that is more: areas are rounded in print";

    private static final double LOADS = 0.007;
    private static final String TWICE_ROUNDED = "0.7 %: area and load are each rounded to three figures in print";

    private ThreadCases() {}

    static void add(List<Case> cases) {
        diameters(cases);
        misprints(cases);
        unified(cases);
        loads(cases, "proof-loads.csv", "proof load");
        loads(cases, "tensile-loads.csv", "least tensile load");
    }

    private static void diameters(List<Case> cases) {
        Table table = Table.of("stress-areas.csv");
        for (List<String> row : table.rows()) {
            ScrewThread thread = thread(row.get(0));
            double[] ours = {thread.pitchDiameterMm(), thread.rootDiameterMm(), thread.minorDiameterMm()};
            for (int i = 0; i < ours.length; i++) {
                String quantity = table.columns().get(i + 1) + ", mm";
                cases.add(new FastenerCase(table.citation(), row.get(0), quantity, row.get(i + 1))
                        .within(ours[i], 0, "half the last printed digit"));
            }
            cases.add(new FastenerCase(table.citation(), row.get(0), "stress area, mm2", row.get(4))
                    .within(thread.stressAreaMm2(), HALF_PERCENT, ROUNDED));
        }
    }

    private static void misprints(List<Case> cases) {
        Table table = Table.of("misprints.csv");
        for (List<String> row : table.rows()) {
            cases.add(new FastenerCase(table.citation(), row.get(0), "stress area, mm2", row.get(1))
                    .known(
                            thread(row.get(0)).stressAreaMm2(),
                            "misprint: more than 2 % above pi/4 ((d2 + d3)/2)^2 of its own diameters"));
        }
    }

    private static void unified(List<Case> cases) {
        Table table = Table.of("unified.csv");
        double squareInch = Length.MILLIMETRES_PER_INCH * Length.MILLIMETRES_PER_INCH;
        for (List<String> row : table.rows()) {
            cases.add(new FastenerCase(table.citation(), row.get(0), "stress area, square inches", row.get(1))
                    .within(thread(row.get(0)).stressAreaMm2() / squareInch, HALF_PERCENT, ROUNDED));
        }
    }

    private static void loads(List<Case> cases, String file, String what) {
        Table table = Table.of(file);
        for (List<String> row : table.rows()) {
            for (int i = 1; i < row.size(); i++) {
                String grade = table.columns().get(i);
                if (Table.isPrinted(row.get(i))) {
                    Strength strength = grade(grade).strength(thread(row.get(0)));
                    double stress = what.startsWith("proof") ? strength.proofMpa() : strength.tensileMpa();
                    cases.add(
                            new FastenerCase(table.citation(), row.get(0) + " class " + grade, what + ", N", row.get(i))
                                    .within(stress * thread(row.get(0)).stressAreaMm2(), LOADS, TWICE_ROUNDED));
                }
            }
        }
    }

    static ScrewThread thread(String written) {
        return ((Parsed.Value<ScrewThread>) ScrewThread.parse(written)).value();
    }

    static PropertyClass grade(String written) {
        return ((Parsed.Value<PropertyClass>) PropertyClass.parse(written)).value();
    }
}
