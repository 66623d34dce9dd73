package putback.sheet;

import java.util.List;

/**
 * When a fastener is turned, where that is not when its joint is opened and closed. Ids are as written.
 *
 * @param loosenBefore joints that are still shut when it is broken loose, and tight when it is tightened
 * @param tightenAfter follow-ups before which it is run down only
 */
public record Timing(List<String> loosenBefore, List<String> tightenAfter) {
    public static final Timing PLAIN = new Timing(List.of(), List.of());

    public Timing {
        loosenBefore = List.copyOf(loosenBefore);
        tightenAfter = List.copyOf(tightenAfter);
    }
}
