package putback.plan.steps;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Ties;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Letting;
import putback.sheet.Part;

/** What every round trip keeps to, looked at from its steps alone. */
final class Sound {
    private final Travelled trip;
    private final Network network;
    private final Renewal renewal;
    private final SoftAssertions softly = new SoftAssertions();

    private Sound(Travelled trip) {
        this.trip = trip;
        this.network = Network.of(trip.assembly());
        this.renewal = Renewal.of(trip.assembly(), trip.wanted(), trip.selection());
    }

    /** What depends on the sheet asking for the possible is looked at only where the trip has no warnings. */
    static void check(Travelled trip, String name) {
        Sound sound = new Sound(trip);
        sound.numbers();
        sound.minutes();
        sound.opened().forEach(sound::joint);
        sound.order(sound.indices(Act.UNDO), "apart");
        List<Integer> backwards = new ArrayList<>(sound.indices(Act.START));
        Collections.reverse(backwards);
        sound.order(backwards, "together, backwards");
        sound.standing();
        sound.aids();
        sound.parts();
        if (trip.trip().warnings().isEmpty()) {
            sound.tightening();
            sound.weight();
        }
        List<String> wrong = sound.softly.errorsCollected().stream()
                .map(Throwable::getMessage)
                .toList();
        assertThat(wrong)
                .as("%s, renew %s, moves %s%n%s", name, trip.wanted().ids(), trip.moves(), trip.text())
                .isEmpty();
    }

    private List<Joint> opened() {
        return trip.selection().open().stream()
                .map(trip.assembly().joints()::get)
                .toList();
    }

    private List<Integer> indices(Act act) {
        return trip.all(act).map(step -> jointOf(step).index()).toList();
    }

    private static Joint jointOf(Step step) {
        return requireNonNull(step.joint());
    }

    private static Part partOf(Step step) {
        return requireNonNull(step.part());
    }

    private static boolean threaded(Joint joint) {
        return joint.entry().kind().threaded();
    }

    private void numbers() {
        for (int i = 0; i < trip.steps().size(); i++) {
            Step step = trip.steps().get(i);
            softly.assertThat(step.number()).isEqualTo(i + 1);
            softly.assertThat(step.height()).isNotEqualTo(Height.ANY);
            softly.assertThat(step.text()).matches("[A-Z].*[.?]");
        }
    }

    private void minutes() {
        softly.assertThat(trip.trip().work()).isEqualTo(trip.selection().work());
        Ties whole = new Ties(network);
        if (trip.assembly().parts().stream().noneMatch(part -> whole.hung(part.index()))) {
            Step last = trip.steps().get(trip.steps().size() - 1);
            softly.assertThat(last.minutes().millionths())
                    .as("minutes left over")
                    .isZero();
        }
    }

    private void joint(Joint joint) {
        String id = joint.id();
        softly.assertThat(trip.count(Act.UNDO, id)).as(id).isEqualTo(1);
        softly.assertThat(trip.count(Act.START, id)).as(id).isEqualTo(1);
        softly.assertThat(trip.count(Act.TIGHTEN, id)).as(id).isEqualTo(threaded(joint) ? 1 : 0);
        softly.assertThat(trip.count(Act.SECOND_LOOK, id))
                .as(id)
                .isEqualTo(joint.fastener().critical() ? 1 : 0);
        List<Integer> order = new ArrayList<>(List.of(trip.at(Act.UNDO, id), trip.at(Act.START, id)));
        if (threaded(joint)) {
            order.add(trip.at(Act.RUN_DOWN, id));
            order.add(trip.at(Act.TIGHTEN, id));
        }
        softly.assertThat(order).as(id).isSorted();
        if (joint.entry().breakLooseOnWheels()) {
            softly.assertThat(trip.first(Act.BREAK_LOOSE, id).height()).isEqualTo(Height.ON_WHEELS);
            softly.assertThat(trip.at(Act.BREAK_LOOSE, id)).isLessThan(trip.at(Act.UNDO, id));
        }
        Height own = joint.entry().height();
        if (own != Height.ANY) {
            softly.assertThat(trip.first(Act.UNDO, id).height()).as(id).isEqualTo(own);
            softly.assertThat(trip.first(Act.START, id).height()).as(id).isEqualTo(own);
        }
    }

