/**
 * Where wheels point: bush wind-up here; damping, suspension geometry and wheel readings in the rooms below. Axes and
 * signs after ISO 8855, in {@code docs/conventions.md}.
 */
@NullMarked
package putback.angles;

import org.jspecify.annotations.NullMarked;
