/** What differs on one car from the sheets it is built on: a sheet's text as data, changed and written again. */
@NullMarked
package putback.store.overlay;

import org.jspecify.annotations.NullMarked;
