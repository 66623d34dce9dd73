package putback.tightening;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Force;
import putback.quantity.Parsed;
import putback.quantity.Torque;

/**
 * How tight a fastener is.
 *
 * @param proofLoad of the bolt
 * @param clamp load that the torque brings, the angle left out
 * @param proofUse clamp over proof load
 * @param yieldUse share of the yield stress, pull and twist together
 * @param torque that brings the clamp load
 * @param clampLow what the clamp load may be at least by torque wrench
 * @param clampHigh at most
 * @param looseningLow torque that loosens it straight away
 * @param looseningHigh after it has sat for half a day; rust comes on top
 * @param clampAfterAngle with the angle, bolt and joint elastic; null when there is none or the stiffness is not known
 * @param plausibility of the torque for thread and class
 * @param plausible whether torque and hexagon can be right
 */
public record Tightness(
        Asked asked,
        Force proofLoad,
        Force clamp,
        double proofUse,
        double yieldUse,
        Torque torque,
        Force clampLow,
        Force clampHigh,
        Torque looseningLow,
        Torque looseningHigh,
        @Nullable Force clampAfterAngle,
        Plausibility plausibility,
        boolean plausible) {

    /** Works everything out, or says why the question has no answer. */
    public static Parsed<Tightness> of(Asked asked) {
        return Answering.of(asked);
    }

    /** Whether the bolt yields at this torque by itself, so that no wrench should be set to it. */
    public boolean breaksIt() {
        boolean tooMuch = !plausibility.isPlausible()
                && torque.newtonMetres() > plausibility.high().newtonMetres();
        return yieldUse > 1 || tooMuch;
    }

    /** What a person should know about the figures, each a sentence. */
    public List<String> notes() {
        return TightnessNotes.of(this);
    }
}
