package putback.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Turns written ids into indices, and collects what names nothing. */
final class Resolver {
    private final References partIds;
    private final References jointIds;
    private final Set<SheetFault> faults = new LinkedHashSet<>();

    Resolver(boolean sided) {
        this.partIds = new References("part", sided);
        this.jointIds = new References("joint", sided);
    }

    References partIds() {
        return partIds;
    }

    References jointIds() {
        return jointIds;
    }

    /** What a joint joins, which alone may be the body. */
    List<Integer> joined(List<String> written, Side side, Trail trail) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            List<Integer> here = found(partIds, written.get(i), side, trail.then(i));
            if (!here.isEmpty() && found.containsAll(here)) {
                fault(trail.then(i), written.get(i) + " is joined twice; name each part once");
            }
            found.addAll(here);
        }
        return distinct(found);
    }

    List<List<Integer>> clauses(Access access, Side side, Trail trail) {
        List<List<Integer>> clauses = new ArrayList<>();
        for (int i = 0; i < access.clauses().size(); i++) {
            List<String> written = access.clauses().get(i);
            List<List<Integer>> members = new ArrayList<>();
            for (int k = 0; k < written.size(); k++) {
                Trail at = written.size() == 1 ? trail.then(i) : trail.then(i).then(k);
                members.add(parts(written.get(k), side, at));
            }
            addPerSide(clauses, members);
        }
        return clauses;
    }

    /** A clause written where there is no side, over parts that have one, holds for left and right alike. */
    private static void addPerSide(List<List<Integer>> clauses, List<List<Integer>> members) {
        boolean twofold = false;
        for (List<Integer> found : members) {
            twofold |= found.size() == 2;
        }
        clauses.add(flat(members, 0));
        if (twofold) {
            clauses.add(flat(members, 1));
        }
    }

    private static List<Integer> flat(List<List<Integer>> members, int which) {
        List<Integer> flat = new ArrayList<>();
        for (List<Integer> found : members) {
            if (!found.isEmpty()) {
                flat.add(found.get(Math.min(which, found.size() - 1)));
            }
        }
        return distinct(flat);
    }

    List<Integer> allParts(List<String> written, Side side, Trail trail) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            found.addAll(parts(written.get(i), side, trail.then(i)));
        }
        return distinct(found);
    }

    List<Integer> parts(String written, Side side, Trail trail) {
        List<Integer> found = found(partIds, written, side, trail);
        if (found.contains(0)) {
            fault(trail, "body is the car itself: it may be joined and may be named in nothing else");
            return List.of();
        }
        return found;
    }

    List<Integer> joints(List<String> written, Side side, Trail trail) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            all.addAll(found(jointIds, written.get(i), side, trail.then(i)));
        }
        return distinct(all);
    }

    /** Joints other than the one that names them. */
    List<Integer> otherJoints(int index, List<String> written, Side side, Trail trail) {
        List<Integer> all = joints(written, side, trail);
        if (all.contains(index)) {
            fault(trail, "a joint cannot wait for itself; name another joint here");
        }
        return all;
    }

    private List<Integer> found(References ids, String written, Side side, Trail trail) {
        References.Found found = ids.find(written, side);
        if (!found.wrong().isEmpty()) {
            faults.add(new SheetFault(trail.path(), found.wrong(), found.missing()));
        }
        return found.indices();
    }

    private static List<Integer> distinct(List<Integer> list) {
        return list.size() < 2 ? list : new ArrayList<>(new LinkedHashSet<>(list));
    }

    void fault(Trail trail, String message) {
        faults.add(new SheetFault(trail.path(), message));
    }

    void missing(Trail trail, String message, String missing) {
        faults.add(new SheetFault(trail.path(), message, missing));
    }

    boolean isSound() {
        return faults.isEmpty();
    }

    List<SheetFault> faults() {
        Map<String, SheetFault> byPlace = new TreeMap<>();
        for (SheetFault fault : faults) {
            byPlace.putIfAbsent(String.join("/", fault.path()) + "\n" + fault.message(), fault);
        }
        return List.copyOf(byPlace.values());
    }
}
