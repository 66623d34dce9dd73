/** The pages, served on this machine only. */
@NullMarked
package putback.app.web;

import org.jspecify.annotations.NullMarked;
