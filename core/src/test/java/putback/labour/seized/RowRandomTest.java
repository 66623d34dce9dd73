package putback.labour.seized;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.quantity.Minutes;
import putback.quantity.Parsed;

/** The order by cost over chance against every order of every choice. */
class RowRandomTest {
    private static final int MOST = 6;

    @Test
    void noOrderOfNoChoice_isCheaper() {
        for (long seed = 1; seed <= 400; seed++) {
            Seized seized = seized(new Random(seed));
            Row row = row(seized);
            Best best = new Best(seized);
            assertThat(row.leftChance()).as("seed " + seed).isEqualByComparingTo(best.left);
            assertThat(row.expectedCost().subtract(best.cost).abs())
                    .as("seed %d: %s against %s", seed, row.expectedCost(), best.cost)
                    .isLessThan(new BigDecimal("1e-60"));
            assertThat(row.tries().size() + row.leftOut().size())
                    .as("seed " + seed)
                    .isEqualTo(seized.attempts().size());
        }
    }

    /** What is left out at the same cost could be in; what is in and saves nothing could not be out. */
    @Test
    void everyAttemptOfTheRow_pays() {
        for (long seed = 1; seed <= 400; seed++) {
            Seized seized = seized(new Random(seed));
            Row row = row(seized);
            for (Try one : row.tries()) {
                List<Attempt> without = new ArrayList<>(seized.attempts());
                without.remove(one.attempt());
                if (row.isCertain() && !without.isEmpty()) {
                    Row shorter = row(new Seized(seized.ratePerHour(), without, null, List.of()));
                    boolean dearer = shorter.expectedCost().compareTo(row.expectedCost()) > 0 || !shorter.isCertain();
                    assertThat(dearer || one.attempt().isCertain() || one.cost().signum() == 0)
                            .as("seed %d: %s", seed, one)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void theOrderOfTheList_changesNothing() {
        for (long seed = 1; seed <= 200; seed++) {
            Seized seized = seized(new Random(seed));
            List<Attempt> turned = new ArrayList<>(seized.attempts());
            java.util.Collections.reverse(turned);
            Row other = row(new Seized(seized.ratePerHour(), turned, null, List.of()));
            assertThat(other.tries()).as("seed " + seed).isEqualTo(row(seized).tries());
        }
    }

    /** Against the plain rule: an attempt is banned when some one of its hazards is forbidden by some one thing near. */
    @Test
    void whatIsNear_bansAsOneByOne_andTheRestIsOrderedAsIfTheBannedWereNotThere() {
        for (long seed = 1; seed <= 400; seed++) {
            Random random = new Random(seed);
            List<Nearby> near = new ArrayList<>(List.of(Nearby.values()));
            java.util.Collections.shuffle(near, random);
            near = near.subList(0, random.nextInt(5));
            List<Attempt> all = new ArrayList<>();
            List<Attempt> allowed = new ArrayList<>();
            for (Attempt plain : seized(random).attempts()) {
                List<Hazard> hazards = new ArrayList<>(List.of(Hazard.values()));
                java.util.Collections.shuffle(hazards, random);
                Attempt attempt = with(plain, hazards.subList(0, random.nextInt(3)));
                all.add(attempt);
                if (near.stream().noneMatch(one -> attempt.hazards().stream().anyMatch(one::forbids))) {
                    allowed.add(attempt);
                }
            }
            Row row = row(new Seized(BigDecimal.TEN, all, null, near));
            assertThat(row.leftOut().stream().filter(LeftOut::banned).count())
                    .as("seed " + seed)
                    .isEqualTo(all.size() - allowed.size());
            if (!allowed.isEmpty()) {
                Row same = row(new Seized(BigDecimal.TEN, allowed, null, List.of()));
                assertThat(row.tries()).as("seed " + seed).isEqualTo(same.tries());
                assertThat(row.expectedCost()).as("seed " + seed).isEqualTo(same.expectedCost());
            }
        }
    }

    private static Attempt with(Attempt plain, List<Hazard> hazards) {
        return new Attempt(
                plain.id(),
                plain.minutes(),
                plain.chance(),
                plain.breakChance(),
                plain.breakPrice(),
                plain.scraps(),
                plain.when(),
                hazards);
    }

    private static Row row(Seized seized) {
        return ((Parsed.Value<Row>) seized.answer()).value();
    }

    /** Few different figures, so that ties, certain and hopeless attempts come up often. */
    private static Seized seized(Random random) {
        List<Attempt> attempts = new ArrayList<>();
        int count = 1 + random.nextInt(MOST);
        for (int i = 0; i < count; i++) {
            int chance = random.nextInt(5) == 0 ? 20 * random.nextInt(2) : random.nextInt(21);
            attempts.add(new Attempt(
                    "r" + i,
                    new Minutes(500_000L * random.nextInt(40)),
                    BigDecimal.valueOf(5L * chance, 2),
                    BigDecimal.valueOf(random.nextInt(3), 1),
                    BigDecimal.valueOf(random.nextInt(4) * 725L, 2),
                    BigDecimal.valueOf(random.nextInt(3) * 450L, 2),
                    List.of(),
                    List.of()));
        }
        return new Seized(BigDecimal.valueOf(30 + random.nextInt(60)), attempts, null, List.of());
    }

    /** Tries all orders of all choices: first the least chance that none works, then the least cost. */
    private static final class Best {
        private final Seized seized;
        private BigDecimal left = BigDecimal.ONE;
        private BigDecimal cost = BigDecimal.ZERO;

        Best(Seized seized) {
            this.seized = seized;
            go(0, BigDecimal.ONE, BigDecimal.ZERO);
        }

        private void go(int used, BigDecimal leftNow, BigDecimal costNow) {
            int compared = leftNow.compareTo(left);
            if (compared < 0 || compared == 0 && costNow.compareTo(cost) < 0) {
                left = leftNow;
                cost = costNow;
            }
            for (int i = 0; i < seized.attempts().size(); i++) {
                if ((used >> i & 1) == 0) {
                    Attempt next = seized.attempts().get(i);
                    BigDecimal money = seized.ratePerHour()
                            .multiply(next.minutes().decimal())
                            .divide(BigDecimal.valueOf(60), new MathContext(90))
                            .add(next.breakChance().multiply(next.breakPrice()))
                            .add(next.scraps());
                    go(
                            used | 1 << i,
                            leftNow.multiply(BigDecimal.ONE.subtract(next.chance())),
                            costNow.add(leftNow.multiply(money)));
                }
            }
        }
    }
}
