package putback.app.ladder;

import putback.sheet.JointKind;

/**
 * The marks on the rails. An opened fixing is an empty bolt hole with its centre lines; a closed one sits on the outside
 * of the right rail, whose edge is the face that a nut comes down on.
 */
final class Marks {
    private static final double HOLE = 6;
    private static final double RING = 9;

    private final Pen pen;

    Marks(Pen pen) {
        this.pen = pen;
    }

    /** An opened joint on a rail at x. */
    void open(JointKind kind, double x, double y, boolean singleUse) {
        if (singleUse) {
            pen.circle("pb-line pb-on", x, y, RING);
        }
        if (kind.threaded()) {
            hole(x, y, singleUse ? RING + 3 : HOLE + 3.5);
        } else {
            pen.circle("pb-bare", x, y, RING - 1);
            plain(kind, x, y, false);
        }
    }

    private void hole(double x, double y, double reach) {
        pen.circle("pb-line pb-on", x, y, HOLE);
        pen.line("pb-hair", x - reach, y, x + reach, y);
        pen.line("pb-hair", x, y - reach, x, y + reach);
    }

    /** A joint broken loose or started: the nut is on its thread, away from the face. Outward is 1 to the right. */
    void started(double x, double y, int outward, boolean singleUse) {
        ring(x + outward * 14.5, y, singleUse);
        thread(x, y, outward);
        nut(x + outward * 14.5, y, false);
    }

    /** A tightened joint: the nut is down on its face. */
    void tight(double x, double y, int outward, boolean singleUse) {
        ring(x + outward * 7.5, y, singleUse);
        thread(x, y, outward);
        nut(x + outward * 7.5, y, true);
    }

    /** A joint without a thread that is closed. */
    void closed(JointKind kind, double x, double y, boolean singleUse) {
        ring(x + 11, y, singleUse);
        plain(kind, x + 11, y, true);
        pen.line("pb-line", x + 3, y, x + 5, y);
    }

    private void ring(double x, double y, boolean singleUse) {
        if (singleUse) {
            pen.circle("pb-line pb-on", x, y, RING + 0.5);
        }
    }

    private void thread(double x, double y, int outward) {
        double start = x + outward * 3;
        double end = x + outward * 19;
        pen.rect("pb-line pb-on", Math.min(start, end), y - 2.5, 16, 5);
        Track ticks = new Track();
        for (int i = 1; i < 6; i++) {
            double at = start + outward * (i * 2.7);
            ticks.from(at, y + 2.5).to(at + outward, y - 2.5);
        }
        pen.path("pb-hair", ticks);
        pen.line("pb-face", start, y - 8, start, y + 8);
    }

    /** A nut seen from its side. */
    private void nut(double middle, double y, boolean down) {
        pen.rect(down ? "pb-solid" : "pb-line pb-on", middle - 3.5, y - 6.5, 7, 13);
        String facet = down ? "pb-cut" : "pb-hair";
        pen.line(facet, middle - 3.5, y - 3, middle + 3.5, y - 3);
        pen.line(facet, middle - 3.5, y + 3, middle + 3.5, y + 3);
    }

    /** What has no thread: open it is drawn in outline and apart, closed it is solid and together. */
    private void plain(JointKind kind, double x, double y, boolean closed) {
        switch (kind) {
            case CLIP -> clip(x, y, closed);
            case PLUG -> plug(x, y, closed);
            case PIN -> pin(x, y, closed);
            case PRESS -> press(x, y, closed);
            case CIRCLIP -> circlip(x, y, closed);
            case HOOK -> hook(x, y, closed);
            default -> seat(x, y, closed);
        }
    }

    private void clip(double x, double y, boolean closed) {
        double gap = closed ? 0.6 : 3;
        Track jaw =
                new Track().to(x + 4.5, y - gap).to(x + 1.5, y - gap - 2).bend(x - 5.5, y - 4 - gap / 2, x - 5.5, y);
        jaw.bend(x - 5.5, y + 4 + gap / 2, x + 1.5, y + gap + 2).to(x + 4.5, y + gap);
        pen.path(closed ? "pb-bold" : "pb-line", jaw);
    }

