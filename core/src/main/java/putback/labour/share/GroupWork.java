package putback.labour.share;

import putback.quantity.Minutes;

/** What a group of jobs takes when they are done together; asked from several threads. */
public interface GroupWork {
    /**
     * @param group bit i is set when job i is in it; 0 is never asked for
     */
    Minutes of(long group);
}
