package putback.angles.space;

/** A rotation as a unit quaternion. Source: textbook, Rodrigues. */
public record Turn(double w, double x, double y, double z) {
    public static final Turn NONE = new Turn(1, 0, 0, 0);

    /**
     * A rotation about an axis, right-handed.
     *
     * @param vector along the axis, as long as the angle in radians
     */
    public static Turn by(Vector vector) {
        double angle = vector.length();
        double share = angle < 1e-9 ? 0.5 : Math.sin(angle / 2) / angle;
        return new Turn(Math.cos(angle / 2), vector.x() * share, vector.y() * share, vector.z() * share);
    }

    /** This one done after another. */
    public Turn after(Turn first) {
        return new Turn(
                        w * first.w - x * first.x - y * first.y - z * first.z,
                        w * first.x + x * first.w + y * first.z - z * first.y,
                        w * first.y - x * first.z + y * first.w + z * first.x,
                        w * first.z + x * first.y - y * first.x + z * first.w)
                .unit();
    }

    /** A vector after the rotation. */
    public Vector of(Vector vector) {
        Vector axis = new Vector(x, y, z);
        Vector across = axis.cross(vector).times(2);
        return vector.plus(across.times(w)).plus(axis.cross(across));
    }

    private Turn unit() {
        double length = Math.sqrt(w * w + x * x + y * y + z * z);
        return new Turn(w / length, x / length, y / length, z / length);
    }
}
