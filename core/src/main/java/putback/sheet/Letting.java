package putback.sheet;

/**
 * A part that is let go when a joint of one car is opened.
 *
 * @param part index of the part
 * @param aid what is put on first
 * @param letDown whether it is then let down on its jack
 */
public record Letting(int part, String aid, boolean letDown) {}
