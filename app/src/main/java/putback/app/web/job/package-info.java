/** A job from the complaint to the handover: its page, its price, the owner’s word, its papers and photos. */
@NullMarked
package putback.app.web.job;

import org.jspecify.annotations.NullMarked;
