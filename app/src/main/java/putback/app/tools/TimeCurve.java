package putback.app.tools;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.time.JobTime;

/**
 * How long a job may take, as a curve: the higher, the likelier. Upright lines for the likely time, for the time that four
 * jobs in five keep to, for the one after which to stop and call, and for the ceiling with what lies beyond it.
 */
public final class TimeCurve {
    private static final double LEFT = 12;
    private static final double LETTER = 7;
    private static final double BASE = 168;
    private static final double TALL = 108;
    private static final int POINTS = 160;
    private static final double LAST = 0.995;
    private static final double ROOM = 1.06;
    private static final double[] STEPS = {1, 2, 5, 10, 20, 30, 60, 120, 240, 480, 960, 2400, 6000};
    private static final double TICK = 70;
    private static final double FIRST_ROW = 12;
    private static final double ROW = 16;

    private final JobTime time;
    private final double width;
    private final double from;
    private final double to;
    private final Sketch sketch = new Sketch();

    private TimeCurve(JobTime time, @Nullable Double ceilingMinutes, int width) {
        this.time = time;
        this.width = width - 2 * LEFT;
        double first = time.quantile(1 - LAST);
        double last = time.quantile(LAST);
        if (ceilingMinutes != null && ceilingMinutes > first && ceilingMinutes < 2 * last) {
            last = Math.max(last, ceilingMinutes * ROOM);
        }
        this.from = Math.max(0, first - (last - first) * (ROOM - 1));
        this.to = Math.max(last, from + 1);
    }

    /**
     * SVG with a title in words.
     *
     * @param ceilingMinutes labour that the ceiling leaves room for; null without one
     * @param early whether the ceiling comes before what one job in twenty exceeds
     * @param jams whether some jobs end at a fixing that nothing moves; they are in the curve as if its last try had worked
     * @param width of the picture in px: 680 for a screen, 350 for a telephone
     */
    public static String draw(JobTime time, @Nullable Double ceilingMinutes, boolean early, boolean jams, int width) {
        return new TimeCurve(time, ceilingMinutes, width).write(ceilingMinutes, early, jams);
    }

    private String write(@Nullable Double ceiling, boolean early, boolean jams) {
        long likely = Math.round(time.quantile(0.5));
        long most = Math.round(time.quantile(0.8));
        long stop = Math.round(time.quantile(0.95));
        sketch.raw("<svg class=\"curve\" viewBox=\"0 0 " + (int) (width + 2 * LEFT) + " 212\" role=\"img\"");
        sketch.raw(" aria-label=\"Likely " + likely + " minutes; four jobs in five "
                + (jams ? "are done, or stopped to ask, within " : "keep to ") + most
                + ", one in twenty takes over " + stop + "\">");
        double[] heights = heights();
        area("hill", heights, 0);
        if (ceiling != null && ceiling < to) {
            area("beyond", heights, (int) Math.round((Math.max(ceiling, from) - from) / (to - from) * POINTS));
        }
        ticks();
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark("likely", time.quantile(0.5), "likely " + likely));
        marks.add(new Mark("most", time.quantile(0.8), (jams ? "4 in 5 done or stopped: " : "4 jobs in 5: ") + most));
        marks.add(new Mark("stop", time.quantile(0.95), (early ? "1 in 20 over: " : "stop and call: ") + stop));
        if (ceiling != null && ceiling >= from && ceiling < to) {
            marks.add(new Mark(
                    "ceiling", ceiling, (early ? "ceiling, stop and call: " : "ceiling: ") + Math.round(ceiling)));
        }
        marks.sort(Comparator.comparingDouble(Mark::minutes));
        double row = FIRST_ROW;
        for (Mark mark : marks) {
            upright(mark.kind, mark.minutes, row, mark.words);
            row += ROW;
        }
        return sketch.raw("</svg>").toString();
    }

    /** An upright line. Further right its words stand lower, so that no line crosses them. */
    private record Mark(String kind, double minutes, String words) {}

    /** Share of jobs in each slice of time, the largest 1. */
    private double[] heights() {
        double[] heights = new double[POINTS];
        double above = time.chanceAbove(from);
        double highest = 0;
        for (int i = 0; i < POINTS; i++) {
            double next = time.chanceAbove(from + (i + 1) * (to - from) / POINTS);
            heights[i] = Math.max(0, above - next);
            highest = Math.max(highest, heights[i]);
            above = next;
        }
        for (int i = 0; i < POINTS; i++) {
            heights[i] = highest == 0 ? 0 : heights[i] / highest;
        }
        return heights;
    }

    private void area(String kind, double[] heights, int first) {
        if (first >= POINTS) {
            return;
        }
        Outline outline = new Outline().from(LEFT + width * first / POINTS, BASE);
        for (int i = first; i < POINTS; i++) {
            outline.to(LEFT + width * (i + 0.5) / POINTS, BASE - TALL * heights[i]);
        }
        outline.to(LEFT + width, BASE).close();
        sketch.path(kind, outline);
    }

    private void ticks() {
        sketch.line("base", LEFT, BASE, LEFT + width, BASE);
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            if ((to - from) / STEPS[i] <= width / TICK) {
                step = STEPS[i];
            }
        }
        for (double at = Math.ceil(from / step) * step; at < to; at += step) {
            double x = x(at);
            sketch.line("base", x, BASE, x, BASE + 6);
            sketch.text(x, BASE + 20, "mid", clock(at));
        }
    }

    private static String clock(double minutes) {
        long whole = Math.round(minutes);
        return whole < 60 ? whole + " min" : whole / 60 + ":" + (whole % 60 < 10 ? "0" : "") + whole % 60 + " h";
    }

    private void upright(String kind, double minutes, double top, String words) {
        double x = x(Math.min(minutes, to));
        boolean late = x + LETTER * (words.length() + 4) > LEFT + width;
        sketch.line(kind, x, late ? top + 12 : top, x, BASE);
        sketch.text(late ? LEFT + width : x + 6, top + 8, late ? "end" : "", words + " min");
    }

    private double x(double minutes) {
        return LEFT + width * (minutes - from) / (to - from);
    }
}
