package putback.app.wheels;

import java.util.ArrayList;
import java.util.List;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Hub;
import putback.angles.linkage.Layout;
import putback.angles.space.Turn;
import putback.angles.space.Vector;

/** One corner to scale from the front, from its side and from above, with its steering axis. */
public final class CornerSvg {
    private static final int ROUND = 48;
    private static final double PX = 300;
    private static final double TYRE_WIDTH = 0.3;
    private static final double EDGE = 24;
    private static final double GAP = 44;
    private static final String SAID = "A corner from the front, from its side and from above";
    private static final String AXIS = "Ochre dashes: steering axis.";

    private final Corner corner;
    private final Hub hub;

    /** A straight piece of it. */
    private record Piece(String kind, Vector from, Vector to) {}

    /** How a point is put on the paper: across and up. */
    private enum View {
        FRONT("from the front"),
        SIDE("from its side, front of the car to the left"),
        ABOVE("from above, front of the car at the top");

        private final String said;

        View(String said) {
            this.said = said;
        }

        double across(Vector point) {
            return this == SIDE ? -point.x() : point.y();
        }

        double up(Vector point) {
            return this == ABOVE ? point.x() : point.z();
        }
    }

    private CornerSvg(Corner corner, Hub hub) {
        this.corner = corner;
        this.hub = hub;
    }

    /** As designed; SVG, a document of its own. */
    public static String draw(Corner corner) {
        return draw(corner, 0, DrawnFor.FILE);
    }

    /** At some travel of the wheel centre, upward positive; as designed where the linkage does not go there. */
    public static String draw(Corner corner, double travelMm, DrawnFor looked) {
        Hub there = Hub.at(corner, travelMm);
        Hub hub = there == null ? Hub.at(corner, 0) : there;
        return hub == null
                ? new Drawing(PX, PX, "a corner that does not close", looked).done()
                : new CornerSvg(corner, hub).all(there == null ? 0 : travelMm, looked);
    }

    private String all(double travelMm, DrawnFor looked) {
        List<Vector> outline = outline();
        double[] front = extent(View.FRONT, outline);
        double[] side = extent(View.SIDE, outline);
        double[] above = extent(View.ABOVE, outline);
        if (looked.narrow()) {
            return under(travelMm, looked, front, side, above);
        }
        double scale = PX / Math.max(front[1] - front[0], front[3] - front[2]);
        double tall = scale * (front[3] - front[2]);
        double wide = scale * (front[1] - front[0]);
        double width = wide + scale * (side[1] - side[0]) + 150;
        double height = tall + scale * (above[3] - above[2]) + 190;
        Drawing drawing = new Drawing(width, height, SAID, looked);
        drawing.text("title", 24, 34, title());
        drawing.text("quiet", 24, 54, at(travelMm) + " " + AXIS);
        view(drawing, View.FRONT, front, scale, 40, 90);
        view(drawing, View.SIDE, side, scale, wide + 100, 90);
        view(drawing, View.ABOVE, above, scale, 40, tall + 150);
        return drawing.done();
    }

    /** The views under one another, to the same scale. */
    private String under(double travelMm, DrawnFor looked, double[]... extents) {
        double scale = PX / Math.max(extents[0][1] - extents[0][0], extents[0][3] - extents[0][2]);
        double height = 92;
        for (double[] extent : extents) {
            scale = Math.min(scale, (Drawing.NARROW - 2 * EDGE) / (extent[1] - extent[0]));
        }
        for (double[] extent : extents) {
            height += scale * (extent[3] - extent[2]) + GAP;
        }
        Drawing drawing = new Drawing(Drawing.NARROW, height, SAID, looked);
        drawing.text("title", 12, 28, title());
        drawing.text("quiet", 12, 47, at(travelMm));
        drawing.text("quiet", 12, 63, AXIS);
        double top = 100;
        for (View view : View.values()) {
            double[] extent = extents[view.ordinal()];
            double wide = scale * (extent[1] - extent[0]);
            view(drawing, view, extent, scale, (Drawing.NARROW - wide) / 2, top);
            top += scale * (extent[3] - extent[2]) + GAP;
        }
        return drawing.done();
    }

    private String title() {
        return corner.right() ? "Right wheel, drawn as a left one" : "Left wheel";
    }

    private static String at(double travelMm) {
        return "Wheel centre at a travel of " + Drawing.figure(travelMm) + " mm.";
    }

