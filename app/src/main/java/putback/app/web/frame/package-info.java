/** What every page stands on: templates, forms, who asks, and where sheets and books are found. */
@NullMarked
package putback.app.web.frame;

import org.jspecify.annotations.NullMarked;
