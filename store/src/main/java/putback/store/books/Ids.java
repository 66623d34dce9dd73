package putback.store.books;

import java.security.SecureRandom;
import java.time.Clock;

/** Ids that sort by time and that no two nodes make alike: 48 bits of milliseconds, 80 of chance. */
final class Ids {
    private static final String DIGITS = "0123456789abcdefghjkmnpqrstvwxyz";
    private static final int TIME_DIGITS = 10;
    private static final int LENGTH = 26;

    private final SecureRandom random = new SecureRandom();
    private final Clock clock;

    Ids(Clock clock) {
        this.clock = clock;
    }

    String next() {
        char[] id = new char[LENGTH];
        long time = clock.millis();
        for (int i = TIME_DIGITS - 1; i >= 0; i--) {
            id[i] = DIGITS.charAt((int) (time & 31));
            time >>>= 5;
        }
        for (int i = TIME_DIGITS; i < LENGTH; i++) {
            id[i] = DIGITS.charAt(random.nextInt(32));
        }
        return new String(id);
    }
}
