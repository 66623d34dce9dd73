package putback.store.books;

/**
 * Somebody who works in the garage.
 *
 * @param role {@code owner} or {@code mechanic}
 * @param password its hash; empty when none was set
 * @param active false once they may no longer sign in
 */
public record Person(String id, String name, String role, String password, boolean active) {
    /** May change settings, people and devices. */
    public static final String OWNER = "owner";

    /** May do all the rest. */
    public static final String MECHANIC = "mechanic";

    /** Whether settings, people and devices are theirs to change. */
    public boolean isOwner() {
        return role.equals(OWNER);
    }

    /** Without the hash, which has no place in a log. */
    @Override
    public String toString() {
        return name + " (" + role + ")";
    }
}
