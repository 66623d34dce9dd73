package putback.sheet;

import putback.quantity.Minutes;

/** Minutes that a change costs between two steps. */
public record Setups(Minutes height, Minutes side, Minutes station, Minutes tool) {
    /** The figures of the format: 3.0, 0.5, 0.3 and 0.15 min. Common practice, no source. */
    public static final Setups DEFAULT =
            new Setups(Minutes.of("3.0"), Minutes.of("0.5"), Minutes.of("0.3"), Minutes.of("0.15"));
}
