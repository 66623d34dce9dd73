package putback.labour.seized;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is no candidate, before anything is weighed. */
final class Suitability {
    private Suitability() {}

    /** Null for a candidate. A ban is told before anything else. */
    static @Nullable LeftOut leftOut(Attempt attempt, Seized seized) {
        List<String> bans = bans(attempt, seized.nearby());
        if (!bans.isEmpty()) {
            return new LeftOut(attempt, bans, true);
        }
        if (seized.refusal() != null
                && !attempt.when().isEmpty()
                && !attempt.when().contains(seized.refusal())) {
            return new LeftOut(
                    attempt, "it is not for one that is \"" + seized.refusal().word() + "\"");
        }
        return attempt.chance().signum() == 0 ? new LeftOut(attempt, "it never works") : null;
    }

    /** All of them: whoever moves the hose away has to know of the gas behind it. What stays comes first. */
    private static List<String> bans(Attempt attempt, List<Nearby> near) {
        List<String> staying = new ArrayList<>();
        List<String> movable = new ArrayList<>();
        if (near.isEmpty()) {
            return staying;
        }
        for (Nearby nearby : EnumSet.copyOf(near)) {
            List<String> hurting = new ArrayList<>();
            for (Hazard hazard : attempt.hazards()) {
                if (nearby.forbids(hazard)) {
                    hurting.add(hazard.word());
                }
            }
            if (!hurting.isEmpty()) {
                String said = "no " + listed(hurting) + " near " + nearby.word() + ": " + nearby.because();
                (nearby.stays() ? staying : movable).add(said);
            }
        }
        staying.addAll(movable);
        return staying;
    }

    private static String listed(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }
}
