package putback.ledger.onward;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import putback.plan.Plan;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Ties;
import putback.sheet.Joint;
import putback.sheet.Part;

/** What keeps a joint from being opened now. */
final class InTheWay {
    private final Plan plan;
    private final Network network;
    private final Ties ties;
    private final BitSet open;
    private final BitSet planned;
    private final BitSet asides = new BitSet();

    /**
     * @param open all joints that are open now, those beyond the plan too
     * @param planned joints that the plan opens
     */
    InTheWay(Plan plan, BitSet open, BitSet planned) {
        this.plan = plan;
        this.network = Network.of(plan.assembly());
        this.ties = Ties.of(plan.assembly(), open);
        this.open = open;
        this.planned = planned;
        for (int part : plan.selection().aside()) {
            asides.set(part);
        }
    }

    /** One sentence; empty when nothing is. */
    String of(Joint joint) {
        List<String> first = new ArrayList<>();
        for (int before : network.after(joint.index())) {
            add(first, before);
        }
        for (int ahead : network.opensBehind(joint.index())) {
            if (planned.get(ahead)) {
                add(first, ahead);
            }
        }
        if (!first.isEmpty()) {
            return joint.name() + " comes after " + list(first) + ".";
        }
        for (int[] clause : network.clauses(joint.index())) {
            List<String> blockers = blockers(clause, joint.index());
            if (!blockers.isEmpty()) {
                return "In the way of " + low(joint.name()) + ": " + String.join(" or ", blockers) + ".";
            }
        }
        if (network.isBench(joint.index()) && !ties.allOff(joint.index())) {
            return joint.name() + " is opened on the bench, and " + list(onTheCar(joint)) + " still on the car.";
        }
        return "";
    }

    private void add(List<String> names, int joint) {
        String name = low(plan.assembly().joints().get(joint).name());
        if (!open.get(joint) && !names.contains(name)) {
            names.add(name);
        }
    }

    /** The parts of a clause, none of which is clear; none where one is. */
    private List<String> blockers(int[] clause, int joint) {
        List<String> names = new ArrayList<>();
        for (int part : clause) {
            if (Accessibility.isAside(network, part, open, asides) || ties.separated(part, joint)) {
                return List.of();
            }
            names.add("the " + low(part(part).name()));
        }
        return names;
    }

    private List<String> onTheCar(Joint joint) {
        List<String> names = new ArrayList<>();
        for (int part : joint.joins()) {
            if (!ties.off(part)) {
                names.add("the " + low(part(part).name()));
            }
        }
        return names;
    }

    private Part part(int index) {
        return plan.assembly().parts().get(index);
    }

    private static String list(List<String> names) {
        return String.join(" and ", names);
    }

    /** Inside a sentence: {@code strut, left}; {@code ABS lead, left} keeps its capitals. */
    private static String low(String name) {
        boolean word = name.length() > 1 && (Character.isLowerCase(name.charAt(1)) || name.charAt(1) == ' ');
        return word ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
    }
}
