/** Wheels and corners drawn as SVG. */
@NullMarked
package putback.app.wheels;

import org.jspecify.annotations.NullMarked;
