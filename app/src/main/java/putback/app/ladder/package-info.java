/** The ladder: a plan drawn as one picture, the same on page and paper. */
@NullMarked
package putback.app.ladder;

import org.jspecify.annotations.NullMarked;
