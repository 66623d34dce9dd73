package putback.labour.seized;

import org.jspecify.annotations.Nullable;

/** What is no candidate, before anything is weighed. */
final class Suitability {
    private Suitability() {}

    /** Null for a candidate. A ban is told before anything else. */
    static @Nullable LeftOut leftOut(Attempt attempt, Seized seized) {
        for (Nearby nearby : seized.nearby()) {
            for (Hazard hazard : attempt.hazards()) {
                if (nearby.forbids(hazard)) {
                    return new LeftOut(
                            attempt, "no " + hazard.word() + " near " + nearby.word() + ": " + nearby.because(), true);
                }
            }
        }
        if (seized.refusal() != null
                && !attempt.when().isEmpty()
                && !attempt.when().contains(seized.refusal())) {
            return new LeftOut(
                    attempt, "it is not for one that is \"" + seized.refusal().word() + "\"", false);
        }
        return attempt.chance().signum() == 0 ? new LeftOut(attempt, "it never works", false) : null;
    }
}
