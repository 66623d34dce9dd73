package putback.store.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Items;
import putback.store.sheets.Node.Text;

/**
 * Composes the plain part of YAML that sheets are written in: maps, lists and scalars on one line. It gives the very nodes
 * that {@link Composer} gives, in a fifth of the time of a cold start, or nothing at the first thing that is not plain;
 * then the full reader reads the text from its beginning. It never judges: every fault comes from the full reader.
 */
final class PlainYaml {
    private static final int DEEPEST = 30;
    private static final int OUTSIDE = -1;

    private final PlainScan scan;

    private PlainYaml(PlainScan scan) {
        this.scan = scan;
    }

    /** Null when the text is not plain. */
    static @Nullable Entries compose(String file, String text) {
        try {
            return new PlainYaml(new PlainScan(file, text)).document();
        } catch (PlainScan.NotPlain notPlain) {
            return null;
        }
    }

    private Entries document() {
        PlainScan.require(scan.next() == 0);
        Entries top = scan.peek() == '{' ? flowMap(OUTSIDE, 1) : mapping(0, 1);
        PlainScan.require(scan.next() < 0);
        return top;
    }

    private Entries mapping(int indent, int depth) {
        PlainScan.require(depth < DEEPEST);
        Place place = scan.here();
        Map<String, Entry> byKey = new LinkedHashMap<>();
        int next = indent;
        while (next == indent && !scan.isItem()) {
            PlainScan.require(scan.isKey());
            Text key = scan.key();
            scan.expect(':');
            put(byKey, key, value(indent, depth));
            next = scan.next();
        }
        PlainScan.require(next <= indent);
        return new Entries(place, byKey);
    }

    private static void put(Map<String, Entry> byKey, Text key, Node value) {
        PlainScan.require(byKey.put(key.text(), new Entry(key, value)) == null);
    }

    /** What stands after the colon of a key: on its line, or indented below it. */
    private Node value(int indent, int depth) {
        Place none = scan.here();
        if (!scan.isLineDone()) {
            return onLine(indent, depth);
        }
        int next = scan.next();
        if (next >= indent && scan.isItem()) {
            return sequence(next, depth + 1);
        }
        return next > indent ? mapping(next, depth + 1) : new Text(none, "", false);
    }

    private Items sequence(int indent, int depth) {
        PlainScan.require(depth < DEEPEST);
        Place place = scan.here();
        List<Node> items = new ArrayList<>();
        int next = indent;
        while (next == indent && scan.isItem()) {
            scan.step();
            PlainScan.require(!scan.isLineDone() && !scan.isItem());
            items.add(scan.isKey() ? mapping(scan.next(), depth + 1) : onLine(indent, depth));
            next = scan.next();
        }
        PlainScan.require(next <= indent);
        return new Items(place, items);
    }

    private Node onLine(int indent, int depth) {
        char first = scan.peek();
        Node node = first == '{' || first == '['
                ? flow(indent, depth + 1)
                : first == '"' || first == '\'' ? scan.quoted() : scan.plain(false);
        PlainScan.require(scan.isLineDone());
        return node;
    }

    private Node flow(int indent, int depth) {
        PlainScan.require(depth < DEEPEST);
        return switch (scan.peek()) {
            case '{' -> flowMap(indent, depth);
            case '[' -> flowList(indent, depth);
            case '"', '\'' -> scan.quoted();
            default -> scan.plain(true);
        };
    }

    private Entries flowMap(int indent, int depth) {
        Place place = scan.here();
        Map<String, Entry> byKey = new LinkedHashMap<>();
        scan.step();
        boolean more = within(indent) != '}';
        while (more) {
            Text key = scan.key();
            scan.expect(':');
            PlainScan.require(scan.peek() == ' ' || scan.peek() == '\n');
            within(indent);
            put(byKey, key, flow(indent, depth + 1));
            more = isMore(indent, '}');
        }
        scan.expect('}');
        return new Entries(place, byKey);
    }

    private Items flowList(int indent, int depth) {
        Place place = scan.here();
        List<Node> items = new ArrayList<>();
        scan.step();
        boolean more = within(indent) != ']';
        while (more) {
            items.add(flow(indent, depth + 1));
            more = isMore(indent, ']');
        }
        scan.expect(']');
        return new Items(place, items);
    }

    /** Goes over a comma to the next member, or to the end of the collection. */
    private boolean isMore(int indent, char end) {
        if (within(indent) == end) {
            return false;
        }
        scan.expect(',');
        PlainScan.require(within(indent) != end);
        return true;
    }

    /** The next character of a collection, which may go on over lines that are indented further than its key. */
    private char within(int indent) {
        PlainScan.require(scan.next() > indent);
        return scan.peek();
    }
}
