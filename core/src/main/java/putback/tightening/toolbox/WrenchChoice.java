package putback.tightening.toolbox;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;
import putback.quantity.Torque;
import putback.tightening.Adapter;
import putback.tightening.Graduation;
import putback.tightening.ReadingWindow;

/** Picks the torque wrench of a toolbox that suits a tightening best. */
public final class WrenchChoice {
    private final Toolbox toolbox;
    private final LocalDate on;

    /**
     * @param on the day of the work, by which calibration is judged
     */
    public WrenchChoice(Toolbox toolbox, LocalDate on) {
        this.toolbox = toolbox;
        this.on = on;
    }

    /**
     * The wrench inside whose marked range the torque lies; one that is not due for calibration before one that is, then
     * nearer the middle of its scale, then the smaller deviation, then the order of the toolbox. A wrench whose
     * deviation or marks are too coarse for the limits is passed over.
     */
    public Tightened of(Task task) {
        Reaching reaching = Reaching.of(toolbox, task.tool());
        if (toolbox.wrenches().isEmpty()) {
            return new Tightened.Untorqued("the toolbox has no torque wrench");
        }
        if (reaching == null) {
            return new Tightened.Untorqued("there is nothing to put on a torque wrench in place of the " + task.tool());
        }
        Tightened.With best = null;
        String tooCoarse = null;
        for (TorqueWrench wrench : toolbox.wrenches()) {
            if (!wrench.covers(task.torque()) || (task.leftHand() && !wrench.leftHand())) {
                continue;
            }
            Parsed<Tightened.With> used = use(wrench, task, reaching);
            if (used instanceof Parsed.Value<Tightened.With> with) {
                best = best == null || isBetter(with.value(), best, task.torque()) ? with.value() : best;
            } else if (tooCoarse == null) {
                tooCoarse = wrench.id() + ": " + used.refusal();
            }
        }
        return best != null ? best : new Tightened.Untorqued(tooCoarse != null ? tooCoarse : none(task));
    }

    private static boolean isBetter(Tightened.With one, Tightened.With other, Torque torque) {
        if (one.due().isEmpty() != other.due().isEmpty()) {
            return one.due().isEmpty();
        }
        int nearer =
                Double.compare(one.wrench().offMiddle(torque), other.wrench().offMiddle(torque));
        return nearer == 0 ? one.wrench().deviation() < other.wrench().deviation() : nearer < 0;
    }

    private Parsed<Tightened.With> use(TorqueWrench wrench, Task task, Reaching reaching) {
        Parsed<ReadingWindow> window = ReadingWindow.of(task.least(), task.most(), Adapter.NONE, wrench.deviation());
        if (!(window instanceof Parsed.Value<ReadingWindow> readable)) {
            return new Parsed.Refused<>(window.refusal());
        }
        Parsed<Torque> mark = mark(wrench, task);
        if (!(mark instanceof Parsed.Value<Torque> set)) {
            return new Parsed.Refused<>(mark.refusal());
        }
        Torque setting = set.value();
        if (!wrench.covers(setting) || !holds(readable.value(), setting)) {
            return new Parsed.Refused<>(
                    "its marks are too far apart for " + task.torque().text());
        }
        return new Parsed.Value<>(new Tightened.With(
                wrench,
                setting,
                readable.value().within(wrench.low(), wrench.high()),
                wrench.upkeep().due(on, toolbox.interval()),
                remarks(wrench, task, reaching)));
    }

    private static boolean holds(ReadingWindow window, Torque setting) {
        return setting.newtonMetres() >= window.low().newtonMetres()
                && setting.newtonMetres() <= window.high().newtonMetres();
    }

    private static Parsed<Torque> mark(TorqueWrench wrench, Task task) {
        Torque step = wrench.step();
        return step == null ? new Parsed.Value<>(task.torque()) : Graduation.nearest(task.torque(), step, task.most());
    }

    private static List<String> remarks(TorqueWrench wrench, Task task, Reaching reaching) {
        List<String> remarks = new ArrayList<>(reaching.remarks(wrench, task));
        if (wrench.isLow(task.torque())) {
            remarks.add("in the lowest fifth of its scale");
        }
        if (!wrench.deviationStated()) {
            remarks.add("its deviation is not stated, " + Torque.figure(100 * wrench.deviation())
                    + " % is taken (ISO 6789)");
        }
        if (task.angle() && !wrench.angle()) {
            remarks.add("it shows no angle: use an angle gauge, or mark nut and part");
        }
        return remarks;
    }

    private String none(Task task) {
        TorqueWrench nearest = null;
        boolean inRange = false;
        for (TorqueWrench wrench : toolbox.wrenches()) {
            inRange |= wrench.covers(task.torque());
            nearest = nearest == null || outside(wrench, task.torque()) < outside(nearest, task.torque())
                    ? wrench
                    : nearest;
        }
        return inRange
                ? "no wrench that reaches " + task.torque().text() + " measures turning left"
                : "no wrench is marked for " + task.torque().text() + nearest(nearest);
    }

    private static String nearest(@Nullable TorqueWrench wrench) {
        return wrench == null ? "" : "; the nearest is " + wrench.id() + ", " + wrench.rangeText();
    }

    private static double outside(TorqueWrench wrench, Torque torque) {
        double under = wrench.low().newtonMetres() - torque.newtonMetres();
        return Math.max(under, torque.newtonMetres() - wrench.high().newtonMetres());
    }
}
