package putback.tightening.toolbox;

import java.util.List;
import putback.quantity.Torque;
import putback.tightening.ReadingWindow;

/** With what a fastener is tightened, or why no wrench of the toolbox can say how tight it is. */
public sealed interface Tightened {
    /**
     * @param wrench the best of those that cover it
     * @param setting a mark of the wrench
     * @param window what a reading may be, so that the fastener is surely within its limits
     * @param due why the wrench has to be calibrated first; empty when it has not
     * @param remarks anything else the hand has to know
     */
    record With(TorqueWrench wrench, Torque setting, ReadingWindow window, List<String> due, List<String> remarks)
            implements Tightened {
        public With {
            due = List.copyOf(due);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Tightened, not torqued: an honest entry. No figure goes with it.
     *
     * @param because a clause without a full stop
     */
    record Untorqued(String because) implements Tightened {}
}
