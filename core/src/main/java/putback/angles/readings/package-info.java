/**
 * What a wheel-angle gauge read, and the angles that follow from it. Camber positive top outboard, toe positive in,
 * caster positive top rearward, inclination (SAI) positive top inboard, on either side; degrees.
 */
@NullMarked
package putback.angles.readings;

import org.jspecify.annotations.NullMarked;