    private void order(List<Integer> order, String which) {
        Accessibility access = new Accessibility(network);
        BitSet open = new BitSet();
        BitSet planned = new BitSet();
        order.forEach(planned::set);
        BitSet asides = new BitSet();
        trip.selection().aside().forEach(asides::set);
        for (int joint : order) {
            String id = trip.assembly().joints().get(joint).id();
            softly.assertThat(access.canOpen(joint, open, asides))
                    .as("%s: %s can be opened", which, id)
                    .isTrue();
            softly.assertThat(Accessibility.inOrder(network, joint, open, planned))
                    .as("%s: %s in order", which, id)
                    .isTrue();
            open.set(joint);
        }
    }

    private void standing() {
        Height height = Height.ON_WHEELS;
        for (Step step : trip.steps()) {
            if (step.act() == Act.HEIGHT) {
                softly.assertThat(step.height()).as("step " + step.number()).isNotEqualTo(height);
                height = step.height();
            }
            softly.assertThat(step.height()).as("step " + step.number()).isEqualTo(height);
        }
        softly.assertThat(height).isEqualTo(Height.ON_WHEELS);
    }

    /** Aids come before and stay until done; none is put on twice, none is left. */
    private void aids() {
        Set<String> on = new HashSet<>();
        BitSet secured = new BitSet();
        BitSet open = new BitSet();
        for (Step step : trip.steps()) {
            String key = step.part() == null ? "" : step.part().id() + "/" + step.aid();
            switch (step.act()) {
                case SUPPORT ->
                    softly.assertThat(on.add(key))
                            .as("support, step " + step.number())
                            .isTrue();
                case ASIDE -> on.addAll(step.aid() == null ? Set.of() : Set.of(key));
                case RELEASE -> {
                    softly.assertThat(on.remove(key))
                            .as("release, step " + step.number())
                            .isTrue();
                    released(step, secured, open, on);
                }
                case UNDO -> {
                    lettings(step, on, open);
                    open.set(jointOf(step).index());
                }
                case START -> {
                    open.clear(jointOf(step).index());
                    secured.set(jointOf(step).index(), !threaded(jointOf(step)));
                }
                case RUN_DOWN -> secured.set(jointOf(step).index(), isLoaded(jointOf(step)));
                case TIGHTEN -> secured.set(jointOf(step).index());
                case HEIGHT -> {
                    boolean weight = step.height() == Height.ON_WHEELS && step.phase() == Phase.TOGETHER;
                    if (weight && trip.trip().warnings().isEmpty()) {
                        softly.assertThat(on)
                                .as("aids under weight, step " + step.number())
                                .isEmpty();
                    }
                }
                default -> {}
            }
        }
        softly.assertThat(on).as("aids left on").isEmpty();
    }

    private boolean isLoaded(Joint joint) {
        Height height = trip.first(Act.TIGHTEN, joint.id()).height();
        boolean late = trip.selection().followUps().stream()
                .anyMatch(followUp -> joint.entry().timing().tightenAfter().contains(followUp.id()));
        return late
                || height != Height.RAISED && trip.first(Act.START, joint.id()).height() == Height.RAISED;
    }

    private void lettings(Step step, Set<String> on, BitSet open) {
        Ties ties = new Ties(network);
        ties.rebuild(open);
        for (Letting letting : jointOf(step).letsGo()) {
            String id = trip.assembly().parts().get(letting.part()).id();
            boolean held = on.stream().anyMatch(aid -> aid.startsWith(id + "/"));
            boolean needed = letting.aid().contains("compressor");
            boolean groupHeld = ties.hung(letting.part())
                    && on.stream()
                            .anyMatch(
                                    aid -> ties.heldTogether(letting.part(), part(aid.substring(0, aid.indexOf('/')))));
            softly.assertThat(on.contains(id + "/" + letting.aid())
                            || !needed && (held || groupHeld || ties.off(letting.part())))
                    .as("aid for %s, step %d", id, step.number())
                    .isTrue();
        }
    }

    private int part(String id) {
        return trip.assembly().parts().stream()
                .filter(part -> part.id().equals(id))
                .mapToInt(Part::index)
                .findFirst()
                .orElseThrow();
    }

