/** Sheets as files: read from YAML into the model, with every fault told at its line and column. */
@NullMarked
package putback.store.sheets;

import org.jspecify.annotations.NullMarked;
