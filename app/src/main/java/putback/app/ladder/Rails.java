package putback.app.ladder;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.Plan;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.quantity.Minutes;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Part;

/** Reads the steps of a plan onto the two rails, both from the top down. */
final class Rails {
    private final Depths depths;
    private final Wanted wanted;
    private final List<Cell> left = new ArrayList<>();
    private final List<Cell> right = new ArrayList<>();
    private final List<AidSpan> aids = new ArrayList<>();

    private Rails(Depths depths, Wanted wanted) {
        this.depths = depths;
        this.wanted = wanted;
    }

    static Rails of(Plan plan) {
        Rails rails = new Rails(Depths.of(plan), plan.wanted());
        for (Step step : plan.steps()) {
            rails.read(step);
        }
        Collections.reverse(rails.right);
        return rails;
    }

    List<Cell> left() {
        return left;
    }

    List<Cell> right() {
        return right;
    }

    List<AidSpan> aids() {
        return aids;
    }

    private void read(Step step) {
        switch (step.act()) {
            case HEIGHT -> add(step, Cell.Kind.HEIGHT, Figures.change(step.height()));
            case BREAK_LOOSE -> add(step, Cell.Kind.LOOSE, jointName(step));
            case UNDO -> undo(step);
            case TAKE_OFF -> leaves(step);
            case SUPPORT -> aidOn(step, capital(aid(step)) + " on" + partName(step, ": "));
            case ASIDE -> aside(step);
            case RELEASE -> aidOff(step);
            case LET_DOWN -> add(step, Cell.Kind.OTHER, "Let down" + partName(step, ": "));
            case JACK_UP -> add(step, Cell.Kind.OTHER, "Jack up" + partName(step, ": "));
            case START -> add(step, Cell.Kind.JOINT, jointName(step));
            case RUN_DOWN, TIGHTEN -> tighten(step);
            case FOLLOW_UP -> add(step, Cell.Kind.FOLLOW_UP, followUpName(step));
            default -> {}
        }
    }

    /** A joint broken loose just before it is undone makes one cell of both. */
    private void undo(Step step) {
        int last = left.size() - 1;
        boolean loosened = last >= 0
                && left.get(last).kind() == Cell.Kind.LOOSE
                && left.get(last).jointIndex() == index(step);
        Minutes before = loosened ? left.remove(last).minutes() : Minutes.ZERO;
        add(step, Cell.Kind.JOINT, jointName(step));
        grow(left, left.size() - 1, before);
    }

    private void leaves(Step step) {
        Part part = step.part();
        if (step.phase() != Phase.APART || part == null) {
            return;
        }
        for (int i = left.size() - 1; i >= 0; i--) {
            if (left.get(i).kind() == Cell.Kind.JOINT) {
                left.set(i, left.get(i).alsoLeaving(group(part, step.with())));
                return;
            }
        }
    }

    /** The unit that leaves in one piece, or the part with what is on it. */
    private String group(Part part, List<Part> others) {
        List<Integer> rest = new ArrayList<>(others.stream().map(Part::index).toList());
        rest.add(part.index());
        String name = part.name();
        for (Target target : wanted.targets()) {
            if (target instanceof Target.OfUnit of && rest.containsAll(of.unit().parts())) {
                name = of.name();
                rest.removeAll(of.unit().parts());
            }
        }
        rest.remove((Integer) part.index());
        String comma = " with ";
        StringBuilder names = new StringBuilder(name);
        for (Part other : others) {
            if (rest.contains(other.index())) {
                names.append(comma)
                        .append(low(other.side() == part.side() ? other.entry().name() : other.name()));
                comma = ", ";
            }
        }
        return names.toString();
    }

