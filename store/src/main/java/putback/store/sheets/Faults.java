package putback.store.sheets;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Collects what is wrong while a sheet is read; the same thing at the same place is told once. */
final class Faults {
    /** More than anyone reads; what is beyond it is counted in one last line. */
    static final int MOST = 1000;

    private final Set<Fault> faults = new TreeSet<>();
    private final Set<Place> places = new HashSet<>();

    void add(Place place, String message) {
        faults.add(Fault.at(place, message));
        places.add(place);
    }

    /** Adds only where nothing has been told yet, since the one wrong thing would be told twice. */
    void addUnlessTold(Place place, String message) {
        if (!places.contains(place)) {
            add(place, message);
        }
    }

    void addUnlessTold(Faults others) {
        for (Fault fault : others.faults) {
            if (!places.contains(fault.place())) {
                faults.add(fault);
            }
        }
        places.addAll(others.places);
    }

    /** Takes over the faults of a line that was read by itself. */
    void addShifted(Faults others, int lines) {
        for (Fault fault : others.faults) {
            add(new Place(fault.file(), fault.line() + lines, fault.column()), fault.message());
        }
    }

    /** Whether there are as many as anyone reads, so that looking for more is of no use. */
    boolean isFull() {
        return faults.size() >= MOST;
    }

    boolean isEmpty() {
        return faults.isEmpty();
    }

    /** Sorted by file, line and column. */
    List<Fault> sorted() {
        if (faults.size() <= MOST) {
            return List.copyOf(faults);
        }
        List<Fault> first = faults.stream().limit(MOST).toList();
        Fault last = first.get(MOST - 1);
        return java.util.stream.Stream.concat(
                        first.stream(),
                        java.util.stream.Stream.of(Fault.at(
                                last.place(), "and " + (faults.size() - MOST) + " more faults; put these right first")))
                .toList();
    }
}
