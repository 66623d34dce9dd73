package putback.tightening.toolbox;

import putback.quantity.Torque;

/**
 * A tightening to find a wrench for.
 *
 * @param tool as the plan names it: {@code 18 mm socket}
 * @param torque wanted at the fastener, above 0
 * @param least allowed at the fastener
 * @param most allowed at the fastener, at or above least
 * @param angle whether it is turned on by an angle afterwards
 * @param key whether a key through the middle of the socket holds the other side
 * @param leftHand whether it tightens turning left
 */
public record Task(
        String tool, Torque torque, Torque least, Torque most, boolean angle, boolean key, boolean leftHand) {}
