package putback.app.ladder;

/** The outline of a path, point by point. */
final class Track {
    private final StringBuilder points = new StringBuilder();

    Track to(double x, double y) {
        return step(points.isEmpty() ? "M" : "L", x, y);
    }

    /** Lifts the pen and puts it down elsewhere. */
    Track from(double x, double y) {
        return step("M", x, y);
    }

    /** Rounds the corner at the first point on the way to the second. */
    Track bend(double cornerX, double cornerY, double x, double y) {
        step("Q", cornerX, cornerY);
        return step(" ", x, y);
    }

    Track close() {
        points.append('Z');
        return this;
    }

    private Track step(String letter, double x, double y) {
        points.append(letter);
        Pen.append(points, x);
        points.append(' ');
        Pen.append(points, y);
        return this;
    }

    String text() {
        return points.toString();
    }
}
