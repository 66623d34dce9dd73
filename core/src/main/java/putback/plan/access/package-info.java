/** Which parts hang together and which joints can be reached, given what is open. */
@NullMarked
package putback.plan.access;

import org.jspecify.annotations.NullMarked;
