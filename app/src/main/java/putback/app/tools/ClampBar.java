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
        StringBuilder svg = new StringBuilder(1200);
        svg.append("<svg class=\"clampbar\" viewBox=\"0 0 360 74\" role=\"img\" aria-label=\"Clamp load ")
                .append(answer.clamp().text())
                .append(", ")
                .append(Math.round(100 * answer.proofUse()))
                .append(" % of the proof load\">");
        path(svg, "trough", new Outline().box(LEFT, 26, WIDTH, 18));
        path(svg, "load", new Outline().box(LEFT, 26, clamp - LEFT, 18));
        double low = at(answer.clampLow(), most);
        double high = at(answer.clampHigh(), most);
        path(
                svg,
                "scatter",
                new Outline()
                        .from(low, 52)
                        .to(high, 52)
                        .from(low, 47)
                        .to(low, 57)
                        .from(high, 47)
                        .to(high, 57));
        path(svg, "proof", new Outline().from(proof, 20).to(proof, 50));
        boolean near = proof > LEFT + WIDTH / 2;
        svg.append("<text x=\"").append(Outline.figure(proof + (near ? 2 : -2))).append("\" y=\"14\" class=\"");
        svg.append(near ? "end" : "start")
                .append("\">proof load ")
                .append(kn(answer.proofLoad()))
                .append("</text>");
        svg.append("<text x=\"8\" y=\"70\">by torque wrench ")
                .append(kn(answer.clampLow()))
                .append(" to ");
        svg.append(kn(answer.clampHigh())).append("</text></svg>");
        return svg.toString();
    }

    private static double at(Force force, double most) {
        return LEFT + WIDTH * force.newtons() / most;
    }

    private static void path(StringBuilder svg, String kind, Outline outline) {
        svg.append("<path class=\"")
                .append(kind)
                .append("\" d=\"")
                .append(outline)
                .append("\"/>");
    }

    private static String kn(Force force) {
        return Torque.figure(force.kilonewtons()) + " kN";
    }
}
