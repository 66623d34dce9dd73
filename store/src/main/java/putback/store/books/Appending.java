package putback.store.books;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import putback.ledger.Event;
import putback.ledger.chain.Chain;
import putback.ledger.chain.Merge;
import putback.ledger.chain.Merged;
import putback.store.books.Events.Sent;
import putback.store.database.Change;
import putback.store.database.PostgresDatabase;

/** Writes several batches in one transaction. Chains that were used lately are remembered, and looked at whether they grew. */
final class Appending {
    private static final int REMEMBERED = 100;

    private final Books books;
    private final Map<String, JobChain> known = new LinkedHashMap<>(REMEMBERED, 0.75f, true);

    Appending(Books books) {
        this.books = books;
    }

    /** Jobs are taken in the order of their ids, so that two nodes never wait for each other. */
    synchronized List<Received> together(List<Sent> batches) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < batches.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing(i -> batches.get(i).job()));
        Map<String, JobChain> chains = new HashMap<>();
        List<Received> answers = books.write(change -> {
            List<Received> all = new ArrayList<>(Collections.nCopies(batches.size(), new Received.NoSuchJob()));
            order.forEach(i -> all.set(i, append(change, batches.get(i), chains)));
            return all;
        });
        remember(chains);
        return answers;
    }

    private void remember(Map<String, JobChain> chains) {
        known.putAll(chains);
        while (known.size() > REMEMBERED) {
            known.remove(known.keySet().iterator().next());
        }
    }

    private Received append(Change change, Sent sent, Map<String, JobChain> chains) {
        if (!chains.containsKey(sent.job())) {
            if (!isThere(change.handle(), sent.job())) {
                return new Received.NoSuchJob();
            }
            chains.put(sent.job(), chain(change.handle(), sent.job()));
        }
        JobChain chain = chains.getOrDefault(sent.job(), JobChain.empty(sent.job()));
        Merged merged = Merge.of(chain.events(), sent.events());
        if (!merged.appended().isEmpty()) {
            String hash = insert(change, sent.job(), chain, merged.appended());
            chain = chain.with(merged.appended(), hash);
            chains.put(sent.job(), chain);
            change.tell("job:" + sent.job());
        }
        return new Received.Kept(merged, chain.events().size());
    }

    /** Where several nodes write, the row of the job is the lock of its chain. */
    private boolean isThere(Handle handle, String job) {
        String lock = books.database() instanceof PostgresDatabase ? " for update" : "";
        return handle.createQuery("select id from job where garage = :garage and id = :job" + lock)
                .bind("garage", books.garage())
                .bind("job", job)
                .mapTo(String.class)
                .findFirst()
                .isPresent();
    }

    private JobChain chain(Handle handle, String job) {
        JobChain chain = known.getOrDefault(job, JobChain.empty(job));
        int length = length(handle, job);
        if (length < chain.events().size()) {
            chain = JobChain.empty(job);
        }
        if (length == chain.events().size()) {
            return chain;
        }
        List<Event> more = new ArrayList<>();
        String hash = chain.hash();
        for (KeptEvent kept : handle.createQuery(Events.SELECT + "and number > :number order by number")
                .bind("job", job)
                .bind("number", chain.events().size())
                .map(Events.ROW)
                .list()) {
            more.add(Events.read(job, kept));
            hash = kept.hash();
        }
        return chain.with(more, hash);
    }

    private static int length(Handle handle, String job) {
        return handle.createQuery("select coalesce(max(number), 0) from event where job = :job")
                .bind("job", job)
                .mapTo(Integer.class)
                .one();
    }

    /** The hash of the last. */
    private String insert(Change change, String job, JobChain chain, List<Event> events) {
        String at = books.now();
        String hash = chain.hash();
        int number = chain.events().size();
        try (PreparedBatch rows = change.handle()
                .prepareBatch("insert into event (job, number, id, device, seq, body, hash, received_at)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)")) {
            for (Event event : events) {
                number++;
                hash = Chain.hash(hash, event);
                Long seq = event.signature().seq();
                rows.add(
                        job,
                        number,
                        event.id(),
                        event.signature().device(),
                        seq == null ? 0 : seq,
                        EventText.of(event),
                        hash,
                        at);
                FoundNote.keep(books, change, job, event);
            }
            rows.execute();
        }
        return hash;
    }
}
