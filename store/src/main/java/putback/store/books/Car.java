package putback.store.books;

/**
 * A car.
 *
 * @param id empty for one that is not kept yet
 * @param customer id of whose it is; empty when not known
 * @param vin as typed; see {@code putback.job.Vin} for whether it can be one
 * @param built year or year and month, as far as known
 * @param distanceUnit km or mi: what its own clock counts
 * @param lockingKey where the key of the locking nuts lies
 * @param version of what was read
 */
public record Car(
        String id,
        String customer,
        String plate,
        String vin,
        String make,
        String model,
        String built,
        String distanceUnit,
        String lockingKey,
        String note,
        int version) {

    /** As one would call it: plate, make and model, as far as known. */
    public String called() {
        String called = (plate + " " + make + " " + model).strip().replaceAll(" +", " ");
        return called.isEmpty() ? "car without a plate" : called;
    }

    /** The same of another customer. */
    public Car of(String owner) {
        return new Car(id, owner, plate, vin, make, model, built, distanceUnit, lockingKey, note, version);
    }
}
