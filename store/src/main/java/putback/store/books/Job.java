package putback.store.books;

import putback.job.Stage;

/**
 * One visit of one car.
 *
 * @param id empty for one that is not kept yet
 * @param number as people say it, such as 2026-0042
 * @param comebackOf id of the job whose work it is about; empty for none
 * @param version of what was read
 */
public record Job(
        String id,
        String number,
        String car,
        Arrival arrival,
        Stage stage,
        Scope scope,
        String comebackOf,
        String openedAt,
        int version) {

    /** The same with other words about the arrival. */
    public Job with(Arrival changed) {
        return new Job(id, number, car, changed, stage, scope, comebackOf, openedAt, version);
    }

    /** The same with another scope. */
    public Job with(Scope changed) {
        return new Job(id, number, car, arrival, stage, changed, comebackOf, openedAt, version);
    }

    /** The same as it was read at a version. */
    public Job at(int seen) {
        return new Job(id, number, car, arrival, stage, scope, comebackOf, openedAt, seen);
    }
}
