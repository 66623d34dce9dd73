package putback.ledger.chain;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.ledger.AnEvent;
import putback.ledger.Did;
import putback.ledger.Event;

class ChainTest {
    private static final String JOB = "job 7";

    private final List<Link> chain = Chain.append(
            JOB,
            List.of(),
            List.of(
                    AnEvent.of(Did.UNDO).at("left.wheel-nuts").id("a").event(),
                    AnEvent.of(Did.START).at("left.wheel-nuts").id("b").event(),
                    AnEvent.of(Did.TIGHTEN)
                            .at("left.wheel-nuts")
                            .id("c")
                            .torque(110)
                            .event(),
                    AnEvent.of(Did.NOTE).reason("schön").id("d").event()));

    private static String text(Event event) {
        return new String(Canonical.bytes(event), StandardCharsets.UTF_8);
    }

    @Test
    void anEvent_isTheseBytes() {
        Event event = AnEvent.of(Did.TIGHTEN)
                .at("left.wheel-nuts")
                .torque(97.50)
                .wrench("W2")
                .id("01J")
                .by("Zoë", Instant.parse("2026-03-02T09:14:05.25Z"))
                .device("T1", 12)
                .event();
        assertThat(text(event)).isEqualTo("""
                        putback-event-1
                        id:3:01J
                        at:20:1772442845.250000000
                        by:4:Zoë
                        device:2:T1
                        seq:2:12
                        do:7:tighten
                        joint:15:left.wheel-nuts
                        torqueNm:4:97.5
                        wrench:2:W2
                        """);
    }

    @Test
    void numbers_haveNoExponentAndNoZerosAtTheirEnd() {
        assertThat(text(AnEvent.of(Did.TIGHTEN).torque(100).event())).contains("torqueNm:3:100\n");
        assertThat(text(AnEvent.of(Did.TIGHTEN).torque(0).event())).contains("torqueNm:1:0\n");
        assertThat(text(AnEvent.of(Did.TIGHTEN).torque(0.00012).event())).contains("torqueNm:7:0.00012\n");
    }

    @Test
    void noValue_canPassForAnotherLine() {
        Event one = AnEvent.of(Did.NOTE).reason("x\ncorrects:1:a").event();
        Event other = AnEvent.of(Did.NOTE).reason("x").corrects("a").event();
        assertThat(text(one)).isNotEqualTo(text(other));
    }

    /** Reckoned with sha256sum over the same bytes. */
    @Test
    void theFirstHash_canBeReckonedByHand() {
        assertThat(Chain.start("job 7")).isEqualTo("9847b9ae6dc503cf045454178655681b17a61dc7dcaa3d278ace71d5cd4c4a9a");
        assertThat(chain.get(0).hash()).isEqualTo("c2c750700f3379e4880060f672b708f58f79ccbebe187ae8c49de4594753bf89");
    }

    @Test
    void aWholeChain_holds() {
        assertThat(Chain.verify(JOB, chain))
                .isEqualTo(new Verdict.Whole(4, chain.get(3).hash()));
        assertThat(Chain.verify(JOB, List.of())).isEqualTo(new Verdict.Whole(0, Chain.start(JOB)));
    }

    @Test
    void whatIsChanged_isNamed() {
        List<Link> changed = new ArrayList<>(chain);
        Event other = AnEvent.of(Did.TIGHTEN)
                .at("left.wheel-nuts")
                .id("c")
                .torque(111)
                .event();
        changed.set(2, new Link(3, other, chain.get(2).previous(), chain.get(2).hash()));
        assertThat(Chain.verify(JOB, changed)).isInstanceOfSatisfying(Verdict.Broken.class, broken -> {
            assertThat(broken.number()).isEqualTo(3);
            assertThat(broken.id()).isEqualTo("c");
            assertThat(broken.differs()).contains("content is not what was sealed");
        });
    }

    @Test
    void whatIsTakenOut_movedOrOfAnotherJob_isNamed() {
        List<Link> gone = new ArrayList<>(chain);
        gone.remove(1);
        assertThat(Chain.verify(JOB, gone))
                .isEqualTo(
                        new Verdict.Broken(2, "c", "it is numbered 3 where 2 is due: a link is gone, moved or put in"));
        gone.set(
                1,
                new Link(
                        2,
                        gone.get(1).event(),
                        gone.get(1).previous(),
                        gone.get(1).hash()));
        assertThat(((Verdict.Broken) Chain.verify(JOB, gone)).differs()).contains("does not follow link 1");
        assertThat(((Verdict.Broken) Chain.verify("job 8", chain)).differs()).contains("belongs to another job");
    }

    @Test
    void aChainCutShort_orWrittenAnew_showsAgainstWhatWasNoted() {
        String noted = chain.get(3).hash();
        assertThat(Chain.verify(JOB, chain, 4, noted)).isInstanceOf(Verdict.Whole.class);
        assertThat(Chain.verify(JOB, chain.subList(0, 3))).isInstanceOf(Verdict.Whole.class);
        assertThat(((Verdict.Broken) Chain.verify(JOB, chain.subList(0, 3), 4, noted)).differs())
                .contains("its end is gone");
        List<Link> anew = Chain.append(
                JOB, chain.subList(0, 3), List.of(AnEvent.of(Did.NOTE).id("d").event()));
        assertThat(((Verdict.Broken) Chain.verify(JOB, anew, 4, noted)).differs())
                .contains("written anew");
    }
}
