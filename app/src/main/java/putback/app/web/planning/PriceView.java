package putback.app.web.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.asking.Given;
import putback.app.asking.PriceQuestion;
import putback.app.asking.TermsQuestion;
import putback.app.asking.Unclear;
import putback.app.text.Headline;
import putback.app.web.frame.Question;
import putback.labour.alongside.Alongside;
import putback.labour.alongside.Neighbour;
import putback.labour.price.Beliefs;
import putback.labour.price.Crew;
import putback.labour.price.Estimate;
import putback.labour.price.Estimating;
import putback.labour.price.Job;
import putback.labour.price.OwnFigures;
import putback.labour.price.PlaceProfile;
import putback.labour.time.DrawnTimes;
import putback.plan.Plan;
import putback.sheet.Assembly;
import putback.sheet.Joint;

/**
 * What a job takes and costs, as its page shows it.
 *
 * @param values terms as they were typed, by name
 * @param fault what cannot be meant so; empty for nothing
 * @param field the value it is about; empty for none
 * @param answer null where something is wrong
 */
public record PriceView(
        Question question,
        String title,
        String renewed,
        Map<String, String> values,
        String fault,
        String field,
        @Nullable PriceFigures answer) {
    private static final List<String> NAMES =
            List.of("job", "rust", "rate", "tax", "tax-on", "ceiling", "markup", "sundries", "subcontracted", "hands");
    private static final String GRADE_OF = "rust.";
    private static final String RATE_IS_AN_EXAMPLE =
            "The price of an hour is an example: nobody has said what it is here.";

    /** What a grade looks and feels like. */
    public static List<String> grades() {
        return List.of(
                "0 clean: threads bright, paint whole",
                "1 surface: brown, wipes off on a rag",
                "2 scaled: flakes, a wire brush brings metal",
                "3 swollen: threads filled, hexagon rounded by rust",
                "4 wasted: sections thinner, pits you can feel");
    }

    /** The value that was typed; empty where there is none. */
    public String value(String name) {
        String value = values.get(name);
        return value == null ? "" : value;
    }

    /** The grade that is chosen. */
    public boolean isGrade(int grade) {
        return value("rust").equals(String.valueOf(grade))
                || grade == 0 && value("rust").isEmpty();
    }

    /**
     * @param own what the garage has seen on cars like it
     */
    static PriceView of(
            Question question, Plan plan, OwnFigures own, Map<String, String> typed, Remembered remembered) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String name : NAMES) {
            String value = typed.get(name);
            if (value != null && !value.isBlank()) {
                values.put(name, value.strip());
            }
        }
        for (Joint joint : plan.assembly().joints()) {
            String grade = typed.get(GRADE_OF + joint.id());
            if (grade != null && !grade.isBlank()) {
                values.put(GRADE_OF + joint.id(), grade.strip());
            }
        }
        String title = plan.assembly().sheet().title();
        String renewed = Headline.renewed(plan);
        try {
            PriceQuestion asked = asked(plan.assembly(), own, values);
            Job job = new Job(renewed + (values.containsKey("rate") ? "" : " (example rate)"), plan.wanted());
            Estimate estimate =
                    Given.answer(Estimating.of(plan, List.of(job), asked.beliefs(), asked.terms(), asked.seed()));
            boolean later = "later".equals(typed.get("alongside"));
            List<Neighbour> neighbours =
                    later ? List.of() : Alongside.of(plan, wanted -> remembered.cost(plan.assembly(), wanted));
            PriceFigures figures = PriceFigures.of(
                    plan,
                    values.containsKey("rate") ? estimate : estimate.withNotes(List.of(RATE_IS_AN_EXAMPLE)),
                    asked,
                    standing(plan, asked),
                    neighbours,
                    later);
            return new PriceView(question, title, renewed, values, "", "", figures);
        } catch (Unclear unclear) {
            return new PriceView(question, title, renewed, values, unclear.said(), unclear.field(), null);
        }
    }

    private static PriceQuestion asked(Assembly assembly, OwnFigures own, Map<String, String> values) throws Unclear {
        Given given = new Given(values::get, "");
        List<String> words = new ArrayList<>();
        values.forEach((name, value) -> {
            if (name.equals("rust")) {
                words.add(value);
            } else if (name.startsWith(GRADE_OF)) {
                words.add(name.substring(GRADE_OF.length()) + "=" + value);
            }
        });
        return new PriceQuestion(
                assembly,
                TermsQuestion.read(given),
                new Beliefs(TermsQuestion.rust(given, assembly, words), own),
                TermsQuestion.hands(given),
                1,
                PlaceProfile.NOT_SET);
    }

    /** Null for one pair of hands. */
    private static @Nullable DrawnTimes standing(Plan plan, PriceQuestion asked) throws Unclear {
        return asked.hands() == 1
                ? null
                : Given.answer(
                        Crew.times(plan, asked.beliefs(), asked.terms().ratePerHour(), asked.hands(), asked.seed()));
    }
}
