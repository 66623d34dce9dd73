package putback.app.web.job;

import java.math.BigDecimal;
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
import putback.labour.price.Job;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrades;
import putback.plan.Plan;
import putback.store.books.Approval;
import putback.store.books.Scope;

/**
 * What a job's plan and price come to now.
 *
 * @param fault why there is no price; empty when there is one
 * @param plan null when there is none
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
        Plan plan = ((Answer.Planned) answer).plan();
        try {
            Map<String, String> asked = new TreeMap<>(values);
            Approval said = file.answer();
            if (said != null && said.yes() && !said.upTo().isEmpty()) {
                asked.put("ceiling", said.upTo());
            }
            Given given = new Given(asked::get, "");
            Terms terms = TermsQuestion.read(given);
            String rust = file.job().scope().rust();
            RustGrades grades =
                    TermsQuestion.rust(given, plan.assembly(), rust.isEmpty() ? List.of("0") : List.of(rust));
            Job job = new Job(Headline.renewed(plan), plan.wanted());
            Beliefs beliefs = new Beliefs(grades, shelf.seen(question.sheet()));
            Estimate estimate = Given.answer(Estimating.of(plan, List.of(job), beliefs, terms, 1));
            return new Quoting("", plan, estimate, terms, values);
        } catch (Unclear unclear) {
            return new Quoting(unclear.said(), plan, null, null, values);
        }
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

    /** Whether the price is above what somebody agreed to. */
    boolean isOver(@Nullable Approval said) {
        BigDecimal now = total();
        return now != null
                && said != null
                && said.yes()
                && !said.upTo().isEmpty()
                && now.compareTo(new BigDecimal(said.upTo())) > 0;
    }
}
