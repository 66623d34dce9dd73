/** The garage's books: customers, cars, jobs and all that belongs to them. */
@NullMarked
package putback.store.books;

import org.jspecify.annotations.NullMarked;
