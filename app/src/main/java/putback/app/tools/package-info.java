/** Tools and fasteners drawn to scale. */
@NullMarked
package putback.app.tools;

import org.jspecify.annotations.NullMarked;
