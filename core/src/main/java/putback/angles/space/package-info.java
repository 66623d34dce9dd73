/** Vectors and turns in space; ISO 8855 axes, x forward, y left, z up, millimetres and radians. */
@NullMarked
package putback.angles.space;

import org.jspecify.annotations.NullMarked;
