/** How far a hub may drop or lean before a hose, a wire or a half-shaft is at its limit. */
@NullMarked
package putback.angles.reach;

import org.jspecify.annotations.NullMarked;
