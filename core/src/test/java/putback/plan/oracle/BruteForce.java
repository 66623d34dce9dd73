package putback.plan.oracle;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;

/** Tries every way, for assemblies of up to about 14 joints. Results are millionths of a minute; empty when locked. */
final class BruteForce {
    private static final int MOST = 20;

    private final Rules rules;
    private final Duty duty;
    private final List<Integer> asides;

    BruteForce(Assembly assembly, Wanted wanted) {
        this.rules = new Rules(assembly);
        this.duty = new Duty(rules, wanted);
        this.asides = rules.asidesWorthTrying();
        if (rules.joints() > MOST) {
            throw new IllegalArgumentException(rules.joints() + " joints are too many to try every way");
        }
    }

    /** The least work over every set of joints with every set of asides. */
    OptionalLong leastWork() {
        long best = Long.MAX_VALUE;
        for (long joints = 0; joints < 1L << rules.joints(); joints++) {
            BitSet open = BitSet.valueOf(new long[] {joints});
            if (duty.fulfilled(open)) {
                best = leastWith(open, best);
            }
        }
        return best == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(best);
    }

    private long leastWith(BitSet open, long limit) {
        long best = limit;
        long bare = rules.work(open, new BitSet());
        for (int choice = 0; choice < 1 << asides.size(); choice++) {
            BitSet aside = asideParts(choice);
            long work = bare + aside.stream().mapToLong(rules::asideCost).sum();
            if (work < best && rules.sound(open, aside)) {
                best = work;
            }
        }
        return best;
    }

    private BitSet asideParts(int choice) {
        BitSet aside = new BitSet();
        for (int i = 0; i < asides.size(); i++) {
            if ((choice >> i & 1) != 0) {
                aside.set(asides.get(i));
            }
        }
        return aside;
    }

    /** The least sum of work and set-up over every order of every set, asides being decided on the way. */
    OptionalLong leastObjective() {
        Settings settings = new Settings(rules.assembly());
        long best = Long.MAX_VALUE;
        Map<State, Long> level = new HashMap<>();
        level.put(new State(0, 0, 0), 0L);
        while (!level.isEmpty()) {
            withAsides(level);
            for (Map.Entry<State, Long> entry : level.entrySet()) {
                best = Math.min(best, finished(entry.getKey(), entry.getValue()));
            }
            level = next(level, settings);
        }
        return best == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(best);
    }

    /**
     * @param set the four numbers of {@link Settings}, a byte each
     */
    private record State(int open, int aside, int set) {}

    private long finished(State state, long setup) {
        BitSet open = bits(state.open());
        return duty.fulfilled(open) ? setup + rules.work(open, asideParts(state.aside())) : Long.MAX_VALUE;
    }

    private void withAsides(Map<State, Long> level) {
        for (int i = 0; i < asides.size(); i++) {
            for (Map.Entry<State, Long> entry : List.copyOf(level.entrySet())) {
                State state = entry.getKey();
                if ((state.aside() >> i & 1) == 0 && rules.canGoAside(asides.get(i), bits(state.open()))) {
                    State moved = new State(state.open(), state.aside() | 1 << i, state.set());
                    level.merge(moved, entry.getValue(), Math::min);
                }
            }
        }
    }

    private Map<State, Long> next(Map<State, Long> level, Settings settings) {
        Map<State, Long> next = new HashMap<>();
        Map<Long, BitSet> openable = new HashMap<>();
        for (Map.Entry<State, Long> entry : level.entrySet()) {
            State state = entry.getKey();
            long key = (long) state.open() << Integer.SIZE | state.aside();
            BitSet choices =
                    openable.computeIfAbsent(key, k -> openable(bits(state.open()), asideParts(state.aside())));
            for (int j = choices.nextSetBit(0); j >= 0; j = choices.nextSetBit(j + 1)) {
                int[] set = unpack(state.set());
                long setup = entry.getValue() + settings.change(set, j);
                next.merge(new State(state.open() | 1 << j, state.aside(), pack(set)), setup, Math::min);
            }
        }
        return next;
    }

    /** A joint that had to go before one that is open already can never be opened any more. */
    private BitSet openable(BitSet open, BitSet aside) {
        Bonds bonds = rules.bonds(open);
        BitSet openable = new BitSet();
        for (int j = 0; j < rules.joints(); j++) {
            if (!open.get(j)
                    && !duty.mustStay.get(j)
                    && rules.joint(j).aheadOf().stream().noneMatch(open::get)
                    && rules.accessible(j, open, bonds, aside)) {
                openable.set(j);
            }
        }
        return openable;
    }

    private static BitSet bits(int mask) {
        return BitSet.valueOf(new long[] {mask});
    }

    private static int pack(int[] set) {
        return set[0] | set[1] << 8 | set[2] << 16 | set[3] << 24;
    }

    private static int[] unpack(int packed) {
        return new int[] {packed & 255, packed >> 8 & 255, packed >> 16 & 255, packed >> 24 & 255};
    }
}
