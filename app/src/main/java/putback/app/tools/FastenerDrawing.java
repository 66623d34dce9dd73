package putback.app.tools;

import java.util.List;
import putback.quantity.Length;
import putback.tightening.HexSizes;
import putback.tightening.ScrewThread;
import putback.tightening.Tightness;

/**
 * One bolt with its nut and what it clamps, in section, to one scale: thread, pitch and hexagon are the asked ones, the
 * height of head and nut and the length are a drawing's usual proportions (0.65, 0.85 and 4 diameters) and mean nothing.
 */
public final class FastenerDrawing {
    private static final double WIDTH = 360;
    private static final double HEIGHT = 300;
    private static final double AXIS = 176;
    private static final double TOP = 40;
    private static final double LONG = 4.6;
    private static final double ROOM = 236;
    private static final double HEAD = 0.65;
    private static final double NUT = 0.85;
    private static final double GRIP = 2.4;
    private static final double USUAL_ACROSS = 1.55;
    private static final double WIDEST_PX = 130;
    private static final double PLATE = 130;
    private static final double HATCH = 9;

    private final ScrewThread thread;
    private final double across;
    private final double bearing;
    private final double scale;
    private final Sketch sketch = new Sketch();

    private FastenerDrawing(ScrewThread thread, double across, double bearing) {
        this.thread = thread;
        this.across = across;
        this.bearing = bearing;
        this.scale = Math.min(ROOM / (LONG * thread.diameterMm()), WIDEST_PX / across);
    }

    /** SVG with a title that says what it shows. */
    public static String draw(Tightness answer) {
        ScrewThread thread = answer.asked().thread();
        Length hex = answer.asked().hex();
        List<Double> usual = HexSizes.across(thread);
        double across =
                hex != null ? hex.millimetres() : usual.isEmpty() ? USUAL_ACROSS * thread.diameterMm() : usual.get(0);
        return new FastenerDrawing(thread, across, answer.asked().face().effectiveDiameterMm())
                .write(answer.clamp().text());
    }

    private String write(String clamp) {
        double d = thread.diameterMm() * scale;
        double head = HEAD * d;
        double grip = GRIP * d;
        double nut = NUT * d;
        double face = TOP + head;
        double end = face + grip + nut + 0.4 * d;
        sketch.raw("<svg class=\"fastener\" viewBox=\"0 0 " + (int) WIDTH + " " + (int) HEIGHT);
        sketch.raw("\" role=\"img\" aria-label=\"" + thread.designation() + " to scale, clamping " + clamp + "\">");
        plates(face, grip, d);
        sketch.box("part", AXIS - across * scale / 2, TOP, across * scale, head);
        sketch.box("part", AXIS - across * scale / 2, face + grip, across * scale, nut);
        edges(TOP, head);
        edges(face + grip, nut);
        shank(face, end, d);
        sketch.line("axis", AXIS, TOP - 14, AXIS, end + 14);
        across(d);
        diameter(end, d);
        rubs(face);
        squeeze(face, grip, clamp);
        return sketch.raw("</svg>").toString();
    }

    /** Two plates, cut through, hatched the other way each. */
    private void plates(double face, double grip, double d) {
        double inner = d * 0.55;
        for (int side = -1; side <= 1; side += 2) {
            double left = side < 0 ? AXIS - PLATE : AXIS + inner;
            for (int plate = 0; plate < 2; plate++) {
                double top = face + plate * grip / 2;
                sketch.box("plate", left, top, PLATE - inner, grip / 2);
                hatch(left, left + PLATE - inner, top, grip / 2, plate == 0);
            }
        }
    }

    /** Lines at 45 degrees across a box, leaning right or left on their way down. */
    private void hatch(double left, double right, double top, double tall, boolean leansRight) {
        double wide = right - left;
        for (double start = HATCH - tall; start < wide; start += HATCH) {
            double from = Math.max(0, start);
            double to = Math.min(wide, start + tall);
            double x1 = leansRight ? left + from : right - from;
            double x2 = leansRight ? left + to : right - to;
            sketch.line("hatch", x1, top + from - start, x2, top + to - start);
        }
    }

    private void edges(double top, double tall) {
        double quarter = across * scale / 4;
        sketch.line("thin", AXIS - quarter, top, AXIS - quarter, top + tall);
        sketch.line("thin", AXIS + quarter, top, AXIS + quarter, top + tall);
    }

    /** The thread with as many turns as it has. */
    private void shank(double face, double end, double d) {
        double depth = (thread.diameterMm() - thread.rootDiameterMm()) / 2 * scale;
        double pitch = Math.max(1.5, thread.pitchMm() * scale);
        Outline outline = new Outline().from(AXIS - d / 2 + depth, face);
        int turns = (int) Math.floor((end - face) / pitch);
        for (int i = 0; i < turns; i++) {
            outline.to(AXIS - d / 2, face + (i + 0.5) * pitch).to(AXIS - d / 2 + depth, face + (i + 1) * pitch);
        }
        for (int i = turns; i > 0; i--) {
            outline.to(AXIS + d / 2 - depth, face + i * pitch).to(AXIS + d / 2, face + (i - 0.5) * pitch);
        }
        outline.to(AXIS + d / 2 - depth, face).close();
        sketch.path("bolt", outline);
    }

    private void across(double d) {
        double half = across * scale / 2;
        sketch.line("dim", AXIS - half, TOP - 16, AXIS + half, TOP - 16);
        tick(AXIS - half, TOP - 16);
        tick(AXIS + half, TOP - 16);
        sketch.text(AXIS + Math.max(half, d) + 8, TOP - 12, "", new Length(across).acrossFlats() + " across flats");
    }

    private void diameter(double end, double d) {
        sketch.line("dim", AXIS - d / 2, end + 8, AXIS + d / 2, end + 8);
        tick(AXIS - d / 2, end + 8);
        tick(AXIS + d / 2, end + 8);
        sketch.text(
                AXIS + d / 2 + 8,
                end + 12,
                "",
                thread.designation() + ", pitch " + Outline.figure(thread.pitchMm()) + " mm");
    }

    private void rubs(double face) {
        double half = bearing * scale / 2;
        sketch.line("rub", AXIS - half - 4, face, AXIS - half + 4, face);
        sketch.line("rub", AXIS + half - 4, face, AXIS + half + 4, face);
    }

    private void squeeze(double face, double grip, String clamp) {
        double x = AXIS - 146;
        sketch.line("force", x, face - 22, x, face - 2);
        sketch.path("arrow", new Outline().loop(x, face, x - 5, face - 9, x + 5, face - 9));
        sketch.line("force", x, face + grip + 22, x, face + grip + 2);
        sketch.path("arrow", new Outline().loop(x, face + grip, x - 5, face + grip + 9, x + 5, face + grip + 9));
        sketch.text(14, face + grip + 44, "", clamp);
    }

    private void tick(double x, double y) {
        sketch.line("dim", x - 3, y + 3, x + 3, y - 3);
    }
}
