package putback.plan.tools;

import org.jspecify.annotations.Nullable;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.quantity.Torque;
import putback.sheet.Fastener;
import putback.sheet.Tightening;
import putback.tightening.ReadingWindow;

/**
 * What a tightening asks for, with its limits at the fastener.
 *
 * @param torque above 0
 * @param least by the sheet, else a tenth below
 * @param most by the sheet, else a tenth above
 * @param stated whether the sheet states the limits
 * @param angle whether an angle follows
 */
public record Limits(Torque torque, Torque least, Torque most, boolean stated, boolean angle) {
    /** Of a step that tightens to a torque; null for every other, and where the torque is not known. */
    public static @Nullable Limits of(Step step) {
        Fastener fastener = step.fastener();
        if (step.act() != Act.TIGHTEN || fastener == null) {
            return null;
        }
        if (fastener.tightening() instanceof Tightening.ToTorque one) {
            return of(fastener, one.torque(), false);
        }
        return fastener.tightening() instanceof Tightening.TorqueThenAngle both
                ? of(fastener, both.torque(), true)
                : null;
    }

    /** A torque with the limits that hold where nobody states any. */
    public static Limits usual(Torque torque) {
        return new Limits(torque, ReadingWindow.usualLeast(torque), ReadingWindow.usualMost(torque), false, false);
    }

    private static Limits of(Fastener fastener, Torque torque, boolean angle) {
        Torque low = fastener.windowLow();
        Torque high = fastener.windowHigh();
        return new Limits(
                torque,
                low == null ? ReadingWindow.usualLeast(torque) : low,
                high == null ? ReadingWindow.usualMost(torque) : high,
                low != null || high != null,
                angle);
    }

    /** Both units, rounded inward: {@code 99 to 121 N·m (74 to 89 lbf·ft)}. */
    public String text() {
        return Torque.windowText(least, most);
    }
}
