/** Looks over what lies on the disk. */
@NullMarked
package putback.store.inspection;

import org.jspecify.annotations.NullMarked;
