package putback.angles.linkage;

import putback.angles.space.Vector;

/** Known corners for the tests. */
final class Corners {
    private static final Layout.Arm LOWER =
            new Layout.Arm(new Vector(250, 400, 200), new Vector(-250, 450, 200), new Vector(0, 900, 200));

    private Corners() {}

    static Corner strut() {
        return with(new Layout.Strut(LOWER, new Vector(-40, 700, 850), new Vector(-14, 830, 427.5)));
    }

    static Corner wishbones() {
        return with(new Layout.DoubleWishbone(
                LOWER,
                new Layout.Arm(new Vector(225, 350, 500), new Vector(-275, 350, 500), new Vector(-25, 750, 500))));
    }

    private static Corner with(Layout layout) {
        return new Corner(
                false,
                layout,
                new Vector(50, 200, 250),
                new Vector(150, 800, 275),
                new Vector(-20, 950, 313.426),
                new Vector(0, 150, 5).unit(),
                313.6,
                new Corner.Bolt(new Vector(-14, 850, 400), 60),
                1.5);
    }

    /** The strut stands off the steering axis. */
    static Corner offsetStrut() {
        Layout.Arm lower = new Layout.Arm(
                new Vector(270.51, 345.44, -59.69),
                new Vector(-43.18, 373.38, -125.73),
                new Vector(27.94, 662.94, -104.14));
        return new Corner(
                false,
                new Layout.Strut(lower, new Vector(-83.82, 541.02, 468.63), new Vector(-5.08, 619.76, -1.27)),
                new Vector(-200, 200, -50),
                new Vector(-200, 574.80376, -1.27),
                new Vector(0, 750.062, 0),
                Vector.LEFT,
                316,
                new Corner.Bolt(new Vector(0, 640, -20), 60),
                1.5);
    }
}
