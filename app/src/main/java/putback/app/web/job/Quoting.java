package putback.app.web.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.app.asking.Given;
import putback.app.asking.TermsQuestion;
import putback.app.asking.Unclear;
import putback.app.text.Headline;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.labour.price.Beliefs;
import putback.labour.price.Estimate;
import putback.labour.price.Estimating;
import putback.labour.price.Invoice;
import putback.labour.price.Job;
import putback.labour.price.Line;
import putback.labour.price.Money;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrades;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.store.books.Approval;
import putback.store.books.KeptEstimate;
import putback.store.books.Scope;

/**
 * What a job's plan and price come to now.
 *
 * @param fault why there is no price; empty when there is one
 * @param plan with the prices that hold for its parts; null when there is none
 * @param estimate null when there is none
 * @param terms null when there are none
 */
public record Quoting(
        String fault,
        @Nullable Plan plan,
        @Nullable Estimate estimate,
        @Nullable Terms terms,
        Map<String, String> values) {
    /** Nothing is named yet. */
    static final Quoting NOTHING = new Quoting("", null, null, null, Map.of());

    private static final String EXAMPLE_RATE = " (example rate)";

    static Quoting of(JobFile file, Shelf shelf, Map<String, String> settings) {
        Question question = file.question();
        if (question == null) {
            return NOTHING;
        }
        Map<String, String> values = values(file.job().scope(), settings);
        Answer answer = Answer.to(question, shelf);
        if (answer instanceof Answer.Refused refused) {
            return new Quoting(String.join(" ", refused.lines()), null, null, null, values);
        }
        Plan bare = ((Answer.Planned) answer).plan();
        Plan plan = bare.withParts(file.prices().needs(bare));
        try {
            Map<String, String> asked = new TreeMap<>(values);
            Approval said = file.answer();
            if (said != null && said.yes() && !said.upTo().isEmpty()) {
                asked.put("ceiling", said.upTo());
            }
            Given given = new Given(asked::get, "");
            Terms terms = TermsQuestion.read(given);
            RustGrades grades = TermsQuestion.rust(
                    given, plan.assembly(), Rust.words(file.job().scope(), plan));
            Job job = new Job(Headline.renewed(plan) + (isOwn(values) ? "" : EXAMPLE_RATE), plan.wanted());
            Beliefs beliefs = new Beliefs(grades, shelf.seen(question.sheet()));
            Estimate estimate = Given.answer(Estimating.of(plan, List.of(job), beliefs, terms, 1));
            return new Quoting("", plan, estimate, terms, values);
        } catch (Unclear unclear) {
            return new Quoting(unclear.said(), plan, null, null, values);
        }
    }

    private static boolean isOwn(Map<String, String> values) {
        return values.containsKey("rate");
    }

    /** Why it cannot be put to the owner; empty when it can. */
    String notToBeOffered() {
        if (estimate == null) {
            return fault.isEmpty() ? "Nothing is named yet that is to be renewed; tick it first." : fault;
        }
        return isOwn(values)
                ? ""
                : "Nobody has said what an hour of work costs here: "
                        + TermsQuestion.USUAL_RATE.toPlainString()
                        + " is an example, and an example is no offer. Set An hour’s work under The garage, or for this"
                        + " job under Terms.";
    }

    /** Whether the hour is still an example. */
    boolean isRateAnExample() {
        return estimate != null && !isOwn(values);
    }

    /** Names of parts whose price is still the example of the sheet. */
    List<String> examples() {
        List<String> names = new ArrayList<>();
        if (plan != null) {
            for (PartNeed need : plan.parts()) {
                if (need.name().endsWith(OwnPrices.EXAMPLE)) {
                    names.add(need.name().substring(0, need.name().length() - OwnPrices.EXAMPLE.length()));
                }
            }
        }
        return names;
    }

    /** Names of what is needed and has no price at all, so is in no figure. */
    List<String> lacking() {
        List<String> names = new ArrayList<>();
        if (estimate != null) {
            for (PartNeed need : estimate.unpriced()) {
                names.add((need.count() > 1 ? need.count() + " × " : "") + need.name());
            }
        }
        return names;
    }

    /** Up to how much the owner is asked: what was chosen at the desk, else what 4 jobs in 5 stay within; null without a price. */
    @Nullable
    BigDecimal asked() {
        if (estimate == null) {
            return null;
        }
        String chosen = values.get("ceiling");
        return chosen != null && PlainNumber.parse(chosen) instanceof Parsed.Value<BigDecimal> read
                ? Money.rounded(read.value())
                : estimate.fourInFive().total();
    }

    /** The estimate as the owner reads it, to be kept; null when there is nothing to put to him. */
    @Nullable
    KeptEstimate put(JobFile file, String currency, String by) {
        Estimate made = estimate;
        BigDecimal asked = asked();
        boolean closed = !file.closed().isEmpty();
        if (closed
                || made == null
                || plan == null
                || asked == null
                || !notToBeOffered().isEmpty()) {
            return null;
        }
        return new KeptEstimate(
                "",
                file.job().id(),
                0,
                "",
                by,
                Headline.renewed(plan),
                made.likely().total().toPlainString(),
                made.fourInFive().total().toPlainString(),
                asked.toPlainString(),
                currency,
                lacking(),
                lines(made.invoice()));
    }

    /** Lines as they are kept. */
    static List<KeptEstimate.Line> lines(Invoice invoice) {
        List<KeptEstimate.Line> lines = new ArrayList<>();
        for (Line line : invoice.lines()) {
            lines.add(new KeptEstimate.Line(
                    line.text(),
                    line.quantity().stripTrailingZeros().toPlainString(),
                    line.unit(),
                    line.amount().toPlainString()));
        }
        return lines;
    }

    /** The job's own terms, and the garage's where the job has none. */
    static Map<String, String> values(Scope scope, Map<String, String> settings) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String name : List.of("rate", "tax", "tax-on", "markup", "sundries")) {
            String usual = settings.get(name);
            if (usual != null && !usual.isEmpty()) {
                values.put(name, usual);
            }
        }
        for (String pair : scope.terms().split("&", -1)) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                values.put(pair.substring(0, equals), pair.substring(equals + 1));
            }
        }
        return values;
    }

    /** What it comes to; null when there is no price. */
    public @Nullable BigDecimal total() {
        return estimate == null ? null : estimate.invoice().total();
    }

    /** Whether the price is above what somebody agreed to; never where nobody has said yes. */
    boolean isOver(@Nullable Approval said) {
        BigDecimal now = total();
        return now != null
                && said != null
                && said.yes()
                && !said.upTo().isEmpty()
                && now.compareTo(new BigDecimal(said.upTo())) > 0;
    }
}
