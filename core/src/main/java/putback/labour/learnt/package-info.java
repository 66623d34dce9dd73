/** What a garage has seen, turned into its own figures, each with the weight of its evidence; and what is worth a shelf. */
@NullMarked
package putback.labour.learnt;

import org.jspecify.annotations.NullMarked;
