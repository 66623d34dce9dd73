package putback.sheet;

/**
 * A part that swings, drops or springs when a joint is opened.
 *
 * @param part id as written in the sheet
 * @param aid what is put on first, such as strap, jack or spring compressor
 * @param letDown whether it is then let down on its jack before the next joint is opened
 */
public record LetsGo(String part, String aid, boolean letDown) {}
