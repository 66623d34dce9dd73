package putback.store.books;

/**
 * What was said and seen when the car came.
 *
 * @param complaint in the owner's words
 * @param conditions when it shows; the last road test repeats them
 * @param distanceIn in the car's unit, as read
 * @param distanceOut the same at the handover
 * @param promisedAt when it is to be ready; empty when nothing was promised
 */
public record Arrival(
        String complaint,
        String conditions,
        String distanceIn,
        String distanceOut,
        Heights heights,
        String promisedAt) {}
