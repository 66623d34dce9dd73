package putback.proof;

import java.util.List;
import putback.quantity.Angle;
import putback.quantity.Force;
import putback.quantity.Torque;
import putback.tightening.BearingFace;
import putback.tightening.Compliance;
import putback.tightening.Friction;
import putback.tightening.Method;
import putback.tightening.ReadingWindow;
import putback.tightening.ScrewThread;
import putback.tightening.TorqueLaw;
import putback.tightening.Turning;
import putback.tightening.toolbox.Interval;
import putback.tightening.toolbox.TorqueWrench;

/** Nut factors, scatter, angles, and what a torque wrench may be off: handbooks and the hand-tool standard. */
final class WrenchCases {
    private static final String HANDBOOK = "MIL-HDBK-60, threaded fasteners, tightening to proper tension";
    private static final String MAKER = "MW Components, table of material strengths; torque at 75 % of proof load";
    private static final String SCATTER =
            "Study notes for the course text Bauelemente 1, V5.0.16, table of tightening factors";
    private static final String ISO6789 =
            "ISO 6789:2003 as reviewed in a tool maker's calibration sheet (DYN.SAVCTRL, chapter 1)";
    private static final String INTERVAL =
            "ISO 6789:2003 as quoted by a calibration laboratory (Understanding ISO 6789)";
    private static final String DIGIT = "half the last printed digit";

    private WrenchCases() {}

    static void add(List<Case> cases) {
        nutFactors(cases);
        methods(cases);
        makersTable(cases);
        scatter(cases);
        angle(cases);
        deviation(cases);
        interval(cases);
    }

    /** Appendix B, 110.1, with its d2 = 0.92 d and face of 1.5 d; ours uses the thread's own pitch diameter. */
    private static void nutFactors(List<Case> cases) {
        String[][] rows = {{"1/2-20", "0.1893"}, {"1/2-13", "0.1979"}};
        for (String[] row : rows) {
            ScrewThread thread = ThreadCases.thread(row[0]);
            double arm = new TorqueLaw.ByFriction(thread, Friction.same(0.15), BearingFace.usual(thread))
                    .torque(new Force(1000), Torque.ZERO)
                    .newtonMetres();
            cases.add(new FastenerCase(
                            HANDBOOK,
                            "appendix B, 110.1, worked out by its rule: " + row[0] + ", friction 0.15",
                            "nut factor K",
                            row[1])
                    .within(arm / thread.diameterMm(), 0.02, "2 %: the handbook takes d2 = 0.92 d for every thread"));
        }
    }

    private static void makersTable(List<Case> cases) {
        ScrewThread thread = ThreadCases.thread("3/8-16");
        double squareInches = thread.stressAreaMm2() / 25.4 / 25.4;
        cases.add(new FastenerCase(MAKER, "3/8-16", "stress area, in2", "0.0775").within(squareInches, 0, DIGIT));
        Force clamp = new Force(0.75 * 2558 * Force.NEWTONS_PER_POUND_FORCE);
        String[][] rows = {{"0.2", "143.9"}, {"0.15", "107.9"}};
        for (String[] row : rows) {
            double torque = 12
                    * new TorqueLaw.ByNutFactor(thread, Double.parseDouble(row[0]))
                            .torque(clamp, Torque.ZERO)
                            .poundFeet();
            cases.add(new FastenerCase(MAKER, "3/8-16, proof load 2558 lbf, K " + row[0], "torque, lbf·in", row[1])
                    .within(torque, 0, DIGIT));
        }
    }

    private static void scatter(List<Case> cases) {
        String[][] rows = {{"1.2", "9"}, {"1.6", "23"}, {"1.4", "17"}, {"2.0", "33"}, {"1.7", "26"}, {"2.5", "43"}};
        for (String[] row : rows) {
            cases.add(new FastenerCase(SCATTER, "tightening factor " + row[0], "scatter to either side, %", row[1])
                    .within(100 * Method.scatterOf(Double.parseDouble(row[0])), 0, DIGIT));
        }
    }

    private static void methods(List<Case> cases) {
        String[][] methods = {{"feel", "35"}, {"torque wrench", "25"}, {"turn of nut", "15"}};
        for (int i = 0; i < methods.length; i++) {
            cases.add(
                    new FastenerCase(HANDBOOK, "table I: " + methods[i][0], "scatter to either side, %", methods[i][1])
                            .within(100 * Method.values()[i].scatter(), 0, DIGIT));
        }
    }

    /** 6.2.4: the angle that stretches a bolt alone, the joint rigid. */
    private static void angle(List<Case> cases) {
        ScrewThread thread = ThreadCases.thread("M10");
        double area = thread.stressAreaMm2();
        double compliance = Compliance.stack(50, area, 206_000);
        Angle angle = Turning.takes(thread, new Force(300 * area), compliance);
        cases.add(new FastenerCase(
                        "Computed from the formula of MIL-HDBK-60, 6.2.4, not published",
                        "300 MPa, 50 mm, E 206000 MPa, lead 1.5 mm",
                        "angle, deg",
                        "17.5")
                .within(angle.degrees(), 0, DIGIT));
    }

    private static void deviation(List<Case> cases) {
        String[][] rows = {{"10", "6"}, {"10.5", "4"}, {"200", "4"}};
        for (String[] row : rows) {
            double ours = 100 * TorqueWrench.usualDeviation(new Torque(Double.parseDouble(row[0])));
            cases.add(new FastenerCase(
                            ISO6789,
                            "type II class A, highest value " + row[0] + " N·m",
                            "permissible deviation, %",
                            row[1])
                    .within(ours, 0, DIGIT));
        }
        String computed = "Computed from As = 100 (xa - xr) / xr of ISO 6789, not published";
        cases.add(new FastenerCase(computed, "set 100 N·m, reference 104.2", "deviation, %", "-4.03")
                .within(100 * ReadingWindow.deviation(new Torque(100), new Torque(104.2)), 0, DIGIT));
        cases.add(new FastenerCase(computed, "set 8 N·m, reference 7.6", "deviation, %", "5.26")
                .within(100 * ReadingWindow.deviation(new Torque(8), new Torque(7.6)), 0, DIGIT));
    }

    private static void interval(List<Case> cases) {
        cases.add(new FastenerCase(INTERVAL, "default interval", "months", "12")
                .within(Interval.DEFAULT.months(), 0, DIGIT));
        cases.add(new FastenerCase(INTERVAL, "default interval", "operations", "5000")
                .within(Interval.DEFAULT.operations(), 0, DIGIT));
    }
}
