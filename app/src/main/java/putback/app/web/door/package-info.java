/** Who may come in: what is turned away, signing in, people, devices, trust. */
@NullMarked
package putback.app.web.door;

import org.jspecify.annotations.NullMarked;
