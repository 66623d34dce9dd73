package putback.app.papers;

import org.jspecify.annotations.Nullable;
import putback.quantity.Torque;

/**
 * What was read when a joint was tightened.
 *
 * @param joint its id, such as {@code left.strut-to-hub}
 * @param read null where no torque was read
 * @param by who did it
 * @param when as the garage writes it
 * @param secondBy who looked a second time
 * @param wrench which one, by the garage's own name
 * @param note such as the reason why it was not torqued
 */
public record Reading(
        String joint, @Nullable Torque read, String by, String when, String secondBy, String wrench, String note) {}
