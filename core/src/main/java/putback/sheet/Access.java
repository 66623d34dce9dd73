package putback.sheet;

import java.util.List;

/**
 * What has to be out of the way, as written: each clause must be met, and any one part of a clause meets it.
 *
 * @param clauses lists of part ids, possibly with a side or {@code other.} before them
 */
public record Access(List<List<String>> clauses) {
    public static final Access FREE = new Access(List.of());

    public Access {
        clauses = Nested.copyOf(clauses);
    }
}
