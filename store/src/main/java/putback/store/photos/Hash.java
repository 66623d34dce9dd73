package putback.store.photos;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, as 64 hexadecimal digits. */
public final class Hash {
    private static final int LENGTH = 64;

    private Hash() {}

    /** Of some bytes. */
    public static String of(byte[] bytes) {
        return text(start().digest(bytes));
    }

    /** For bytes that come piece by piece. */
    public static MessageDigest start() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** A digest as text. */
    public static String text(byte[] digest) {
        return HexFormat.of().formatHex(digest);
    }

    /** Whether it is one: no other word becomes the name of a file. */
    public static boolean isOne(String hash) {
        if (hash.length() != LENGTH) {
            return false;
        }
        for (int i = 0; i < LENGTH; i++) {
            char c = hash.charAt(i);
            if (!(c >= '0' && c <= '9') && !(c >= 'a' && c <= 'f')) {
                return false;
            }
        }
        return true;
    }
}
