/** Photos: kept as files named by what is in them, without place, time or camera. */
@NullMarked
package putback.store.photos;

import org.jspecify.annotations.NullMarked;
