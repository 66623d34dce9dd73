/** A plan as text on a terminal: the ladder stood upright, as wide as the window. */
@NullMarked
package putback.app.text;

import org.jspecify.annotations.NullMarked;
