/** Published and independently computed figures against ours. */
@NullMarked
package putback.proof;

import org.jspecify.annotations.NullMarked;
