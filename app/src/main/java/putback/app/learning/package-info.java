/** What a job's ledger teaches of minutes, seized fasteners and resorts, and what all jobs of a garage have taught. */
@NullMarked
package putback.app.learning;

import org.jspecify.annotations.NullMarked;
