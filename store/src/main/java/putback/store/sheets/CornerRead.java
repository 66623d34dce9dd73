package putback.store.sheets;

import java.util.List;
import putback.angles.linkage.Corner;
import putback.angles.reach.Tie;

/** What came of reading a suspension: the corner it describes, or everything that is wrong with it. */
public sealed interface CornerRead {
    /**
     * @param ties hoses, wires and shafts of the corner; mostly none are given
     */
    record Sound(Corner corner, List<Tie> ties) implements CornerRead {
        public Sound {
            ties = List.copyOf(ties);
        }
    }

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements CornerRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
