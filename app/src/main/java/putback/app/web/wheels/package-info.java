/** Where the wheels point, and how a corner moves. */
@NullMarked
package putback.app.web.wheels;

import org.jspecify.annotations.NullMarked;