    private void aside(Step step) {
        if (aid(step).isEmpty()) {
            add(step, Cell.Kind.OTHER, "Aside" + partName(step, ": "));
        } else if (aids.stream().anyMatch(span -> span.isOpenFor(step))) {
            add(step, Cell.Kind.OTHER, "Hangs on its " + aid(step) + partName(step, ": "));
        } else {
            aidOn(step, "Aside on " + aid(step) + partName(step, ": "));
        }
    }

    private void aidOn(Step step, String text) {
        aids.add(new AidSpan(aid(step), step.part(), step.number()));
        add(step, Cell.Kind.AID_ON, text);
    }

    private void aidOff(Step step) {
        if (aid(step).isEmpty()) {
            add(step, Cell.Kind.OTHER, "Back" + partName(step, ": "));
            return;
        }
        boolean ends = aids.stream().anyMatch(span -> span.endsWith(step));
        add(step, ends ? Cell.Kind.AID_OFF : Cell.Kind.OTHER, capital(aid(step)) + " off" + partName(step, ": "));
    }

    /** Tightened where it was closed, or further up because the car stands otherwise by then. */
    private void tighten(Step step) {
        for (int i = right.size() - 1; i >= 0; i--) {
            Cell cell = right.get(i);
            if (index(step) < 0 || cell.jointIndex() != index(step)) {
                continue;
            }
            if (cell.height() == step.height() || step.act() == Act.RUN_DOWN) {
                grow(right, i, step.minutes());
                right.set(i, right.get(i).turnedWith(tool(step)));
            } else {
                right.set(i, cell.as(Cell.Kind.STARTED, cell.minutes()));
                add(step, Cell.Kind.TIGHTENED, jointName(step));
            }
            return;
        }
        add(step, Cell.Kind.TIGHTENED, jointName(step));
    }

    private static void grow(List<Cell> cells, int at, Minutes more) {
        Cell cell = cells.get(at);
        cells.set(at, cell.as(cell.kind(), cell.minutes().plus(more)));
    }

    private void add(Step step, Cell.Kind kind, String text) {
        Joint joint = step.joint();
        List<Cell> rail = step.phase() == Phase.APART ? left : right;
        rail.add(new Cell(
                kind,
                step.number(),
                joint,
                joint == null ? null : step.fastener() == null ? joint.fastener() : step.fastener(),
                text,
                tool(step),
                step.minutes(),
                step.station(),
                step.side(),
                known(step.height()),
                joint == null ? 0 : depths.of(joint.index()),
                List.of()));
    }

    private static Height known(Height height) {
        return height == Height.ANY ? Height.RAISED : height;
    }

    private static String tool(Step step) {
        String tool = step.tool().equals("hand") ? "by hand" : step.tool();
        return together(step.hold().isEmpty() ? tool : tool + ", hold " + step.hold());
    }

    /** A figure stays with its unit when the line is broken. */
    private static String together(String text) {
        int hold = text.indexOf(", hold ");
        String fixed = text.replace(" mm", Measure.FIXED_SPACE + "mm");
        return hold < 0
                ? fixed
                : fixed.substring(0, hold + 1) + " " + fixed.substring(hold + 2).replace(' ', Measure.FIXED_SPACE);
    }

    private static String jointName(Step step) {
        Joint joint = step.joint();
        return joint == null ? step.text() : joint.name();
    }

    private static int index(Step step) {
        Joint joint = step.joint();
        return joint == null ? -1 : joint.index();
    }

    private static String followUpName(Step step) {
        return step.followUp() == null ? step.text() : step.followUp().name();
    }

    private static String partName(Step step, String before) {
        Part part = step.part();
        return part == null ? "" : before + part.name();
    }

    private static String aid(Step step) {
        @Nullable String aid = step.aid();
        return aid == null ? "" : aid;
    }

    /** A name inside a line: {@code ABS lead} keeps its capitals. */
    private static String low(String name) {
        boolean plain = name.length() > 1 && Character.isLowerCase(name.charAt(1));
        return plain ? Character.toLowerCase(name.charAt(0)) + name.substring(1) : name;
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
