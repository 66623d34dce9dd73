package putback.store.sheets;

import putback.sheet.Side;

/** How ids are spelt. */
final class Ids {
    private static final int LONGEST = 64;

    private Ids() {}

    /** Lower case letters, digits, and hyphens between them. */
    static boolean isId(String text) {
        if (text.isEmpty() || text.length() > LONGEST || text.charAt(0) == '-' || text.endsWith("-")) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!(c >= 'a' && c <= 'z') && !(c >= '0' && c <= '9') && c != '-') {
                return false;
            }
        }
        return true;
    }

    /** The side in front of an id, or {@link Side#NONE}. */
    static Side sideOf(String id) {
        return id.startsWith(Side.LEFT.prefix())
                ? Side.LEFT
                : id.startsWith(Side.RIGHT.prefix()) ? Side.RIGHT : Side.NONE;
    }

    /** The id without a side in front of it. */
    static String plain(String id) {
        return id.substring(sideOf(id).prefix().length());
    }
}
