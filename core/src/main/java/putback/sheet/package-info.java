/** The description of an assembly, as written and as it stands on one car. */
@NullMarked
package putback.sheet;

import org.jspecify.annotations.NullMarked;
