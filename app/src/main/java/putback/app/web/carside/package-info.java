/** The page at the car, and what it sends and hears. */
@NullMarked
package putback.app.web.carside;

import org.jspecify.annotations.NullMarked;
