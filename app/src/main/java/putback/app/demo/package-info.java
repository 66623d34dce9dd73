/** The books of an invented garage: invented makes, people and town. */
@NullMarked
package putback.app.demo;

import org.jspecify.annotations.NullMarked;
