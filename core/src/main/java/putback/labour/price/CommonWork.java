package putback.labour.price;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import putback.labour.share.Shapley;
import putback.labour.share.Shares;
import putback.plan.selection.Selected;
import putback.plan.selection.Selector;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.quantity.Minutes;
import putback.quantity.Parsed;
import putback.sheet.Assembly;

/** The least work of every group of jobs, and how it is shared. */
final class CommonWork {
    private final Assembly assembly;
    private final List<Job> jobs;
    private final Map<List<String>, Minutes> known = new ConcurrentHashMap<>();
    private final ConcurrentSkipListSet<String> locked = new ConcurrentSkipListSet<>(
            Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));

    private CommonWork(Assembly assembly, List<Job> jobs) {
        this.assembly = assembly;
        this.jobs = jobs;
    }

    /** The shares, each with its error where they are drawn; or which jobs cannot be done. */
    static Parsed<Shares> shares(Assembly assembly, List<Job> jobs, long seed) {
        CommonWork work = new CommonWork(assembly, jobs);
        Parsed<Shares> shares = Shapley.of(jobs.size(), work::of, seed);
        return work.locked.isEmpty() ? shares : new Parsed.Refused<>(work.locked.first());
    }

    private Minutes of(long group) {
        Map<String, Target> targets = new LinkedHashMap<>();
        List<String> names = new ArrayList<>();
        for (int job = 0; job < jobs.size(); job++) {
            if ((group >> job & 1) != 0) {
                names.add(jobs.get(job).name());
                for (Target target : jobs.get(job).wanted().targets()) {
                    targets.putIfAbsent(target.id(), target);
                }
            }
        }
        List<String> key = targets.keySet().stream().sorted().toList();
        return known.computeIfAbsent(key, one -> least(new Wanted(List.copyOf(targets.values())), names));
    }

    private Minutes least(Wanted wanted, List<String> names) {
        if (Selector.least(assembly, wanted) instanceof Selected.Sound sound) {
            return sound.selection().work();
        }
        locked.add("there is no sound order for " + String.join(" and ", names));
        return Minutes.ZERO;
    }
}
