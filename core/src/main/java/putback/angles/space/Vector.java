package putback.angles.space;

/** A point or direction: x forward, y left, z up. */
public record Vector(double x, double y, double z) {
    public static final Vector FORWARD = new Vector(1, 0, 0);
    public static final Vector LEFT = new Vector(0, 1, 0);
    public static final Vector UP = new Vector(0, 0, 1);

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    public Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    /** The same direction, one long; the vector must have a length. */
    public Vector unit() {
        return times(1 / length());
    }

    /** The same on the other side of the car. */
    public Vector mirrored() {
        return new Vector(x, y == 0 ? 0 : -y, z);
    }

    /** Some direction square to this one, one long. */
    public Vector square() {
        return cross(Math.abs(x) < Math.abs(z) || Math.abs(y) < Math.abs(z) ? FORWARD : UP)
                .unit();
    }
}
