/** A new car: its layout by questions, its figures by the fill-in card. */
@NullMarked
package putback.app.web.card;

import org.jspecify.annotations.NullMarked;
