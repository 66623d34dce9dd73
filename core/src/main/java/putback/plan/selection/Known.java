package putback.plan.selection;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The clauses collected so far, each once, in the order in which they turned up. */
final class Known {
    private final Set<Clause> all = new HashSet<>();
    private final List<Clause> inOrder = new ArrayList<>();
    private final BitSet askedFor = new BitSet();

    void add(Clause clause) {
        if (all.add(clause)) {
            inOrder.add(clause);
        }
        for (int item : clause.oneOf()) {
            askedFor.set(item);
        }
    }

    int size() {
        return inOrder.size();
    }

    /** The same list grows with what is added. */
    List<Clause> inOrder() {
        return inOrder;
    }

    /** Whether some clause asks for the item. */
    boolean asksFor(int item) {
        return askedFor.get(item);
    }
}
