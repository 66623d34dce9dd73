package putback.store.sheets;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.sheet.Access;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Items;
import putback.store.sheets.Node.Text;

/** The keys of one thing that hold several values. One value may stand without its list. */
record Lists(Fields fields) {
    /** Stands in for an item that is no id, so that the places of the others stay right. */
    private static final String NO_ID = "?";

    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (Node item : items(key)) {
            Text text = asText(item, key);
            String line = text == null ? null : fields.line(text, key);
            if (line != null) {
                texts.add(line);
            }
        }
        return texts;
    }

    /** Ids as written; whether they exist is judged where all of them are known. */
    List<String> ids(String key) {
        List<String> ids = new ArrayList<>();
        for (Node item : items(key)) {
            ids.add(id(item, key));
        }
        return ids;
    }

    /** Null when the key is not there. */
    @Nullable
    Access access(String key) {
        if (!fields.has(key)) {
            return null;
        }
        List<List<String>> clauses = new ArrayList<>();
        for (Node item : items(key)) {
            clauses.add(item instanceof Items any ? anyOf(any, key) : List.of(id(item, key)));
        }
        return new Access(clauses);
    }

    private List<String> anyOf(Items any, String key) {
        if (any.items().isEmpty()) {
            fields.fault(any.place(), key, "an empty list can never be met; name parts, any one of which will do");
        }
        List<String> ids = new ArrayList<>();
        for (Node item : any.items()) {
            ids.add(id(item, key));
        }
        return ids;
    }

    /** The maps of a list of maps. */
    List<Entries> maps(String key, String example) {
        List<Entries> maps = new ArrayList<>();
        for (Node item : items(key)) {
            if (item instanceof Entries map) {
                maps.add(map);
            } else {
                fields.fault(item.place(), key, "this is " + item.phrase() + "; write a map such as " + example);
            }
        }
        return maps;
    }

    List<Node> items(String key) {
        Node node = fields.node(key);
        return node == null ? List.of() : node instanceof Items items ? items.items() : List.of(node);
    }

    private String id(Node item, String key) {
        Text text = asText(item, key);
        String id = text == null ? null : fields.line(text, key);
        return id == null ? NO_ID : id;
    }

    @Nullable
    Text asText(Node item, String key) {
        if (item instanceof Text text) {
            return text;
        }
        Place place = item == fields.node(key) ? fields.at(key) : item.place();
        fields.fault(place, key, "this is " + item.phrase() + "; write a single value here");
        return null;
    }
}
