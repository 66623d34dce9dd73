package putback.ledger;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * What a plan promised, as far as the handover asks for it.
 *
 * @param joints by id, in the plan's order
 * @param renewed ids of parts, with what is renewed in one piece with each
 * @param followUps by id, with the joints that bring each
 * @param leaves by the id of a part that is taken off, what leaves in one piece with it
 * @param comes by the id of a part that is offered up, what comes in one piece with it
 */
public record Promised(
        Map<String, Fixing> joints,
        Map<String, List<String>> renewed,
        Map<String, List<String>> followUps,
        Map<String, List<String>> leaves,
        Map<String, List<String>> comes) {
    public Promised {
        joints = ordered(joints);
        renewed = ordered(renewed);
        followUps = ordered(followUps);
        leaves = ordered(leaves);
        comes = ordered(comes);
    }

    private static <V> Map<String, V> ordered(Map<String, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /**
     * How a joint is closed.
     *
     * @param threaded whether it is tightened at all
     * @param torqueNm null where the torque is not known, or it is snug
     * @param angleDeg null where no angle follows
     * @param leastNm least reading allowed; null where there is no torque
     * @param mostNm greatest reading allowed; null where there is no torque
     * @param height at which it has to be tightened; {@link Height#ANY} where it makes no difference
     * @param newFastener whether a new one is fitted
     * @param secondLook whether somebody looks again
     */
    public record Fixing(
            boolean threaded,
            @Nullable Double torqueNm,
            @Nullable Double angleDeg,
            @Nullable Double leastNm,
            @Nullable Double mostNm,
            Height height,
            boolean newFastener,
            boolean secondLook) {
        /** Of which nothing is known but that it is opened. */
        public static final Fixing PLAIN = new Fixing(false, null, null, null, null, Height.ANY, false, false);

        /** The same with a new fastener. */
        public Fixing renewed() {
            return new Fixing(threaded, torqueNm, angleDeg, leastNm, mostNm, height, true, secondLook);
        }

        /** The same with somebody who looks again. */
        public Fixing lookedAt() {
            return new Fixing(threaded, torqueNm, angleDeg, leastNm, mostNm, height, newFastener, true);
        }
    }
}
