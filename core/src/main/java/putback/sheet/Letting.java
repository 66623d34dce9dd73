package putback.sheet;

import org.jspecify.annotations.Nullable;

/**
 * A part that is let go when a joint of one car is opened.
 *
 * @param part index of the part
 * @param aid what is put on first
 * @param letDown whether it is then let down on its jack
 */
public record Letting(int part, String aid, boolean letDown) {
    // Written out, since Java puts the methods of a record together anew at each start, at the cost of a sheet's
    // reading.

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Letting letting
                && part == letting.part
                && letDown == letting.letDown
                && aid.equals(letting.aid);
    }

    @Override
    public int hashCode() {
        return 31 * part + aid.hashCode();
    }
}
