/** The program: it reads what was asked, calls the rooms that know, and shows the answer. */
@NullMarked
package putback.app;

import org.jspecify.annotations.NullMarked;
