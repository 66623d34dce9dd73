package putback.store.sheets;

import java.util.List;
import putback.tightening.toolbox.Toolbox;

/** What came of reading a toolbox: the tools, or everything that is wrong with the file. */
public sealed interface ToolboxRead {
    record Sound(Toolbox toolbox) implements ToolboxRead {}

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements ToolboxRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
