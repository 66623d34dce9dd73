package putback.job;

import java.util.List;

/**
 * What a job has that its next stage asks for.
 *
 * @param scope whether what is renewed is known
 * @param approved whether somebody said yes
 * @param overCeiling whether what it comes to now is above what was agreed
 * @param partsMissing names of parts that are not here yet, or that nobody has looked at
 * @param owes what is still owed, in words; what is carried with a reason is not among it
 * @param opened whether anything has come apart
 * @param unanswered what the car must not be driven with and the owner has not answered yet, in words
 */
public record Standing(
        boolean scope,
        boolean approved,
        boolean overCeiling,
        List<String> partsMissing,
        List<String> owes,
        boolean opened,
        List<String> unanswered) {
    public Standing {
        partsMissing = List.copyOf(partsMissing);
        owes = List.copyOf(owes);
        unanswered = List.copyOf(unanswered);
    }
}
