package putback.app.tools;

import putback.quantity.Force;
import putback.quantity.Torque;
import putback.tightening.Tightness;

/** Clamp load against proof load as a bar, with what the torque wrench's scatter makes of it. */
public final class ClampBar {
    private static final double LEFT = 8;
    private static final double WIDTH = 344;
    private static final double HEADROOM = 1.15;

    private ClampBar() {}

    /** SVG; the figures stand beside it in the page too. */
    public static String draw(Tightness answer) {
        double most = Math.max(answer.proofLoad().newtons(), answer.clampHigh().newtons()) * HEADROOM;
        double proof = at(answer.proofLoad(), most);
        double clamp = at(answer.clamp(), most);
        Sketch sketch = new Sketch();
        sketch.raw("<svg class=\"clampbar\" viewBox=\"0 0 360 74\" role=\"img\" aria-label=\"Clamp load "
                + answer.clamp().text() + ", " + Math.round(100 * answer.proofUse()) + " % of the proof load\">");
        sketch.box("trough", LEFT, 26, WIDTH, 18);
        sketch.box("load", LEFT, 26, clamp - LEFT, 18);
        double low = at(answer.clampLow(), most);
        double high = at(answer.clampHigh(), most);
        sketch.path(
                "scatter",
                new Outline()
                        .from(low, 52)
                        .to(high, 52)
                        .from(low, 47)
                        .to(low, 57)
                        .from(high, 47)
                        .to(high, 57));
        sketch.line("proof", proof, 20, proof, 50);
        boolean near = proof > LEFT + WIDTH / 2;
        sketch.text(proof + (near ? 2 : -2), 14, near ? "end" : "start", "proof load " + kn(answer.proofLoad()));
        sketch.text(8, 70, "", "by torque wrench " + kn(answer.clampLow()) + " to " + kn(answer.clampHigh()));
        return sketch.raw("</svg>").toString();
    }

    private static double at(Force force, double most) {
        return LEFT + WIDTH * force.newtons() / most;
    }

    private static String kn(Force force) {
        return Torque.figure(force.kilonewtons()) + " kN";
    }
}
