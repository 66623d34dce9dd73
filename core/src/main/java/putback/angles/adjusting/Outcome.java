package putback.angles.adjusting;

import org.jspecify.annotations.Nullable;

/**
 * What becomes of something wanted.
 *
 * @param beforeDeg null where it was not read
 * @param afterDeg null where it was not read
 */
public record Outcome(
        Wanted wanted, @Nullable Double beforeDeg, @Nullable Double afterDeg) {
    public boolean isRead() {
        return afterDeg != null;
    }

    /** How far it stays outside; 0 inside, and where it was not read. */
    public double missDeg() {
        return afterDeg == null ? 0 : wanted.missDeg(afterDeg);
    }
}
