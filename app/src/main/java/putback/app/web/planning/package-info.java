/** Questions that keep nothing: the plan of a sheet, its price, how tight. */
@NullMarked
package putback.app.web.planning;

import org.jspecify.annotations.NullMarked;
