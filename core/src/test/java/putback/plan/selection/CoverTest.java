package putback.plan.selection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.assertj.core.api.ObjectAssert;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Covers small enough to be seen through. */
class CoverTest {
    private static final long[] WEIGHT = {4, 3, 5, 0, 7};

    @Test
    void whatIsIn_staysIn_thoughNoClauseNamesIt() {
        both(bits(4), bits(), Clause.oneOf(bits(0, 1))).isEqualTo(new Cover(bits(1, 4), 10));
    }

    @Test
    void whatIsIn_meetsItsClauses() {
        both(bits(0), bits(), Clause.oneOf(bits(0, 1)), Clause.oneOf(bits(1, 2)))
                .isEqualTo(new Cover(bits(0, 1), 7));
    }

    @Test
    void whatFollows_isPaidToo() {
        both(bits(), bits(), Clause.oneOf(bits(0, 1)), Clause.ifThen(bits(1), bits(2)))
                .isEqualTo(new Cover(bits(0), 4));
    }

    @Test
    void whatMustNotBeTogether_isNot() {
        both(bits(0), bits(), Clause.oneOf(bits(1, 4)), Clause.ifThen(bits(0, 1), bits()))
                .isEqualTo(new Cover(bits(0, 4), 11));
    }

    @Test
    void noCover_isFound_whereAllWaysAreShut() {
        both(bits(), bits(0, 1), Clause.oneOf(bits(0, 1))).isNull();
        both(bits(), bits(), Clause.oneOf(bits(2)), Clause.ifThen(bits(2), bits()))
                .isNull();
    }

    @Test
    void noClauses_needNothing() {
        both(bits(), bits()).isEqualTo(Cover.EMPTY);
    }

    private static ObjectAssert<@Nullable Cover> both(BitSet in, BitSet out, Clause... clauses) {
        Cover plain = new CoverSolver(WEIGHT, 1000).least(List.of(clauses), in, out, CoverSolver.NO_LIMIT);
        Cover tree = new CoverTree(WEIGHT, new ArrayList<>(List.of(clauses)), chosen -> false, Effort.unlimited())
                .least(in, out, CoverSolver.NO_LIMIT);
        assertThat(tree).isEqualTo(plain);
        return assertThat(tree);
    }

    private static BitSet bits(int... items) {
        BitSet bits = new BitSet();
        for (int item : items) {
            bits.set(item);
        }
        return bits;
    }
}
