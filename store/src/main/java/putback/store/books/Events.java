package putback.store.books;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.mapper.RowMapper;
import putback.ledger.Event;
import putback.ledger.chain.Chain;
import putback.ledger.chain.Link;
import putback.ledger.chain.Verdict;
import putback.store.database.StoreFailure;
import putback.store.sheets.EventLines;
import putback.store.sheets.EventsRead;

/**
 * What was done to the cars: of each job a chain of events that only grows. Keep one of these for each books: who appends
 * through the same one shares commits with those who wait at the same time.
 */
public final class Events {
    static final String SELECT = "select number, id, device, seq, body, hash, received_at from event where job = :job ";
    static final RowMapper<KeptEvent> ROW = (row, context) -> new KeptEvent(
            row.getInt("number"),
            row.getString("id"),
            row.getString("device"),
            row.getLong("seq"),
            row.getString("body"),
            row.getString("hash"),
            row.getString("received_at"));

    private final Books books;
    private final GroupCommit<Sent, Received> commits;

    /** What one device sends for one job. */
    record Sent(String job, List<Event> events) {}

    public Events(Books books) {
        this.books = books;
        commits = new GroupCommit<>(new Appending(books)::together);
    }

    /**
     * Puts what a device sends at the end of the job's chain, each event once, those of one device in the order of its own
     * numbers. Returns when it is on disk.
     */
    public Received append(String job, List<Event> batch) {
        return commits.write(new Sent(job, List.copyOf(batch)));
    }

    /** Of one job those after a number, in the order of the chain; 0 for all. */
    public List<KeptEvent> since(String job, int number) {
        return books.read(handle -> handle.createQuery(SELECT
                        + "and number > :number and exists (select 1 from job where id = :job and garage = :garage)"
                        + " order by number")
                .bind("job", job)
                .bind("garage", books.garage())
                .bind("number", number)
                .map(ROW)
                .list());
    }

    /** Those of some jobs in which something was said to stay open on purpose, put right since or not. */
    public Set<String> carrying(List<String> jobs) {
        return having(jobs, "%\"do\":\"carry\"%");
    }

    /** Those among some jobs in which something broke, whatever became of it. */
    public Set<String> breaking(List<String> jobs) {
        return having(jobs, "%\"do\":\"break\"%");
    }

    /** Those among some jobs in which the work was stopped at a fixing, whatever became of it. */
    public Set<String> stopping(List<String> jobs) {
        return having(jobs, "%\"reason\":\"Stopped (%");
    }

    private Set<String> having(List<String> jobs, String like) {
        if (jobs.isEmpty()) {
            return Set.of();
        }
        return books.read(
                handle -> handle.createQuery("select distinct job from event where job in (<jobs>) and body like :like")
                        .bindList("jobs", jobs)
                        .bind("like", like)
                        .mapTo(String.class)
                        .set());
    }

    /** All of one job, in the order of the chain. */
    public List<Event> all(String job) {
        List<Event> events = new ArrayList<>();
        for (KeptEvent kept : since(job, 0)) {
            events.add(read(job, kept));
        }
        return events;
    }

    static Event read(String job, KeptEvent kept) {
        if (EventLines.read("event " + kept.number(), kept.body()) instanceof EventsRead.Sound sound
                && sound.events().size() == 1) {
            return sound.events().get(0);
        }
        throw new StoreFailure("event " + kept.number() + " of job " + job
                + " cannot be read. Maybe look with putback verify, and restore a backup.");
    }

    /** Whether the chain of a job is whole; else the first link that does not hold, and why. */
    public Verdict verifyChain(String job) {
        List<Link> links = new ArrayList<>();
        String previous = Chain.start(job);
        for (KeptEvent kept : since(job, 0)) {
            EventsRead read = EventLines.read("event " + kept.number(), kept.body());
            if (!(read instanceof EventsRead.Sound sound) || sound.events().size() != 1) {
                return before(job, links, kept, "what is kept of it is no event any more");
            }
            Event event = sound.events().get(0);
            if (!isSignedSo(kept, event)) {
                return before(job, links, kept, "its id, device or running number is not the one that was sealed");
            }
            links.add(new Link(kept.number(), event, previous, kept.hash()));
            previous = kept.hash();
        }
        return Chain.verify(job, links);
    }

    /** An earlier fault comes first. */
    private static Verdict before(String job, List<Link> links, KeptEvent kept, String because) {
        Verdict earlier = Chain.verify(job, links);
        return earlier instanceof Verdict.Broken ? earlier : new Verdict.Broken(links.size() + 1, kept.id(), because);
    }

    private static boolean isSignedSo(KeptEvent kept, Event event) {
        Long seq = event.signature().seq();
        return kept.id().equals(event.id())
                && kept.device().equals(event.signature().device())
                && seq != null
                && kept.seq() == seq;
    }

    /** The jobs of this garage whose chains are not whole, the oldest first. */
    public List<BrokenChain> verifyChains() {
        List<String> jobs = books.read(handle -> handle.createQuery("select id from job where garage = :garage"
                        + " and exists (select 1 from event where event.job = job.id) order by opened_at, id")
                .bind("garage", books.garage())
                .mapTo(String.class)
                .list());
        List<BrokenChain> broken = new ArrayList<>();
        for (String job : jobs) {
            if (verifyChain(job) instanceof Verdict.Broken fault) {
                broken.add(new BrokenChain(job, fault));
            }
        }
        return broken;
    }
}
