package putback.store.books;

/**
 * Something to look at again after some road.
 *
 * @param dueOn day, as 2026-03-09
 * @param dueDistance what the car's clock shows then; empty when only the day counts
 * @param what such as wheel nuts
 * @param doneAt time; empty as long as it is due
 * @param seen what was found, such as torques
 */
public record Recheck(
        String id,
        String job,
        String dueOn,
        String dueDistance,
        String what,
        String doneAt,
        String doneDistance,
        String doneBy,
        String seen,
        int version) {
    /** The same as it was read at a version. */
    public Recheck at(int seen) {
        return new Recheck(id, job, dueOn, dueDistance, what, doneAt, doneDistance, doneBy, this.seen, seen);
    }
}
