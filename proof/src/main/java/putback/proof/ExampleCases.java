package putback.proof;

import java.util.List;
import putback.quantity.Angle;
import putback.quantity.Force;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.Torque;
import putback.quantity.TorqueUnit;
import putback.tightening.Adapter;
import putback.tightening.BearingFace;
import putback.tightening.Compliance;
import putback.tightening.Friction;
import putback.tightening.Method;
import putback.tightening.ScrewThread;
import putback.tightening.TorqueLaw;
import putback.tightening.Turning;

/** Worked examples of textbooks, handbooks and manuals. */
final class ExampleCases {
    private static final String COURSE =
            "Study notes for the course text Bauelemente 1, V5.0.16 (2025-05-13), chapter 9.10; secondary";
    private static final String NAVY = "NAVEDTRA 14315 (US Navy), torquing computation, figures 3-44 and 3-45";
    private static final String ARMY = "US Army TM 10-5430-232-12&P, tables I-1 and I-2; nearest whole N·m";
    private static final String DIGIT = "half the last printed digit";
    private static final String TENTH = "0.1 %: the source carries on with rounded angles";

    private ExampleCases() {}

    static void add(List<Case> cases) {
        course(cases);
        compliance(cases);
        sae(cases);
        adapters(cases);
        units(cases);
        WrenchCases.add(cases);
    }

    private static void course(List<Case> cases) {
        ScrewThread m12 = ThreadCases.thread("M12");
        BearingFace wide = BearingFace.between(new Length(24), new Length(13.5));
        Force most = new TorqueLaw.ByFriction(m12, Friction.same(0.08), wide).clamp(new Torque(100), Torque.ZERO);
        Force least = new TorqueLaw.ByFriction(m12, Friction.same(0.12), wide).clamp(new Torque(100), Torque.ZERO);
        String at = "example M12, 100 N·m, friction 0.08 to 0.12";
        cases.add(new FastenerCase(COURSE, at, "largest clamp load, N", "65190").within(most.newtons(), 0.001, TENTH));
        cases.add(new FastenerCase(COURSE, at, "least clamp load, N", "46220").within(least.newtons(), 0.001, TENTH));
        TorqueLaw.ByFriction m10 = new TorqueLaw.ByFriction(
                ThreadCases.thread("M10"), Friction.same(0.12), BearingFace.between(new Length(16), new Length(10.5)));
        String second = "example M10, 25 kN, friction 0.12";
        cases.add(new FastenerCase(COURSE, second, "torque in the thread, N·mm", "21761")
                .within(25000 * m10.threadArm(1), 0.001, TENTH));
        cases.add(new FastenerCase(COURSE, second, "torque under the head, N·mm", "19875")
                .within(25000 * m10.faceArm(), 0, DIGIT));
        cases.add(new FastenerCase(COURSE, second, "torque, N·m", "41.6")
                .within(m10.torque(new Force(25000), Torque.ZERO).newtonMetres(), 0, DIGIT));
        cases.add(new FastenerCase(COURSE, "tightening factor 1.6", "scatter, %", "23.1")
                .within(100 * Method.scatterOf(1.6), 0, DIGIT));
    }

    private static void compliance(List<Case> cases) {
        ScrewThread m10 = ThreadCases.thread("M10");
        double bolt = Compliance.bolt(m10, 20, 6, 210_000);
        double stack = Compliance.stack(26, 318.5, 70_000);
        String at = "lesson III, M10 in aluminium plates";
        cases.add(new FastenerCase(COURSE, at, "compliance of the bolt, mm/MN", "2.76").within(bolt * 1e6, 0, DIGIT));
        cases.add(
                new FastenerCase(COURSE, at, "compliance of the plates, mm/MN", "1.166").within(stack * 1e6, 0, DIGIT));
        cases.add(new FastenerCase(
                        "Computed independently from the compliances of the course example, not published",
                        at + ", 20 kN",
                        "angle from snug, deg",
                        "18.8")
                .within(Turning.takes(m10, new Force(20_000), bolt + stack).degrees(), 0.005, "0.5 %: rounded inputs"));
    }

    private static void sae(List<Case> cases) {
        Table table = Table.of("sae-2.csv");
        for (List<String> row : table.rows()) {
            ScrewThread thread = ThreadCases.thread(row.get(0));
            double clamp = 0.75 * ThreadCases.grade("SAE 2").strength(thread).proofMpa() * thread.stressAreaMm2();
            double torque = new TorqueLaw.ByNutFactor(thread, 0.2)
                    .torque(new Force(clamp), Torque.ZERO)
                    .poundFeet();
            cases.add(new FastenerCase(table.citation(), row.get(0), "clamp load, lbf", row.get(1))
                    .within(clamp / Force.NEWTONS_PER_POUND_FORCE, 0.002, "0.2 %: areas rounded in print"));
            cases.add(new FastenerCase(table.citation(), row.get(0), "torque, lbf·ft", row.get(2))
                    .within(torque, 0.022, "2.2 %: small torques rounded by the publisher"));
        }
    }

    private static void adapters(List<Case> cases) {
        double straight = ((Parsed.Value<Adapter>) Adapter.of(
                        new Length(12 * Length.MILLIMETRES_PER_INCH),
                        new Length(6 * Length.MILLIMETRES_PER_INCH),
                        new Angle(0)))
                .value()
                .factor();
        cases.add(new FastenerCase(NAVY, "100 lbf·in, wrench 12 in, adapter 6 in", "setting, lbf·in", "66.7")
                .within(100 * straight, 0, DIGIT));
    }

    private static void units(List<Case> cases) {
        String[][] pairs = {
            {"350", "475"}, {"400", "542"}, {"800", "1085"}, {"1000", "1356"}, {"1280", "1736"}, {"1440", "1953"}
        };
        for (String[] pair : pairs) {
            cases.add(new FastenerCase(ARMY, pair[0] + " lbf·ft", "N·m", pair[1])
                    .within(newtonMetres(pair[0]), 0.0006, "0.06 %: the table does not round all rows to the nearest"));
        }
        cases.add(new FastenerCase(ARMY, "1820 lbf·ft", "N·m", "2712")
                .known(newtonMetres("1820"), "misprint: the sister table prints 2000 lbf·ft for 2712 N·m"));
    }

    private static double newtonMetres(String poundFeet) {
        return Double.parseDouble(poundFeet) * TorqueUnit.POUND_FOOT.newtonMetres();
    }
}
