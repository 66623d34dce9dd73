package putback.app.wheels;

/**
 * Where things stand on a drawing of the car, px.
 *
 * @param front height of the front axle from the top
 * @param rear height of the rear axle
 * @param halfTrack from the middle to a wheel
 * @param half half the width of the body
 * @param over how far the body stands out over an axle
 * @param ray length of the line of thrust
 * @param beside from a wheel to where it is drawn from behind
 * @param frontLabel height of the first line at a front wheel
 * @param rearLabel height of the first line at a rear wheel
 */
record CarLayout(
        double width,
        double height,
        double front,
        double rear,
        double halfTrack,
        double half,
        double over,
        double ray,
        double beside,
        double frontLabel,
        double rearLabel) {
    private static final double WHEEL = 58;
    private static final double TALL = 250;

    /** Labels beside the wheels. */
    static CarLayout wide() {
        return new CarLayout(760, 800, 200, 590, 130, 78, 92, 330, 62, 132, 522);
    }

    /**
     * Labels above the front wheels and below the rear ones.
     *
     * @param head what the lines of the head take
     * @param above what the labels of the front wheels take
     * @param below those of the rear wheels
     * @param foot what the lines of the foot take
     */
    static CarLayout narrow(double head, double above, double below, double foot) {
        double front = head + 24 + above + 14 + WHEEL;
        double rear = front + TALL;
        double rearLabel = rear + WHEEL + 30;
        double height = rearLabel + below + foot + 14;
        return new CarLayout(Drawing.NARROW, height, front, rear, 70, 42, 60, 200, 56, head + 24, rearLabel);
    }

    double middle() {
        return width / 2;
    }

    double edge() {
        return width > Drawing.NARROW ? 24 : 8;
    }
}
