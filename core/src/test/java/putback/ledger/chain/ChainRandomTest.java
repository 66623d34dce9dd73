package putback.ledger.chain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.ledger.AnEvent;
import putback.ledger.Did;
import putback.ledger.Event;

/** Whatever is done to one link, verifying stops at it or at the next. */
class ChainRandomTest {
    private static final String JOB = "job 3";

    private static Event event(Random random, int number) {
        return AnEvent.of(Did.TIGHTEN)
                .at("j" + random.nextInt(5))
                .torque(random.nextInt(1000) / 8.0)
                .id("e" + number)
                .by(random.nextBoolean() ? "M" : "K", null)
                .device("T" + random.nextInt(2), number)
                .event();
    }

    private static List<Link> chain(Random random) {
        List<Link> chain = List.of();
        for (int i = 1; i <= 30; i++) {
            chain = Chain.append(JOB, chain, List.of(event(random, i)));
        }
        return chain;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void anyTampering_isFoundWhereItIs(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 40; round++) {
            List<Link> chain = new ArrayList<>(chain(random));
            int at = 1 + random.nextInt(28);
            Link link = chain.get(at);
            String name = "seed " + seed + ", round " + round;
            assertThat(Chain.verify(JOB, chain)).as(name).isInstanceOf(Verdict.Whole.class);
            switch (random.nextInt(5)) {
                case 0 -> chain.set(at, new Link(at + 1, event(random, 99), link.previous(), link.hash()));
                case 1 -> chain.remove(at);
                case 2 -> Collections.swap(chain, at, at + 1);
                case 3 -> chain.add(at, link);
                default -> {
                    Event other = event(random, 99);
                    chain.set(at, new Link(at + 1, other, link.previous(), Chain.hash(link.previous(), other)));
                }
            }
            assertThat(Chain.verify(JOB, chain))
                    .as(name)
                    .isInstanceOfSatisfying(
                            Verdict.Broken.class,
                            broken -> assertThat(broken.number()).as(name).isBetween(at + 1, at + 2));
        }
    }
}
