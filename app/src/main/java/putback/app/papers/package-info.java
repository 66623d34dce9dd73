/** What is printed or sent: job card, estimate, labels, records, handover. Made as HTML, set as PDF. */
@NullMarked
package putback.app.papers;

import org.jspecify.annotations.NullMarked;
