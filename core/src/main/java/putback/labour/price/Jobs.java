package putback.labour.price;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The jobs of an estimate, each once.
 *
 * @param each in the order asked for
 * @param notes about those that were named more than once, or are within another
 */
public record Jobs(List<Job> each, List<String> notes) {
    public Jobs {
        each = List.copyOf(each);
        notes = List.copyOf(notes);
    }

    /** Jobs that renew the same are one, since nothing is renewed twice. */
    public static Jobs of(List<Job> asked) {
        Map<TreeSet<String>, Job> once = new LinkedHashMap<>();
        Map<TreeSet<String>, Integer> times = new LinkedHashMap<>();
        for (Job job : asked) {
            TreeSet<String> renewed = new TreeSet<>(job.wanted().ids());
            once.putIfAbsent(renewed, job);
            times.merge(renewed, 1, Integer::sum);
        }
        List<String> notes = new ArrayList<>();
        times.forEach((renewed, count) -> {
            Job job = once.get(renewed);
            if (count > 1 && job != null) {
                notes.add(job.name() + " is named as " + count + " jobs; nothing is renewed twice, so it counts once.");
            }
        });
        return new Jobs(List.copyOf(once.values()), notes);
    }
}
