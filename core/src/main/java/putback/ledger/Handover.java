package putback.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * What a colleague who takes over has to know, in the eight seconds that he looks. Everything is named, nothing is an id.
 *
 * @param where how the car stands and how far the job is, in one sentence
 * @param mustNot what must not be done with the car now, each with its reason; the worst first
 * @param out fixings that are out of their holes
 * @param loose fixings that are on and not tight: {@code Wheel nuts, left: run down}
 * @param away parts that are off, aside or hung
 * @param aids what is on the car only to help: {@code strap on hub carrier, left}
 * @param next the step to be done next; null where none is left
 * @param last who wrote down the last thing, and when
 */
public record Handover(
        String where,
        List<String> mustNot,
        List<String> out,
        List<String> loose,
        List<String> away,
        List<String> aids,
        @Nullable PlanStep next,
        Signature last) {
    public Handover {
        mustNot = List.copyOf(mustNot);
        out = List.copyOf(out);
        loose = List.copyOf(loose);
        away = List.copyOf(away);
        aids = List.copyOf(aids);
    }

    /** The card for a car that stands so. */
    public static Handover of(Standing standing) {
        return new Writing(standing).card();
    }

    private static final class Writing {
        private final Standing standing;
        private final Promised promised;
        private final List<String> out = new ArrayList<>();
        private final List<String> loose = new ArrayList<>();
        private final List<String> away = new ArrayList<>();
        private final List<String> aids = new ArrayList<>();

        private Writing(Standing standing) {
            this.standing = standing;
            this.promised = standing.promised();
        }

        private Handover card() {
            for (Map.Entry<String, JointState> joint : standing.joints().entrySet()) {
                String name = promised.name(joint.getKey());
                if (joint.getValue() == JointState.OUT) {
                    out.add(name);
                } else if (joint.getValue().isOpen()) {
                    loose.add(name + ": " + joint.getValue().word());
                }
            }
            for (Map.Entry<String, PartState> part : standing.parts().entrySet()) {
                if (part.getValue() != PartState.ON) {
                    away.add(promised.name(part.getKey()) + ": "
                            + part.getValue().word());
                }
            }
            for (AidOn aid : standing.aids()) {
                aids.add(aid.name() + " on " + promised.nameInside(aid.part()));
            }
            List<PlanStep> toDo = standing.toDo();
            PlanStep next = toDo.isEmpty() ? null : toDo.get(0);
            return new Handover(where(toDo.size()), mustNot(), out, loose, away, aids, next, standing.last());
        }

        private String where(int left) {
            Height height = standing.height();
            String car = height == null
                    ? "Nobody says how the car stands"
                    : height == Height.RAISED ? "The car stands raised" : "The car stands " + on(height);
            int all = promised.steps().size();
            String steps = left == 0 ? "no step is left" : left + " of " + all + " steps are left";
            return car + "; " + steps + ".";
        }

        private static String on(Height height) {
            return height == Height.RIDE_HEIGHT ? "at ride height" : height.word();
        }

        private List<String> mustNot() {
            List<String> mustNot = new ArrayList<>();
            Owing owing = standing.owing();
            String lowering = lowering();
            if (!lowering.isEmpty() && standing.height() != Height.ON_WHEELS) {
                mustNot.add("Do not lower it on its wheels: " + lowering + ".");
            }
            if (!owing.mayBeDriven()) {
                mustNot.add("Do not drive it: " + driving(owing) + ".");
            }
            for (AidOn aid : standing.aids()) {
                boolean holds = !out.isEmpty() || !loose.isEmpty();
                if (holds) {
                    mustNot.add("Do not take the " + (aid.aid().isEmpty() ? "aid" : aid.aid()) + " off "
                            + promised.nameInside(aid.part()) + ": not all that it stands in for is tight.");
                }
            }
            return mustNot;
        }

        /** What keeps the wheels from carrying it: anything open but what is tightened on wheels, or any part off. */
        private String lowering() {
            for (Map.Entry<String, PartState> part : standing.parts().entrySet()) {
                if (part.getValue() == PartState.OFF || part.getValue() == PartState.HUNG) {
                    return promised.nameInside(part.getKey()) + " is "
                            + part.getValue().word();
                }
            }
            for (Map.Entry<String, JointState> joint : standing.joints().entrySet()) {
                boolean waits = joint.getValue() == JointState.LOOSE && isTightenedOnWheels(joint.getKey());
                if (joint.getValue().isOpen() && !waits) {
                    return promised.nameInside(joint.getKey()) + " is "
                            + joint.getValue().word();
                }
            }
            return "";
        }

        private boolean isTightenedOnWheels(String joint) {
            Fixing fixing = promised.joints().get(joint);
            PlanStep.Tight tight = fixing == null ? null : fixing.tight();
            return tight != null && Footing.fits(Height.ON_WHEELS, tight.height()) && tight.height() != Height.ANY;
        }

        private String driving(Owing owing) {
            if (!owing.owes().isEmpty()) {
                Debt worst = owing.owes().get(0);
                int more = owing.owes().size() - 1;
                String others = more == 0 ? "" : ", and " + (more == 1 ? "one thing" : more + " things") + " more";
                return promised.nameInside(worst.subject()) + ": " + worst.detail() + others;
            }
            return owing.carried().isEmpty()
                    ? owing.stands().get(0)
                    : promised.nameInside(owing.carried().get(0).debt().subject()) + " stays open on purpose";
        }
    }
}