    private void view(Drawing drawing, View view, double[] extent, double scale, double left, double top) {
        drawing.text("quiet", left, top - 8, view.said);
        if (view != View.ABOVE) {
            double ground = top + scale * (extent[3] - lowest());
            drawing.line("rule", left, ground, left + scale * (extent[1] - extent[0]), ground);
        }
        for (List<Vector> ring : rings()) {
            double[] points = new double[2 * ring.size()];
            for (int i = 0; i < ring.size(); i++) {
                points[2 * i] = left + scale * (view.across(ring.get(i)) - extent[0]);
                points[2 * i + 1] = top + scale * (extent[3] - view.up(ring.get(i)));
            }
            drawing.path("hair", true, points);
        }
        for (Piece piece : pieces()) {
            double x1 = left + scale * (view.across(piece.from) - extent[0]);
            double y1 = top + scale * (extent[3] - view.up(piece.from));
            double x2 = left + scale * (view.across(piece.to) - extent[0]);
            double y2 = top + scale * (extent[3] - view.up(piece.to));
            drawing.line(piece.kind, x1, y1, x2, y2);
            if (piece.kind.equals("bold")) {
                drawing.circle("pin", x1, y1, 4);
                drawing.circle("pin", x2, y2, 4);
            }
        }
    }

    private List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        Layout.Arm lower = corner.layout().lower();
        Vector ball = hub.of(lower.ball());
        arm(pieces, lower);
        Vector upper = corner.layout().upperPivot();
        if (corner.layout() instanceof Layout.DoubleWishbone two) {
            arm(pieces, two.upper());
            upper = hub.of(upper);
        } else if (corner.layout() instanceof Layout.Strut strut) {
            pieces.add(new Piece("bold", hub.of(strut.clamp()), strut.top()));
        }
        pieces.add(new Piece("bold", corner.rodInner(), hub.of(corner.rodOuter())));
        List<List<Vector>> rings = rings();
        for (int i = 0; i < ROUND; i += ROUND / 4) {
            pieces.add(new Piece("hair", rings.get(0).get(i), rings.get(1).get(i)));
        }
        Vector centre = hub.of(corner.wheelCentre());
        pieces.add(new Piece("line", ball, centre));
        pieces.add(new Piece("line", hub.of(corner.rodOuter()), centre));
        Vector axis = upper.minus(ball);
        double down = axis.z() == 0 ? 0 : (lowest() - ball.z()) / axis.z();
        pieces.add(new Piece("ochre-dash", ball.plus(axis.times(down)), upper));
        return pieces;
    }

    private void arm(List<Piece> pieces, Layout.Arm arm) {
        Vector ball = hub.of(arm.ball());
        pieces.add(new Piece("bold", arm.front(), ball));
        pieces.add(new Piece("bold", arm.rear(), ball));
    }

    private Vector spin() {
        Vector centre = corner.wheelCentre();
        return hub.of(centre.plus(corner.spinAxis())).minus(hub.of(centre));
    }

    /** Both edges of the tyre, and its middle plane. */
    private List<List<Vector>> rings() {
        List<List<Vector>> rings = new ArrayList<>();
        Vector spin = spin();
        Vector arm = spin.square().times(corner.tyreRadiusMm());
        for (double share : new double[] {-TYRE_WIDTH, TYRE_WIDTH}) {
            Vector centre = hub.of(corner.wheelCentre()).plus(spin.times(share * corner.tyreRadiusMm()));
            List<Vector> ring = new ArrayList<>();
            for (int i = 0; i < ROUND; i++) {
                ring.add(
                        centre.plus(Turn.by(spin.times(2 * Math.PI * i / ROUND)).of(arm)));
            }
            rings.add(ring);
        }
        return rings;
    }

    /** Height of the ground under the middle of the tyre. */
    private double lowest() {
        Vector spin = spin();
        return hub.of(corner.wheelCentre()).z() - corner.tyreRadiusMm() * Math.sqrt(1 - spin.z() * spin.z());
    }

    private List<Vector> outline() {
        List<Vector> all = new ArrayList<>();
        rings().forEach(all::addAll);
        for (Piece piece : pieces()) {
            all.add(piece.from);
            all.add(piece.to);
        }
        return all;
    }

    /** Least and greatest across, then up. */
    private static double[] extent(View view, List<Vector> points) {
        double[] extent = {
            Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (Vector point : points) {
            extent[0] = Math.min(extent[0], view.across(point));
            extent[1] = Math.max(extent[1], view.across(point));
            extent[2] = Math.min(extent[2], view.up(point));
            extent[3] = Math.max(extent[3], view.up(point));
        }
        return extent;
    }
}
