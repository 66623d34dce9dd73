package putback.ledger.chain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.ledger.AnEvent;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Promised;
import putback.ledger.Standing;

/** Three devices on one car, a bad network, wrong clocks: every event once, in each device's order, and the chain holds. */
class MergeRandomTest {
    private static final String JOB = "job 1";
    private static final List<Did> DONE = List.of(Did.UNDO, Did.START, Did.TIGHTEN, Did.SECOND_LOOK, Did.BREAK_LOOSE);

    /** A device keeps on disk what nobody has confirmed, so that a restart loses nothing. */
    private static final class Device {
        private final String name;
        private final long skewSeconds;
        private final List<Event> written = new ArrayList<>();
        private List<Event> unconfirmed = new ArrayList<>();
        private List<Link> copy = List.of();

        private Device(String name, long skewSeconds) {
            this.name = name;
            this.skewSeconds = skewSeconds;
        }

        private void write(Random random, int minute) {
            long seq = written.size() + 1L;
            Event event = AnEvent.of(DONE.get(random.nextInt(DONE.size())))
                    .at("j" + random.nextInt(6))
                    .id(name + "-" + seq)
                    .by(name, Instant.ofEpochSecond(1_772_000_000L + 60L * minute + skewSeconds))
                    .device(name, seq)
                    .event();
            written.add(event);
            unconfirmed.add(event);
        }

        /** Part of what is unconfirmed, some of it twice, in any order. */
        private List<Event> batch(Random random) {
            List<Event> batch = new ArrayList<>();
            for (Event event : unconfirmed) {
                for (int copies = random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(2); copies > 0; copies--) {
                    batch.add(event);
                }
            }
            Collections.shuffle(batch, random);
            return batch;
        }

        private void confirm(List<Link> chain) {
            copy = chain;
            Set<String> there = new HashSet<>();
            chain.forEach(link -> there.add(String.valueOf(link.event().id())));
            List<Event> left = new ArrayList<>(unconfirmed);
            left.removeIf(event -> there.contains(String.valueOf(event.id())));
            unconfirmed = left;
        }
    }

    private List<Link> chain = List.of();

    private static List<Event> events(List<Link> chain) {
        return chain.stream().map(Link::event).toList();
    }

    private Merged send(List<Event> batch) {
        Merged merged = Merge.of(events(chain), batch);
        chain = Chain.append(JOB, chain, merged.appended());
        return merged;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void threeDevices_endWithOneLedger(long seed) {
        Random random = new Random(seed);
        List<Device> devices = List.of(new Device("T1", 0), new Device("T2", -7200), new Device("T3", 90_000));
        for (int minute = 0; minute < 200; minute++) {
            Device device = devices.get(random.nextInt(3));
            if (random.nextInt(3) > 0) {
                device.write(random, minute);
            } else {
                List<Event> batch = device.batch(random);
                Merged merged = send(batch);
                assertThat(merged.refused()).as("seed " + seed).isEmpty();
                assertThat(merged.appended().size()
                                + merged.waiting().size()
                                + merged.known().size())
                        .as("seed " + seed)
                        .isEqualTo(batch.size());
                if (random.nextBoolean()) {
                    device.confirm(chain);
                }
            }
        }
        for (Device device : devices) {
            assertThat(send(new ArrayList<>(device.unconfirmed)).gaps())
                    .as("seed " + seed)
                    .isEmpty();
        }
        devices.forEach(device -> device.confirm(chain));
        check(devices, "seed " + seed);
    }

    private void check(List<Device> devices, String name) {
        assertThat(Chain.verify(JOB, chain)).as(name).isInstanceOf(Verdict.Whole.class);
        List<Event> ledger = events(chain);
        assertThat(ledger).as(name).doesNotHaveDuplicates();
        int written = 0;
        Promised nothing = Promised.of(List.of(), List.of(), Set.of(), java.util.Map.of());
        for (Device device : devices) {
            written += device.written.size();
            assertThat(device.unconfirmed).as(name).isEmpty();
            assertThat(ledger.stream()
                            .filter(event -> event.signature().device().equals(device.name))
                            .toList())
                    .as(name)
                    .isEqualTo(device.written);
            assertThat(Standing.of(nothing, events(device.copy)).joints())
                    .as(name)
                    .isEqualTo(Standing.of(nothing, ledger).joints());
        }
        assertThat(ledger).as(name).hasSize(written);
    }

    @Test
    void aGap_isSaid_andWhatComesAfterItWaits() {
        Event first = AnEvent.of(Did.UNDO).at("a").id("1").device("T", 1).event();
        Event fourth = AnEvent.of(Did.UNDO).at("d").id("4").device("T", 4).event();
        Merged merged = send(List.of(fourth, first));
        assertThat(merged.appended()).containsExactly(first);
        assertThat(merged.waiting()).containsExactly(fourth);
        assertThat(merged.gaps()).containsExactly(new Merged.Gap("T", 2, 3));
    }

    @Test
    void anotherEvent_underAnIdOrNumberThatIsTaken_isRefused() {
        Event first = AnEvent.of(Did.UNDO).at("a").id("1").device("T", 1).event();
        send(List.of(first));
        Event sameId = AnEvent.of(Did.UNDO).at("b").id("1").device("T", 2).event();
        Event sameNumber = AnEvent.of(Did.UNDO).at("b").id("2").device("T", 1).event();
        Merged merged = send(List.of(first, sameId, sameNumber));
        assertThat(merged.known()).containsExactly(first);
        assertThat(merged.refused())
                .containsExactlyInAnyOrder(
                        new Merged.Refused("2", "number 1 of device T is that of another event"),
                        new Merged.Refused("1", "its id is that of another event"));
    }
}
