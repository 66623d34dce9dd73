package putback.ledger;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
            String steps = left == 0
                    ? "no step is left"
                    : left + " of " + all + (left == 1 ? " steps is left" : " steps are left");
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
                PlanStep release = release(aid);
                if (release != null) {
                    mustNot.add("Do not take the " + (aid.aid().isEmpty() ? "aid" : aid.aid()) + " off "
                            + promised.nameInside(aid.part()) + " before step " + release.number() + ".");
                }
            }
            return mustNot;
        }

        /** The step that takes an aid off, where others come first; null where it may come off now. */
        private @Nullable PlanStep release(AidOn aid) {
            List<PlanStep> toDo = standing.toDo();
            for (int i = 1; i < toDo.size(); i++) {
                PlanStep step = toDo.get(i);
                boolean same = aid.part().equals(step.part())
                        && (aid.aid().isEmpty() || aid.aid().equals(step.aid()));
                if (step.did() == Did.RELEASE && same) {
                    return step;
                }
            }
            return null;
        }

        /** What keeps the wheels from carrying it: all that is off or open now and goes back before the plan lowers it. */
        private String lowering() {
            Set<String> later = afterLowering();
            for (Map.Entry<String, PartState> part : standing.parts().entrySet()) {
                boolean gone = part.getValue() == PartState.OFF || part.getValue() == PartState.HUNG;
                if (gone && !later.contains(part.getKey())) {
                    return promised.nameInside(part.getKey()) + " is "
                            + part.getValue().word();
                }
            }
            for (Map.Entry<String, JointState> joint : standing.joints().entrySet()) {
                boolean waits = joint.getValue() == JointState.LOOSE && isTightenedOnWheels(joint.getKey());
                if (joint.getValue().isOpen() && !waits && !later.contains(joint.getKey())) {
                    return promised.nameInside(joint.getKey()) + " is "
                            + joint.getValue().word();
                }
            }
            return "";
        }

        /** Parts and joints that the plan puts back once the car is on its wheels. */
        private Set<String> afterLowering() {
            Set<String> later = new HashSet<>();
            for (PlanStep step : promised.steps()) {
                boolean back = step.did() == Did.START || step.did() == Did.OFFER_UP;
                if (step.did() == Did.HEIGHT && step.height() != Height.ON_WHEELS) {
                    later.clear();
                } else if (back && step.height() == Height.ON_WHEELS) {
                    later.add(String.valueOf(step.joint() == null ? step.part() : step.joint()));
                    later.addAll(step.with());
                }
            }
            return later;
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
