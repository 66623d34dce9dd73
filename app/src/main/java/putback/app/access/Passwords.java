package putback.app.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.concurrent.Semaphore;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Passwords as they are kept: Argon2id with a salt of their own.
 *
 * <p>Source: OWASP Password Storage Cheat Sheet, section Argon2id: 19 MiB, 2 passes, 1 lane.
 */
public final class Passwords {
    /** Source: NIST SP 800-63B, section 5.1.1.2. */
    public static final int SHORTEST = 8;

    private static final int LONGEST = 1000;
    private static final int KIBIBYTES = 19 * 1024;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final String START = "$argon2id$v=19$m=" + KIBIBYTES + ",t=" + PASSES + ",p=" + LANES + "$";
    private static final SecureRandom RANDOM = new SecureRandom();

    /** Each takes 19 MiB while it is worked out. */
    private static final Semaphore AT_ONCE = new Semaphore(2);

    /** Of no password: compared with where there is nobody, so that the answer takes as long. */
    private static final String NOBODY = hash("nobody", new byte[SALT_BYTES]);

    private Passwords() {}

    /** Why a password cannot be used; empty when it can. */
    public static String fault(String typed) {
        int letters = typed.codePointCount(0, typed.length());
        if (letters < SHORTEST) {
            return "The password has " + letters + " characters; it needs " + SHORTEST
                    + " at least. Maybe a few words in a row.";
        }
        return letters > LONGEST
                ? "The password has " + letters + " characters; at most " + LONGEST + " are taken."
                : "";
    }

    /** As it may be kept. */
    public static String hash(String typed) {
        byte[] salt = new byte[SALT_BYTES];
        RANDOM.nextBytes(salt);
        return hash(typed, salt);
    }

    /**
     * Whether what was typed is the password.
     *
     * @param kept its hash; empty for nobody's, which never fits but takes as long
     */
    public static boolean fits(String kept, String typed) {
        String hash = kept.startsWith(START) ? kept : NOBODY;
        if (typed.length() > 2 * LONGEST) {
            return false;
        }
        String salt = hash.substring(START.length(), hash.lastIndexOf('$'));
        String tried = hash(typed, Base64.getDecoder().decode(salt));
        boolean same = MessageDigest.isEqual(
                tried.getBytes(StandardCharsets.US_ASCII), hash.getBytes(StandardCharsets.US_ASCII));
        return same && kept.startsWith(START);
    }

    private static String hash(String typed, byte[] salt) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(KIBIBYTES)
                .withIterations(PASSES)
                .withParallelism(LANES)
                .withSalt(salt)
                .build());
        byte[] hash = new byte[HASH_BYTES];
        AT_ONCE.acquireUninterruptibly();
        try {
            generator.generateBytes(typed.getBytes(StandardCharsets.UTF_8), hash);
        } finally {
            AT_ONCE.release();
        }
        Base64.Encoder text = Base64.getEncoder().withoutPadding();
        return START + text.encodeToString(salt) + "$" + text.encodeToString(hash);
    }
}
