/** Questions about one fastener, read from what a person typed: in the terminal and on a page alike. */
@NullMarked
package putback.app.asking;

import org.jspecify.annotations.NullMarked;
