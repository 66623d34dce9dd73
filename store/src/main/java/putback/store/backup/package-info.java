/** Backups of all books and photos in one file, and the way back; docs/backup.md has the format. */
@NullMarked
package putback.store.backup;

import org.jspecify.annotations.NullMarked;
