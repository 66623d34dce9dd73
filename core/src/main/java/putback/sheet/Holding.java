package putback.sheet;

import putback.quantity.Length;

/** What keeps the other side of a fastener still. */
public sealed interface Holding {
    record Nothing() implements Holding {}

    record ByHex(Length size) implements Holding {}

    record ByKey(Length size) implements Holding {}

    Holding NOTHING = new Nothing();
}