    private void released(Step step, BitSet secured, BitSet open, Set<String> others) {
        int part = partOf(step).index();
        boolean compressor = requireNonNull(step.aid()).contains("compressor");
        if (step.phase() == Phase.APART) {
            boolean gone = !trip.selection().hung().contains(part);
            softly.assertThat(compressor && renewal.renews(part) || gone)
                    .as("release on the way apart, step " + step.number())
                    .isTrue();
            return;
        }
        for (Joint joint : opened()) {
            for (Letting letting : joint.letsGo()) {
                if (letting.part() == part && letting.aid().equals(step.aid())) {
                    softly.assertThat(secured.get(joint.index()))
                            .as("%s secured before release, step %d", joint.id(), step.number())
                            .isTrue();
                }
            }
        }
        Ties ties = new Ties(network);
        ties.rebuild(open);
        Ties whole = new Ties(network);
        boolean held =
                others.stream().anyMatch(aid -> ties.heldTogether(part, part(aid.substring(0, aid.indexOf('/')))));
        softly.assertThat(!compressor && ties.hung(part) && !whole.hung(part) && !held)
                .as("hangs when released, step " + step.number())
                .isFalse();
    }

    private void parts() {
        for (int index : trip.selection().off()) {
            String id = trip.assembly().parts().get(index).id();
            int out = naming(Act.TAKE_OFF, index);
            int back = naming(Act.OFFER_UP, index);
            softly.assertThat(out).as("take-off of " + id).isPositive();
            softly.assertThat(back).as("offer-up of " + id).isGreaterThan(out);
            int first = opened().stream()
                    .filter(joint ->
                            joint.joins().contains(index) && joint.joins().contains(0))
                    .mapToInt(joint -> trip.at(Act.START, joint.id()))
                    .min()
                    .orElse(Integer.MAX_VALUE);
            softly.assertThat(back).as("offer-up of " + id).isLessThan(first);
        }
        for (int index : trip.selection().hung()) {
            softly.assertThat(naming(Act.ASIDE, index))
                    .as("aside of " + trip.assembly().parts().get(index).id())
                    .isPositive();
        }
        Stream.concat(renewal.parts().stream(), renewal.spoiled().stream())
                .forEach(part -> softly.assertThat(trip.at(Act.RENEW, part.id()))
                        .isBetween(naming(Act.TAKE_OFF, part.index()), naming(Act.OFFER_UP, part.index())));
    }

    private int naming(Act act, int part) {
        return trip.all(act)
                .filter(step ->
                        partOf(step).index() == part || step.with().stream().anyMatch(other -> other.index() == part))
                .mapToInt(Step::number)
                .findFirst()
                .orElse(-1);
    }

    /** Each joint is reached when it is tightened: what was in its way is not back on yet. */
    private void tightening() {
        BitSet asides = new BitSet();
        trip.selection().aside().forEach(asides::set);
        BitSet open = new BitSet();
        Reach reach = new Reach(network);
        for (Step step : trip.steps()) {
            if (step.act() == Act.UNDO) {
                open.set(jointOf(step).index());
            } else if (step.act() == Act.START) {
                open.clear(jointOf(step).index());
            } else if (step.act() == Act.TIGHTEN) {
                Joint joint = jointOf(step);
                boolean onWheels =
                        step.height() == Height.ON_WHEELS && joint.entry().height() != Height.ANY;
                List<List<Integer>> clauses = onWheels ? joint.reachOnWheels() : joint.behind();
                softly.assertThat(reach.isClear(joint, clauses, open, asides))
                        .as("%s reached, step %d", joint.id(), step.number())
                        .isTrue();
                Height asked = renewal.fastenerBack(joint).tighten();
                if (asked != Height.RAISED) {
                    softly.assertThat(step.height()).as(joint.id()).isEqualTo(asked);
                }
                softly.assertThat(step.fastener()).isEqualTo(renewal.fastenerBack(joint));
            }
        }
    }

    /** Nothing is on a few threads only when weight comes on. */
    private void weight() {
        BitSet loose = new BitSet();
        for (Step step : trip.steps()) {
            boolean weight = step.act() == Act.HEIGHT && step.height() != Height.RAISED;
            if (weight && step.phase() == Phase.TOGETHER) {
                softly.assertThat(loose)
                        .as("only started, step " + step.number())
                        .isEqualTo(new BitSet());
            }
            if (step.act() == Act.START) {
                loose.set(jointOf(step).index(), threaded(jointOf(step)));
            } else if (step.act() == Act.RUN_DOWN) {
                loose.clear(jointOf(step).index());
            }
        }
    }
}
