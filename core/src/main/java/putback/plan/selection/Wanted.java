package putback.plan.selection;

import java.util.ArrayList;
import java.util.List;

/**
 * What is to be renewed.
 *
 * @param targets at least one, without repeats, in the order asked for
 */
public record Wanted(List<Target> targets) {
    public Wanted {
        targets = List.copyOf(targets);
    }

    public List<String> ids() {
        List<String> ids = new ArrayList<>();
        for (Target target : targets) {
            ids.add(target.id());
        }
        return List.copyOf(ids);
    }
}
