package putback.app.cli;

import java.util.List;
import java.util.Map;
import putback.app.asking.Given;
import putback.app.asking.TermsQuestion;
import putback.app.asking.Unclear;
import putback.app.text.Headline;
import putback.app.text.JamWords;
import putback.labour.price.Beliefs;
import putback.labour.price.Crew;
import putback.labour.price.Estimate;
import putback.labour.price.Estimating;
import putback.labour.price.Job;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.labour.time.DrawnTimes;
import putback.plan.Plan;

/** What a plan's time comes to with rust and several hands, in words: its steps are those of a clean car and one person. */
final class RustyTime {
    private static final long SEED = 1;

    private RustyTime() {}

    /**
     * @param rust grade, 0 to 4
     * @param hands how many people, from 1
     */
    static String of(Plan plan, int rust, int hands) throws UsageFault {
        try {
            Terms terms = TermsQuestion.read(new Given(name -> null, ""));
            Beliefs beliefs = Beliefs.of(new RustGrades(Given.answer(RustGrade.of(rust)), Map.of()));
            Job job = new Job(Headline.renewed(plan), plan.wanted());
            Estimate estimate = Given.answer(Estimating.of(plan, List.of(job), beliefs, terms, SEED));
            StringBuilder said = new StringBuilder("With rust ").append(rust);
            if (hands > 1) {
                DrawnTimes standing = Given.answer(Crew.times(plan, beliefs, terms.ratePerHour(), hands, SEED));
                said.append(" and ").append(hands).append(" pairs of hands the car stands likely ");
                said.append(minutes(Math.round(standing.quantile(0.5)), Math.round(standing.quantile(0.8))));
            } else {
                said.append(" the work takes likely ");
                said.append(minutes(
                        estimate.likely().minutes(), estimate.fourInFive().minutes()));
            }
            String jams = JamWords.headline(estimate);
            said.append(". ").append(jams).append(jams.isEmpty() ? "" : " ");
            return said.append(
                            "The minutes of the steps are those of clean fasteners and one pair of hands; putback price"
                                    + " says more.")
                    .toString();
        } catch (Unclear unclear) {
            throw Renewing.fault("plan", unclear.said());
        }
    }

    private static String minutes(long likely, long most) {
        return likely + " min, 4 jobs in 5 no more than " + most + " min";
    }
}
