package putback.plan.selection;

import java.util.Comparator;

/** Short clauses first. */
final class ByLength implements Comparator<Clause> {
    @Override
    public int compare(Clause one, Clause other) {
        return Integer.compare(one.length(), other.length());
    }
}
