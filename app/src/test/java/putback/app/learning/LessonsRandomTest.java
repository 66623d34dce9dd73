package putback.app.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.labour.price.Observed;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Signature;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/**
 * Jobs made up with known minutes: two people, each at joints of their own in any order, with pauses, notes, wrong ticks,
 * seized fasteners and long gaps. What the ledger teaches has to be exactly what was made up.
 */
class LessonsRandomTest {
    private static final Assembly CAR = ((Read.Sheet) SheetReader.stock("front-strut")).assembly();
    private static final int JOBS = 400;
    private static final long HUNDREDTH = 600;

    private final List<List<Event>> streams = new ArrayList<>();
    private final List<Observed> expected = new ArrayList<>();
    private Random random = new Random(0);
    private List<Event> stream = new ArrayList<>();
    private String who = "";
    private long now;

    @Test
    void aMadeUpJob_teachesExactlyItsOwnFigures() {
        for (int i = 0; i < JOBS; i++) {
            long seed = 20_260_302L + i;
            make(seed);
            assertThat(Lessons.of(shuffled(), CAR, RustGrades.all(RustGrade.SCALED)))
                    .as("seed " + seed)
                    .containsExactlyInAnyOrderElementsOf(expected);
        }
    }

    private void make(long seed) {
        random = new Random(seed);
        streams.clear();
        expected.clear();
        List<Joint> all = new ArrayList<>(CAR.joints());
        Collections.shuffle(all, random);
        for (int hand = 0; hand < 2; hand++) {
            who = hand == 0 ? "Mara" : "Teo";
            stream = new ArrayList<>();
            streams.add(stream);
            now = random.nextInt(3_600_000);
            write(Did.HEIGHT, "", "", "");
            List<Joint> own = all.subList(hand * 6, hand * 6 + 1 + random.nextInt(6));
            own.forEach(this::open);
            List<Joint> back = new ArrayList<>(own);
            Collections.shuffle(back, random);
            back.forEach(this::close);
        }
    }

    private void open(Joint joint) {
        Spent spent = new Spent();
        int jams = RustGrade.canSeize(joint) && random.nextInt(4) == 0 ? 1 : 0;
        if (random.nextInt(3) == 0) {
            step(Did.BREAK_LOOSE, joint, spent);
        }
        if (jams > 0) {
            jam(joint, spent);
        }
        step(Did.UNDO, joint, spent);
        took(joint, true, spent);
        if (RustGrade.canSeize(joint)) {
            int of = joint.fastener().count();
            expected.add(new Observed.Rusted(joint.entry().id(), RustGrade.SCALED, jams, of));
        }
    }

    private void jam(Joint joint, Spent spent) {
        spent.add(work());
        write(Did.NOTE, joint.id(), "Will not move (stuck)", "");
        int tries = 1 + random.nextInt(3);
        for (int i = 0; i < tries; i++) {
            boolean worked = i == tries - 1;
            String resort = List.of("penetrant", "rock", "heat").get(i);
            long took = work();
            write(Did.NOTE, joint.id(), "Will not move (stuck): tried " + resort + ", " + (worked ? "yes" : "no"), "");
            expected.add(new Observed.Tried(resort, worked, minutes(took)));
        }
    }

    private void close(Joint joint) {
        Spent spent = new Spent();
        if (joint.entry().kind().threaded() && random.nextInt(8) == 0) {
            step(Did.START, joint, new Spent());
            return;
        }
        step(Did.START, joint, spent);
        if (joint.entry().kind().threaded()) {
            step(Did.TIGHTEN, joint, spent);
        }
        took(joint, false, spent);
    }

    /** What was done of a step, until something made it unknown. */
    private static final class Spent {
        private long millis;
        private boolean known = true;

        void add(long more) {
            millis += more;
        }
    }

    private void took(Joint joint, boolean opening, Spent spent) {
        if (spent.known) {
            expected.add(new Observed.Took(joint.entry().id(), opening, minutes(spent.millis)));
        }
    }

    private void step(Did did, Joint joint, Spent spent) {
        switch (random.nextInt(9)) {
            case 0 -> {
                spent.add(work());
                write(Did.NOTE, joint.id(), "Interrupted: telephone", "");
                now += random.nextInt(50_000_000);
                write(Did.NOTE, "", "Went on", "");
            }
            case 1 -> {
                spent.add(work());
                write(Did.NOTE, joint.id(), "Found, soon: hose cracked", "");
            }
            case 2 -> {
                spent.add(work());
                String wrong = write(did, joint.id(), "", "");
                spent.add(work());
                write(Did.CORRECT, "", "ticked by mistake", wrong);
            }
            case 3 -> {
                now += Lessons.LONGEST.toMillis() + 1 + random.nextInt(9_000_000);
                spent.known = false;
            }
            default -> {}
        }
        spent.add(work());
        write(did, joint.id(), "", "");
    }

    /** Works for a while, in whole hundredths of a minute, longer than steps that are ticked together. */
    private long work() {
        long took = HUNDREDTH * (10 + random.nextInt(400));
        now += took;
        return took;
    }

    private static double minutes(long millis) {
        long hundredths = millis / HUNDREDTH;
        return hundredths / 100.0;
    }

    private String write(Did did, String joint, String words, String corrects) {
        String id = who + "-" + (stream.size() + 1);
        Signature signature = new Signature(id, Instant.ofEpochMilli(now), who, who + " tab", null);
        stream.add(new Event(
                signature,
                did,
                joint.isEmpty() ? null : joint,
                null,
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                words.isEmpty() ? null : words,
                corrects.isEmpty() ? null : corrects));
        return id;
    }

    /** Both people's events as the network happens to bring them; each one's own keep their order. */
    private List<Event> shuffled() {
        List<Event> ledger = new ArrayList<>();
        int[] next = new int[streams.size()];
        while (next[0] < streams.get(0).size() || next[1] < streams.get(1).size()) {
            int one = random.nextInt(2);
            if (next[one] < streams.get(one).size()) {
                ledger.add(streams.get(one).get(next[one]++));
            }
        }
        return ledger;
    }
}
