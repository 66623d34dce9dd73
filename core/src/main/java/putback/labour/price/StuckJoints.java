package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import putback.labour.seized.Attempt;
import putback.labour.seized.Nearby;
import putback.labour.seized.Row;
import putback.labour.seized.RustGrade;
import putback.labour.seized.Seized;
import putback.labour.seized.Surroundings;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Renewal;
import putback.plan.steps.Step;
import putback.quantity.Parsed;
import putback.sheet.Joint;

/** The joints of a plan that may be seized. */
final class StuckJoints {
    private StuckJoints() {}

    /** Those that are undone and have a chance to be seized, in the order of the sheet; or what is wrong with one. */
    static Parsed<List<Stuck>> of(Plan plan, Beliefs beliefs, BigDecimal ratePerHour) {
        TreeMap<Integer, Joint> undone = new TreeMap<>();
        for (Step step : plan.steps()) {
            if (step.act() == Act.UNDO && step.joint() != null) {
                undone.put(step.joint().index(), step.joint());
            }
        }
        JointResorts resorts = new JointResorts(
                plan.assembly().sheet().resorts(),
                beliefs.own(),
                Renewal.of(plan.assembly(), plan.wanted(), plan.selection()));
        List<Stuck> all = new ArrayList<>();
        for (Joint joint : undone.values()) {
            RustGrade grade = beliefs.rust().at(joint);
            double assumed = grade.seizedEach(joint);
            double chance = RustGrade.canSeize(joint) ? beliefs.own().seizedEach(joint, grade, assumed) : 0;
            if (chance > 0) {
                Parsed<Stuck> one = stuck(plan, joint, chance, resorts, ratePerHour);
                if (!(one instanceof Parsed.Value<Stuck> sound)) {
                    return new Parsed.Refused<>(one.refusal());
                }
                all.add(sound.value());
            }
        }
        return new Parsed.Value<>(List.copyOf(all));
    }

    private static Parsed<Stuck> stuck(
            Plan plan, Joint joint, double chance, JointResorts resorts, BigDecimal ratePerHour) {
        Parsed<List<Attempt>> attempts = resorts.of(joint);
        if (!(attempts instanceof Parsed.Value<List<Attempt>> some)) {
            return new Parsed.Refused<>(attempts.refusal());
        }
        List<Nearby> nearby = Surroundings.of(plan.assembly(), joint);
        Parsed<Row> row = new Seized(ratePerHour, some.value(), JointResorts.refusal(joint), nearby).answer();
        Parsed<Row> soaked =
                new Seized(ratePerHour, soaked(some.value()), JointResorts.refusal(joint), nearby).answer();
        if (row instanceof Parsed.Value<Row> one && soaked instanceof Parsed.Value<Row> other) {
            return new Parsed.Value<>(new Stuck(joint, chance, one.value(), other.value()));
        }
        return new Parsed.Refused<>("joint " + joint.id() + ": " + row.refusal());
    }

    private static List<Attempt> soaked(List<Attempt> attempts) {
        List<Attempt> soaked = new ArrayList<>();
        for (Attempt one : attempts) {
            soaked.add(
                    one.id().equals(Assumed.SOAKED)
                            ? new Attempt(
                                    one.id(),
                                    one.minutes(),
                                    Assumed.overnight(one.chance()),
                                    one.breakChance(),
                                    one.breakPrice(),
                                    one.scraps(),
                                    one.when(),
                                    one.hazards())
                            : one);
        }
        return soaked;
    }
}
