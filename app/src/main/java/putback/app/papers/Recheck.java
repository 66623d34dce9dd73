package putback.app.papers;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import putback.quantity.Torque;

/**
 * When the wheel fasteners are to be looked at again.
 *
 * @param kilometres after about so many, as the garage has decided
 * @param by at the latest; null leaves a line
 * @param torque of a wheel fastener; null where it is not known
 * @param source where that torque came from; may be empty
 */
public record Recheck(
        int kilometres, @Nullable LocalDate by, @Nullable Torque torque, String source) {}
