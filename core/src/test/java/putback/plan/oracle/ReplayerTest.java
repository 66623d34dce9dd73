package putback.plan.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.Proof;
import putback.plan.order.Move;
import putback.plan.selection.Selection;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.quantity.Minutes;
import putback.sheet.Fastener;
import putback.sheet.Height;

/** The replayer is a check that can fail: whatever is spoiled in a sound plan, it says so. */
class ReplayerTest {
    private static final int SHEETS = 150;
    private static final Minutes MORE = Minutes.of("0.01");
    private static final List<Plan> PLANS = new ArrayList<>();

    private interface Spoiling extends Function<Plan, @Nullable Plan> {}

    @BeforeAll
    static void plan() {
        for (long seed = 5000; seed < 5000 + SHEETS; seed++) {
            SheetGenerator.Instance instance = SheetGenerator.make(seed, 16, seed % 2 == 0);
            if (Planner.plan(instance.assembly(), instance.wanted()) instanceof Planned.Sound sound) {
                PLANS.add(sound.plan());
            }
        }
    }

    @Test
    void soundPlans_areNotBlamed() {
        assertThat(PLANS).isNotEmpty().allSatisfy(plan -> assertThat(Replayer.complaints(plan))
                .as(plan.assembly().sheet().id() + " " + plan.wanted().ids())
                .isEmpty());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"missingSteps", "wrongSteps", "wrongFigures"})
    void spoiltPlans_areBlamed(String what, Spoiling spoil, String blame) {
        int spoilt = 0;
        for (Plan plan : PLANS) {
            Plan worse = spoil.apply(plan);
            if (worse != null) {
                spoilt++;
                assertThat(Replayer.complaints(worse))
                        .as(what + ", " + plan.assembly().sheet().id())
                        .anyMatch(complaint -> Stream.of(blame.split("\\|", -1)).anyMatch(complaint::contains));
            }
        }
        assertThat(spoilt).as("plans with " + what).isPositive();
    }

    static Stream<Arguments> missingSteps() {
        return Stream.of(
                without("no undo", Act.UNDO, "0 times undo"),
                without("no start", Act.START, "still open at the end"),
                without("no run-down", Act.RUN_DOWN, "STARTED"),
                without("no tighten", Act.TIGHTEN, "0 times tighten"),
                without("no take-off", Act.TAKE_OFF, "never taken off"),
                without("no renew", Act.RENEW, "never renewed"),
                without("no mark", Act.MARK, "not marked"),
                without("no clean", Act.CLEAN, "before closing"),
                without("no second look", Act.SECOND_LOOK, "0 times second-look"),
                without("no break-loose", Act.BREAK_LOOSE, "0 times break-loose"),
                without("no follow-up", Act.FOLLOW_UP, "never done"),
                without("no height", Act.HEIGHT, "stand"),
                without("no support", Act.SUPPORT, ""),
                without("no release", Act.RELEASE, ""),
                without("no jack-up", Act.JACK_UP, "still let down"),
                withoutAll("no offer-up", Act.OFFER_UP, "never offered up"),
                withoutAll("no prepare", Act.PREPARE, "not prepared"),
                withoutAll("no let-down", Act.LET_DOWN, "let down"),
                spoiling("no tying up", ReplayerTest::withoutTyingUp, "dangles|ends up hung|there is no such aid"));
    }

    static Stream<Arguments> wrongSteps() {
        return Stream.of(
                spoiling("a tightening under a trim", ReplayerTest::tightenedTooLate, "in the way"),
                spoiling("a tightening at another height", ReplayerTest::tightenedElsewhere, "it stands"),
                spoiling("a tightening before its run-down", ReplayerTest::tightenedTooEarly, "STARTED"),
                spoiling("an aid that goes too early", ReplayerTest::releasedTooEarly, "is not done"),
                spoiling("a group of which one part is named", ReplayerTest::partOfAGroup, "in one piece"),
                spoiling("another fastener", ReplayerTest::anotherFastener, "another fastener"),
                spoiling("a joint out of reach", ReplayerTest::outOfReach, "out of reach"),
                spoiling("more minutes", ReplayerTest::longerStep, "minutes of the steps"));
    }

    static Stream<Arguments> wrongFigures() {
        return Stream.of(
                spoiling("more work", plan -> selected(plan, 0), "work is not the sum"),
                spoiling("a part off that is not listed", plan -> selected(plan, 1), "off lists"),
                spoiling("a follow-up not listed", plan -> selected(plan, 2), "follow-ups are not"),
                spoiling("a joint not listed", plan -> selected(plan, 3), "open each joint once"),
                spoiling("another set-up", ReplayerTest::dearerSequence, "set-up of the way apart"),
                spoiling("a bound above", ReplayerTest::boundAbove, "bound is above"));
    }

    private static Arguments spoiling(String what, Spoiling spoil, String blame) {
        return Arguments.of(what, spoil, blame);
    }

    private static Arguments without(String what, Act act, String blame) {
        return spoiling(what, plan -> Tampering.without(plan, is(act)), blame);
    }

    private static Arguments withoutAll(String what, Act act, String blame) {
        return spoiling(what, plan -> Tampering.withoutAll(plan, is(act)), blame);
    }

    private static Predicate<Step> is(Act act) {
        return step -> step.act() == act;
    }

    private static Predicate<Step> of(Act act, int joint) {
        return step -> step.act() == act && Scene.joint(step) == joint;
    }

    private static @Nullable Plan withoutTyingUp(Plan plan) {
        Predicate<Step> tiesUp = step -> step.act() == Act.ASIDE
                && step.part() != null
                && plan.selection().hung().contains(Scene.part(step))
                && !plan.selection().aside().contains(Scene.part(step));
        return Tampering.withoutAll(plan, tiesUp);
    }

    private static @Nullable Plan tightenedTooLate(Plan plan) {
        Rules rules = new Rules(plan.assembly());
        Bonds shut = rules.bonds(new BitSet());
        BitSet none = new BitSet();
        return Tampering.movedToEnd(
                plan,
                step -> step.act() == Act.TIGHTEN
                        && step.joint() != null
                        && !rules.clausesMet(step.joint().behind(), step.joint(), shut, none)
                        && !rules.clausesMet(step.joint().reachOnWheels(), step.joint(), shut, none));
    }

    private static @Nullable Plan tightenedElsewhere(Plan plan) {
        return Tampering.changed(
                plan,
                is(Act.TIGHTEN),
                step -> Tampering.height(step, step.height() == Height.RAISED ? Height.ON_WHEELS : Height.RAISED));
    }

    private static @Nullable Plan tightenedTooEarly(Plan plan) {
        int at = Tampering.firstAt(plan, is(Act.RUN_DOWN));
        int joint = at < 0 ? -1 : Scene.joint(plan.steps().get(at));
        return Tampering.moved(plan, of(Act.TIGHTEN, joint), of(Act.RUN_DOWN, joint));
    }

    /** The aid of a joint that was put on just before it goes before that joint is started again. */
    private static @Nullable Plan releasedTooEarly(Plan plan) {
        for (int i = 1; i < plan.steps().size(); i++) {
            Step support = plan.steps().get(i - 1);
            Step undo = plan.steps().get(i);
            if (support.act() == Act.SUPPORT && undo.act() == Act.UNDO && asksFor(undo, support)) {
                Predicate<Step> release = step -> step.act() == Act.RELEASE
                        && Objects.equals(step.aid(), support.aid())
                        && Objects.equals(step.part(), support.part());
                return Tampering.moved(plan, release, of(Act.START, Scene.joint(undo)));
            }
        }
        return null;
    }

    private static boolean asksFor(Step undo, Step support) {
        return Objects.requireNonNull(undo.joint()).letsGo().stream()
                .anyMatch(letting ->
                        letting.part() == Scene.part(support) && letting.aid().equals(support.aid()));
    }

    private static @Nullable Plan partOfAGroup(Plan plan) {
        return Tampering.changed(
                plan, step -> step.act() == Act.TAKE_OFF && !step.with().isEmpty(), Tampering::alone);
    }

    private static @Nullable Plan anotherFastener(Plan plan) {
        Fastener other = plan.assembly().joints().get(0).fastener();
        return Tampering.changed(
                plan,
                step -> step.act() == Act.TIGHTEN && !other.equals(step.fastener()) && Scene.joint(step) != 0,
                step -> Tampering.fastener(step, other));
    }

    /** The first joint that something is in the way of goes first of all. */
    private static @Nullable Plan outOfReach(Plan plan) {
        Rules rules = new Rules(plan.assembly());
        BitSet none = new BitSet();
        for (Move move : plan.moves()) {
            if (move instanceof Move.Open open && !rules.accessible(open.joint(), none, rules.bonds(none), none)) {
                List<Move> moves = new ArrayList<>(plan.moves());
                Collections.swap(moves, 0, moves.indexOf(move));
                return Tampering.with(plan, plan.selection(), moves, plan.sequenceSetup(), plan.proof());
            }
        }
        return null;
    }

    private static @Nullable Plan longerStep(Plan plan) {
        return Tampering.changed(
                plan,
                is(Act.UNDO),
                step -> Tampering.minutes(step, step.minutes().plus(MORE)));
    }

    private static @Nullable Plan dearerSequence(Plan plan) {
        Minutes dearer = plan.sequenceSetup().plus(MORE);
        return Tampering.with(plan, plan.selection(), plan.moves(), dearer, plan.proof());
    }

    private static @Nullable Plan boundAbove(Plan plan) {
        Proof proof = new Proof(true, plan.objective().plus(MORE));
        return Tampering.with(plan, plan.selection(), plan.moves(), plan.sequenceSetup(), proof);
    }

    private static @Nullable Plan selected(Plan plan, int what) {
        Selection was = plan.selection();
        if ((what == 1 && was.off().isEmpty()) || (what == 2 && was.followUps().isEmpty())) {
            return null;
        }
        Selection now = new Selection(
                what == 3 ? was.open().subList(1, was.open().size()) : was.open(),
                what == 1 ? was.off().subList(1, was.off().size()) : was.off(),
                was.hung(),
                was.aside(),
                what == 2 ? List.of() : was.followUps(),
                was.spoiled(),
                what == 0 ? was.work().plus(MORE) : was.work());
        return Tampering.with(plan, now, plan.moves(), plan.sequenceSetup(), plan.proof());
    }
}
