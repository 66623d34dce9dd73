/** The commands, and how their arguments are read. Nothing here may load what only the server needs. */
@NullMarked
package putback.app.cli;

import org.jspecify.annotations.NullMarked;
