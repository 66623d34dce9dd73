package putback.store.sheets;

import java.util.List;

/** What came of reading a text as data: a map, or everything that keeps it from being one. */
public sealed interface PieceRead {
    record Sound(Piece.Entries top) implements PieceRead {}

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements PieceRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
