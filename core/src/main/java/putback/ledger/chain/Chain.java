package putback.ledger.chain;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import putback.ledger.Event;

/**
 * The events of one job, each sealed to the one before: hash = SHA-256 (hash before, 32 bytes, then the canonical bytes of
 * the event). The start is the SHA-256 of {@code putback-ledger-1}, a line end and the job's own name, so that the ledger
 * of one car cannot pass for that of another. Source: FIPS 180-4.
 */
public final class Chain {
    private static final String START = "putback-ledger-1\n";

    private Chain() {}

    /** The hash before the first event. */
    public static String start(String job) {
        return HexFormat.of().formatHex(sha256().digest((START + job).getBytes(StandardCharsets.UTF_8)));
    }

    /** The hash of an event after another one. */
    public static String hash(String previous, Event event) {
        MessageDigest digest = sha256();
        digest.update(HexFormat.of().parseHex(previous));
        digest.update(Canonical.bytes(event));
        return HexFormat.of().formatHex(digest.digest());
    }

    /** The chain with these events at its end; the chain that is there stays as it is. */
    public static List<Link> append(String job, List<Link> chain, List<Event> events) {
        List<Link> longer = new ArrayList<>(chain);
        String previous =
                chain.isEmpty() ? start(job) : chain.get(chain.size() - 1).hash();
        for (Event event : events) {
            String hash = hash(previous, event);
            longer.add(new Link(longer.size() + 1, event, previous, hash));
            previous = hash;
        }
        return List.copyOf(longer);
    }

    /** Whether every link holds; else the first that does not, and what differs there. */
    public static Verdict verify(String job, List<Link> chain) {
        String previous = start(job);
        for (int i = 0; i < chain.size(); i++) {
            Link link = chain.get(i);
            String fault = fault(link, i + 1, previous);
            if (!fault.isEmpty()) {
                return new Verdict.Broken(i + 1, link.event().id(), fault);
            }
            previous = link.hash();
        }
        return new Verdict.Whole(chain.size(), previous);
    }

    /**
     * The same, and whether it still ends where somebody noted that it did: a chain alone does not show that its last
     * links are gone.
     *
     * @param number of the link that was noted
     * @param hash that was noted
     */
    public static Verdict verify(String job, List<Link> chain, int number, String hash) {
        Verdict verdict = verify(job, chain);
        if (verdict instanceof Verdict.Broken) {
            return verdict;
        }
        if (number > chain.size()) {
            return new Verdict.Broken(
                    chain.size() + 1,
                    null,
                    "the chain ends after link " + chain.size() + ", and link " + number
                            + " was noted: its end is gone");
        }
        String there = number == 0 ? start(job) : chain.get(number - 1).hash();
        return there.equals(hash)
                ? verdict
                : new Verdict.Broken(
                        number,
                        number == 0 ? null : chain.get(number - 1).event().id(),
                        "its hash is not the one that was noted: it was written anew");
    }

    private static String fault(Link link, int number, String previous) {
        if (link.number() != number) {
            return "it is numbered " + link.number() + " where " + number + " is due: a link is gone, moved or put in";
        }
        if (!link.previous().equals(previous)) {
            return number == 1
                    ? "it does not follow the start of this job's chain: it belongs to another job, or what came first is gone"
                    : "it does not follow link " + (number - 1)
                            + ": one of the two was taken out, moved, put in or sealed anew";
        }
        return link.hash().equals(hash(previous, link.event()))
                ? ""
                : "its content is not what was sealed: " + link.event().did().word() + " was changed, or its hash was";
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }
}
