package putback.plan.selection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Items to choose so that clauses are met, made by chance.
 *
 * @param in items that have to be in
 * @param out items that must not be
 */
record CoverProblem(long seed, long[] weight, List<Clause> clauses, BitSet in, BitSet out) {
    /** Few enough items that every choice can be tried. */
    static CoverProblem small(long seed) {
        Random random = new Random(seed);
        int items = 2 + random.nextInt(11);
        return make(seed, random, items, 1 + random.nextInt(2 * items), 5);
    }

    static CoverProblem large(long seed) {
        Random random = new Random(seed);
        int items = 20 + random.nextInt(60);
        return make(seed, random, items, items + random.nextInt(2 * items), 8);
    }

    /** Nearly equal weights and short clauses of which many bind: no way to take is plain. */
    static CoverProblem hard(long seed) {
        Random random = new Random(seed);
        int items = 25 + random.nextInt(15);
        long[] weight = new long[items];
        Arrays.setAll(weight, item -> 10 + random.nextInt(4));
        List<Clause> made = new ArrayList<>();
        for (int i = 0; i < 2 * items; i++) {
            BitSet oneOf = some(random, items, 1);
            while (oneOf.cardinality() < 3) {
                oneOf.set(random.nextInt(items));
            }
            BitSet given = random.nextInt(4) == 0 ? some(random, items, 2) : new BitSet();
            oneOf.andNot(given);
            made.add(Clause.ifThen(given, oneOf));
        }
        return new CoverProblem(seed, weight, made, new BitSet(), new BitSet());
    }

    static CoverProblem vast(long seed) {
        Random random = new Random(seed);
        int items = 200 + random.nextInt(100);
        long[] weight = new long[items];
        Arrays.setAll(weight, item -> random.nextLong(1L << 40));
        BitSet in = some(random, items, 1 + random.nextInt(100));
        BitSet out = some(random, items, 1 + random.nextInt(100));
        out.andNot(in);
        List<Clause> made = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            BitSet given = random.nextBoolean() ? some(random, items, 150) : new BitSet();
            BitSet oneOf = some(random, items, 1 + random.nextInt(100));
            oneOf.andNot(given);
            made.add(Clause.ifThen(given, oneOf));
        }
        return new CoverProblem(seed, weight, made, in, out);
    }

    private static CoverProblem make(long seed, Random random, int items, int clauses, int longest) {
        long[] weight = new long[items];
        int dearest = new int[] {2, 5, 100, 2_000_000_000}[random.nextInt(4)];
        Arrays.setAll(weight, item -> random.nextInt(8) == 0 ? 0 : random.nextInt(dearest));
        BitSet in = new BitSet();
        BitSet out = new BitSet();
        if (random.nextInt(3) == 0) {
            in.or(some(random, items, 3));
            out.or(some(random, items, 3));
            out.andNot(in);
        }
        boolean shut = random.nextInt(6) == 0;
        List<Clause> made = new ArrayList<>();
        for (int i = 0; i < clauses; i++) {
            made.add(clause(random, items, longest, shut));
        }
        return new CoverProblem(seed, weight, made, in, out);
    }

    /** A set of which one is needed, a single item, or what follows from others; nothing follows if {@code shut} allows it. */
    private static Clause clause(Random random, int items, int longest, boolean shut) {
        BitSet given = random.nextInt(5) < 2 ? some(random, items, 3) : new BitSet();
        BitSet oneOf = some(random, items, random.nextInt(10) == 0 ? 1 : longest);
        if (shut && !given.isEmpty() && random.nextBoolean()) {
            oneOf.clear();
        }
        oneOf.andNot(given);
        return given.isEmpty() || shut || !oneOf.isEmpty() ? Clause.ifThen(given, oneOf) : Clause.oneOf(given);
    }

    private static BitSet some(Random random, int items, int most) {
        BitSet some = new BitSet();
        for (int i = random.nextInt(most); i >= 0; i--) {
            some.set(random.nextInt(items));
        }
        return some;
    }

    CoverProblem withClauses(int first) {
        return new CoverProblem(seed, weight, clauses.subList(0, first), in, out);
    }

    /** The least weight over all choices; above every weight when none meets the clauses. */
    long leastOfAll() {
        long least = none();
        for (long bits = 0; bits < 1L << weight.length; bits++) {
            BitSet chosen = BitSet.valueOf(new long[] {bits});
            if (weightOf(chosen) < least && isMet(chosen)) {
                least = weightOf(chosen);
            }
        }
        return least;
    }

    long none() {
        return Arrays.stream(weight).sum() + 1;
    }

    long weightOf(BitSet chosen) {
        return chosen.stream().mapToLong(item -> weight[item]).sum();
    }

    boolean isMet(BitSet chosen) {
        return in.stream().allMatch(chosen::get)
                && out.stream().noneMatch(chosen::get)
                && clauses.stream().allMatch(clause -> isMet(clause, chosen));
    }

    static boolean isMet(Clause clause, BitSet chosen) {
        return !IntStream.of(clause.given()).allMatch(chosen::get)
                || IntStream.of(clause.oneOf()).anyMatch(chosen::get);
    }

    @Override
    public String toString() {
        return "seed " + seed + ": weights " + Arrays.toString(weight) + ", in " + in + ", out " + out + ", " + clauses;
    }
}
