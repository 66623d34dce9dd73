/** What other programs read. Written by hand: a binding library would cost more than the plan itself. */
@NullMarked
package putback.app.json;

import org.jspecify.annotations.NullMarked;
