/** The course of a job from the question to the handover, and whose car it is. */
@NullMarked
package putback.job;

import org.jspecify.annotations.NullMarked;
