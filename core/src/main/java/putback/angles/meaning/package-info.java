/** What readings point to: bent parts, a pull to one side. Never more than a pointer, and no limit that nobody gave. */
@NullMarked
package putback.angles.meaning;

import org.jspecify.annotations.NullMarked;
