/** Where the garage's books lie: SQLite or PostgreSQL behind the same statements. */
@NullMarked
package putback.store.database;

import org.jspecify.annotations.NullMarked;
