package putback.app.access;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** How often one may try to sign in: each name and each address a few times a minute. */
public final class Tries {
    /** What may fail within a minute. */
    public static final int MOST = 5;

    private static final long WINDOW = Duration.ofMinutes(1).toMillis();
    private static final int LONGEST = 60;
    private static final int MANY = 10_000;

    private final Clock clock;
    private final Map<String, Deque<Long>> failed = new HashMap<>();

    public Tries(Clock clock) {
        this.clock = clock;
    }

    /**
     * Takes one try for a name and an address, before the password is looked at: many at once do not get more.
     *
     * @return false when there is none left for now
     */
    public synchronized boolean take(String name, String address) {
        long now = clock.millis();
        if (failed.size() > MANY) {
            failed.values().removeIf(times -> left(times, now) == MOST);
        }
        if (left(times(address(address)), now) <= 0 || left(times(name(name)), now) <= 0) {
            return false;
        }
        times(address(address)).addLast(now);
        times(name(name)).addLast(now);
        return true;
    }

    /** What was taken did not fail. */
    public synchronized void giveBack(String name, String address) {
        times(address(address)).pollLast();
        times(name(name)).pollLast();
    }

    private Deque<Long> times(String key) {
        return failed.computeIfAbsent(key, unknown -> new ArrayDeque<>());
    }

    private static int left(Deque<Long> times, long now) {
        times.removeIf(time -> now - time >= WINDOW || time > now);
        return MOST - times.size();
    }

    private static String name(String name) {
        String lower = name.strip().toLowerCase(Locale.ROOT);
        return "name " + lower.substring(0, Math.min(LONGEST, lower.length()));
    }

    private static String address(String address) {
        return "address " + address;
    }
}
