package putback.app.tools;

/** Writes the outline of a shape as the data of an SVG path. Lengths in px, to a hundredth. */
final class Outline {
    private final StringBuilder data = new StringBuilder(160);

    Outline from(double x, double y) {
        return point('M', x, y);
    }

    Outline to(double x, double y) {
        return point('L', x, y);
    }

    Outline close() {
        data.append('Z');
        return this;
    }

    /** A closed run of points: x1, y1, x2, y2 ... */
    Outline loop(double... points) {
        from(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            to(points[i], points[i + 1]);
        }
        return close();
    }

    Outline box(double x, double y, double width, double height) {
        return loop(x, y, x + width, y, x + width, y + height, x, y + height);
    }

    Outline circle(double x, double y, double radius) {
        return from(x - radius, y)
                .arc(radius, true, x + radius, y)
                .arc(radius, true, x - radius, y)
                .close();
    }

    /** Along a circle to a point, clockwise on the screen. */
    Outline arc(double radius, boolean large, double x, double y) {
        data.append('A').append(figure(radius)).append(' ').append(figure(radius));
        data.append(" 0 ").append(large ? '1' : '0').append(" 1 ");
        data.append(figure(x)).append(' ').append(figure(y));
        return this;
    }

    /** A regular hexagon with two sides upright. */
    Outline hexagon(double x, double y, double acrossFlats) {
        double half = acrossFlats / 2;
        double corner = acrossFlats / Math.sqrt(3);
        return loop(
                x,
                y - corner,
                x + half,
                y - corner / 2,
                x + half,
                y + corner / 2,
                x,
                y + corner,
                x - half,
                y + corner / 2,
                x - half,
                y - corner / 2);
    }

    private Outline point(char command, double x, double y) {
        data.append(command).append(figure(x)).append(' ').append(figure(y));
        return this;
    }

    static String figure(double value) {
        double hundredths = Math.rint(value * 100) / 100;
        return hundredths == Math.rint(hundredths) ? Long.toString((long) hundredths) : Double.toString(hundredths);
    }

    @Override
    public String toString() {
        return data.toString();
    }
}
