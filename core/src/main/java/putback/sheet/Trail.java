package putback.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The way from the top of a sheet to a place in it; made into a path only where something is wrong there. */
record Trail(@Nullable Trail before, String step) {
    static Trail of(String section, String key) {
        return new Trail(new Trail(null, section), key);
    }

    Trail then(String next) {
        return new Trail(this, next);
    }

    Trail then(int next) {
        return new Trail(this, Integer.toString(next));
    }

    List<String> path() {
        List<String> steps = new ArrayList<>();
        for (Trail trail = this; trail != null; trail = trail.before) {
            steps.add(trail.step);
        }
        Collections.reverse(steps);
        return steps;
    }
}
