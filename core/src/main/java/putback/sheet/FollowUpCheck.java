package putback.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds follow-ups that are named and not described, and such as wait for each other in a circle. */
final class FollowUpCheck {
    private final Sheet sheet;
    private final Resolver resolver;
    private final Set<String> known = new LinkedHashSet<>();

    FollowUpCheck(Sheet sheet, Resolver resolver) {
        this.sheet = sheet;
        this.resolver = resolver;
        for (FollowUp followUp : sheet.followUps()) {
            known.add(followUp.id());
        }
    }

    void check() {
        for (JointEntry joint : sheet.joints()) {
            Trail trail = Trail.of("joints", Assembler.key(joint.where(), joint.id()));
            ids(joint.brings(), trail.then("brings"));
            ids(joint.timing().tightenAfter(), trail.then("tighten-after"));
        }
        for (FollowUp followUp : sheet.followUps()) {
            ids(followUp.follows(), Trail.of("follow-ups", followUp.id()).then("follows"));
        }
        List<FollowUp> waiting = waiting();
        for (FollowUp stuck : waiting) {
            resolver.fault(
                    Trail.of("follow-ups", stuck.id()).then("follows"),
                    "these follow-ups wait for each other in a circle: " + names(waiting) + "; one has to come first");
        }
    }

    /** Those whose turn never comes: what is left when all that may go ahead has gone. */
    private List<FollowUp> waiting() {
        List<FollowUp> waiting = new ArrayList<>(sheet.followUps());
        Set<String> ahead = new HashSet<>(known);
        boolean moved = true;
        while (moved) {
            moved = false;
            for (Iterator<FollowUp> each = waiting.iterator(); each.hasNext(); ) {
                FollowUp one = each.next();
                if (Collections.disjoint(one.follows(), ahead)) {
                    ahead.remove(one.id());
                    each.remove();
                    moved = true;
                }
            }
        }
        return waiting;
    }

    private static String names(List<FollowUp> followUps) {
        return String.join(", ", followUps.stream().map(FollowUp::id).toList());
    }

    private void ids(List<String> ids, Trail trail) {
        for (int i = 0; i < ids.size(); i++) {
            if (!known.contains(ids.get(i))) {
                String near = Nearest.to(ids.get(i), known);
                resolver.missing(
                        trail.then(i),
                        "no follow-up is called " + ids.get(i)
                                + (near.isEmpty() ? "; describe it under follow-ups" : "; maybe " + near),
                        "follow-ups/" + ids.get(i));
            }
        }
    }
}
