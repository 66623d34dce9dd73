/** How a wheel stands and moves on its strut or wishbones, from the points its links are held at. */
@NullMarked
package putback.angles.linkage;

import org.jspecify.annotations.NullMarked;
