package putback.app.tools;

import putback.tightening.toolbox.Have;
import putback.tightening.toolbox.Tool;

/**
 * A tool as it lies in its cut-out, all to one scale. Solid where it is there, an outline where something else will do, an
 * empty broken outline where it is missing.
 */
public final class ToolShape {
    private static final double SIDE = 72;
    private static final double MIDDLE = SIDE / 2;
    private static final double PX_PER_MM = 1.05;
    private static final double LARGEST_MM = 46;
    private static final double SMALLEST_MM = 2;
    private static final int LOBES = 6;

    private ToolShape() {}

    /** SVG without any text; beside it stands the name. */
    public static String draw(String name, Have.State state) {
        Tool tool = Tool.named(name);
        String outline = tool == null ? plain(name) : sized(tool);
        return "<svg class=\"shape\" viewBox=\"0 0 72 72\" width=\"72\" height=\"72\" aria-hidden=\"true\"><path class=\"shape-"
                + state.word() + "\" fill-rule=\"evenodd\" d=\"" + outline + "\"/></svg>";
    }

    private static String sized(Tool tool) {
        double across = Math.max(SMALLEST_MM, Math.min(LARGEST_MM, tool.size().millimetres())) * PX_PER_MM;
        return switch (tool.form()) {
            case SOCKET -> socket(across, false);
            case PASS_THROUGH -> socket(across, true);
            case SPANNER -> spanner(across, false);
            case FLARE_SPANNER -> spanner(across, true);
            case CROWFOOT -> crowfoot(across);
            case HEX_KEY -> key(across);
        };
    }

    private static String socket(double across, boolean open) {
        Outline outline = new Outline().circle(MIDDLE, MIDDLE, across * 0.58 + 4);
        if (open) {
            outline.circle(MIDDLE, MIDDLE, across * 0.58 + 2);
        }
        return outline.hexagon(MIDDLE, MIDDLE, across).toString();
    }

    /** A jaw at the top, open above; its handle runs down. */
    private static String spanner(double across, boolean flare) {
        double head = across * 0.62 + 4;
        double slot = (flare ? 0.3 : 0.5) * across;
        double top = head + 3;
        double rise = Math.sqrt(head * head - slot * slot);
        double grip = Math.max(3, across * 0.22);
        double neck = Math.sqrt(head * head - grip * grip);
        Outline outline = new Outline()
                .from(MIDDLE + slot, top - rise)
                .arc(head, false, MIDDLE + grip, top + neck)
                .to(MIDDLE + grip, SIDE - 3)
                .to(MIDDLE - grip, SIDE - 3)
                .to(MIDDLE - grip, top + neck)
                .arc(head, false, MIDDLE - slot, top - rise);
        double depth = across * 0.3;
        outline.to(MIDDLE - slot, top - (flare ? depth : 0));
        if (flare) {
            outline.to(MIDDLE - across / 2, top - depth).to(MIDDLE - across / 2, top + depth);
        }
        outline.to(MIDDLE, top + across * 0.4);
        if (flare) {
            outline.to(MIDDLE + across / 2, top + depth).to(MIDDLE + across / 2, top - depth);
        }
        return outline.to(MIDDLE + slot, top - (flare ? depth : 0)).close().toString();
    }

    private static String crowfoot(double across) {
        return spanner(across, false) + new Outline().box(MIDDLE - 4, SIDE - 16, 8, 8);
    }

    private static String key(double across) {
        double thick = Math.max(2.5, across);
        double corner = thick / Math.sqrt(3) * 2;
        return new Outline()
                .loop(10, 12, 10 + corner, 12, 10 + corner, 60 - corner, 62, 60 - corner, 62, 60, 10, 60)
                .toString();
    }

    private static String plain(String name) {
        return switch (name.substring(name.lastIndexOf(' ') + 1)) {
            case "bit" -> star();
            case "strap" ->
                new Outline()
                        .circle(MIDDLE, 30, 22)
                        .circle(MIDDLE, 30, 17)
                        .box(MIDDLE - 8, 48, 16, 12)
                        .toString();
            case "wrench" ->
                new Outline()
                        .box(32.5, 18, 7, 26)
                        .loop(30, 44, 42, 44, 43, 68, 29, 68)
                        .circle(MIDDLE, 12, 8)
                        .box(33, 9, 6, 6)
                        .toString();
            case "stands" ->
                new Outline()
                        .loop(30, 10, 42, 10, 42, 18, 62, 62, 10, 62, 30, 18)
                        .loop(36, 28, 47, 56, 25, 56)
                        .toString();
            case "jack" ->
                new Outline()
                        .box(8, 50, 56, 10)
                        .box(28, 22, 16, 28)
                        .box(22, 14, 28, 8)
                        .toString();
            case "pliers" ->
                new Outline()
                        .loop(
                                33, 8, 36, 12, 39, 8, 44, 26, 41, 34, 52, 62, 44, 62, 36, 40, 28, 62, 20, 62, 31, 34,
                                28, 26)
                        .toString();
            default ->
                new Outline()
                        .loop(30, 6, 42, 6, 39, 34, 44, 38, 44, 66, 28, 66, 28, 38, 33, 34)
                        .toString();
        };
    }

    /** Six rounded lobes on a shank, seen from the end. */
    private static String star() {
        Outline outline = new Outline().circle(MIDDLE, MIDDLE, 22);
        double[] points = new double[LOBES * 4];
        for (int i = 0; i < points.length / 2; i++) {
            double radius = i % 2 == 0 ? 14 : 9.5;
            double angle = Math.PI * i / LOBES;
            points[2 * i] = MIDDLE + radius * Math.sin(angle);
            points[2 * i + 1] = MIDDLE - radius * Math.cos(angle);
        }
        return outline.loop(points).toString();
    }
}
