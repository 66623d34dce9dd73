/** The day, the search, a car, the settings, and who did what. */
@NullMarked
package putback.app.web.desk;

import org.jspecify.annotations.NullMarked;