    private void plug(double x, double y, boolean closed) {
        double gap = closed ? 0 : 1.8;
        String kind = closed ? "pb-solid" : "pb-line pb-on";
        pen.rect(kind, x - 6 - gap / 2, y - 3.5, 6, 7);
        pen.rect(closed ? "pb-line pb-on" : kind, x + gap / 2, y - 3.5, 6, 7);
        pen.line(closed ? "pb-line" : "pb-hair", x - gap, y - 1.5, x + 3, y - 1.5);
        pen.line(closed ? "pb-line" : "pb-hair", x - gap, y + 1.5, x + 3, y + 1.5);
    }

    private void pin(double x, double y, boolean closed) {
        pen.circle(closed ? "pb-bold" : "pb-line pb-on", x - 4, y, 2.6);
        double spread = closed ? 3.6 : 0.9;
        Track legs = new Track().to(x - 1.5, y - 0.9).to(x + 2, y - 0.9).to(x + 6, y - spread);
        legs.from(x - 1.5, y + 0.9).to(x + 2, y + 0.9).to(x + 6, y + spread);
        pen.path(closed ? "pb-bold" : "pb-line", legs);
    }

    private void press(double x, double y, boolean closed) {
        pen.rect("pb-line pb-on", x - 6, y - 6, 12, 4);
        pen.rect("pb-line pb-on", x - 6, y + 2, 12, 4);
        if (closed) {
            pen.rect("pb-solid", x - 4, y - 2, 8, 4);
        } else {
            pen.line("pb-hair", x - 8, y, x + 8, y);
        }
    }

    private void circlip(double x, double y, boolean closed) {
        double gap = closed ? 1.5 : 3.5;
        Track ring = new Track().to(x + 4.5, y - gap).bend(x + 3, y - 6, x - 0.5, y - 5.5);
        ring.bend(x - 6, y - 5, x - 6, y).bend(x - 6, y + 5, x - 0.5, y + 5.5).bend(x + 3, y + 6, x + 4.5, y + gap);
        pen.path(closed ? "pb-bold" : "pb-line", ring);
        pen.circle(closed ? "pb-solid" : "pb-line pb-on", x + 5, y - gap, 1.2);
        pen.circle(closed ? "pb-solid" : "pb-line pb-on", x + 5, y + gap, 1.2);
    }

    private void hook(double x, double y, boolean closed) {
        Track hook = new Track().to(x + 5, y - 5).to(x, y - 5).bend(x - 5, y - 5, x - 5, y);
        hook.bend(x - 5, y + 5, x, y + 5).bend(x + 3.5, y + 5, x + 3.5, y + 1);
        pen.path(closed ? "pb-bold" : "pb-line", hook);
        if (closed) {
            pen.circle("pb-solid", x - 0.5, y + 0.5, 1.8);
        }
    }

    private void seat(double x, double y, boolean closed) {
        Track cup = new Track().to(x - 6, y).to(x - 6, y + 5).to(x + 6, y + 5).to(x + 6, y);
        pen.path(closed ? "pb-bold" : "pb-line", cup);
        pen.rect(closed ? "pb-solid" : "pb-line pb-on", x - 3, closed ? y - 2 : y - 6, 6, closed ? 6 : 5);
    }

    /** Critical: a diamond on the rung, and the rung itself is solid. */
    void critical(double x, double y) {
        Track diamond =
                new Track().to(x - 6, y).to(x, y - 6).to(x + 6, y).to(x, y + 6).close();
        pen.path("pb-solid pb-halo", diamond);
    }

    /** The level mark of a change of height. */
    void level(double x, double y) {
        Track triangle = new Track().to(x - 7, y - 8).to(x + 7, y - 8).to(x, y).close();
        pen.path("pb-line pb-on", triangle);
        pen.line("pb-line", x - 9, y, x + 9, y);
    }

    /** An aid goes on or comes off: a short arm from the rail to its lane. */
    void aid(double x, double y, double lane) {
        pen.line("pb-aid", x, y, lane, y);
        pen.rect("pb-line pb-on", x - 4, y - 4, 8, 8);
        pen.circle("pb-dot", lane, y, 2);
    }

    /** Work that follows, or a part that moves: an open square on the rail. */
    void other(double x, double y, boolean followUp) {
        pen.rect("pb-line pb-on", x - 5, y - 5, 10, 10);
        if (followUp) {
            pen.path("pb-line", new Track().to(x - 2.5, y).to(x - 0.5, y + 2.5).to(x + 3, y - 2.5));
        }
    }
}
