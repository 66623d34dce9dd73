package putback.store.backup;

import java.util.regex.Pattern;

/** What the entries of a backup are called. No other name is read. */
final class Names {
    static final String HEAD = "putback-backup";
    static final String SUMS = "SHA256SUMS";
    static final String BOOKS = "books/";
    static final String PHOTOS = "photos/";
    static final Pattern WORD = Pattern.compile("[a-z][a-z_]{0,40}");

    private static final String LINES = ".jsonl";
    private static final Pattern TABLE = Pattern.compile(BOOKS + "[a-z][a-z_]{0,40}\\.jsonl");
    private static final Pattern PHOTO = Pattern.compile(PHOTOS + "[0-9a-f]{2}/[0-9a-f]{62}");

    private Names() {}

    static String table(String table) {
        return BOOKS + table + LINES;
    }

    static String tableOf(String entry) {
        return entry.substring(BOOKS.length(), entry.length() - LINES.length());
    }

    static String photo(String hash) {
        return PHOTOS + hash.substring(0, 2) + "/" + hash.substring(2);
    }

    static boolean isTable(String entry) {
        return TABLE.matcher(entry).matches();
    }

    static boolean isPhoto(String entry) {
        return PHOTO.matcher(entry).matches();
    }

    static boolean isKnown(String entry) {
        return entry.equals(HEAD) || entry.equals(SUMS) || isTable(entry) || isPhoto(entry);
    }
}
