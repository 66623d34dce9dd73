package putback.store.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Composes one YAML document into nodes that know their place. Depth and size are counted, aliases with all that they
 * stand for, so that neither a deep nor a multiplying document costs more than a large honest one.
 */
final class Composer {
    static final int DEEPEST = 50;
    static final int MOST_NODES = 20_000;

    private final String file;
    private final Form form;
    private final Faults faults;
    private final Iterator<Event> events;
    private final Map<Anchor, Anchored> anchors = new HashMap<>();
    private int nodes;

    private record Anchored(Node node, int size) {}

    /** Ends the reading of a document that goes beyond what a sheet may be. */
    private static final class Beyond extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient Place place;

        Beyond(Place place, String message) {
            super(message, null, false, false);
            this.place = place;
        }
    }

    private Composer(String file, String text, Form form, Faults faults) {
        this.file = file;
        this.form = form;
        this.faults = faults;
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(form.mostBytes())
                .build();
        this.events = new Parse(settings).parseString(text).iterator();
    }

    /** The map at the top of a sheet; null, with the fault told, when there is none. */
    static Node.@Nullable Entries compose(String file, String text, Faults faults) {
        return compose(file, text, Form.SHEET, faults);
    }

    /** The map at the top of a document of some form; null, with the fault told, when there is none. */
    static Node.@Nullable Entries compose(String file, String text, Form form, Faults faults) {
        try {
            return new Composer(file, text, form, faults).document();
        } catch (Beyond beyond) {
            faults.add(beyond.place, String.valueOf(beyond.getMessage()));
        } catch (MarkedYamlEngineException bad) {
            Mark mark = bad.getProblemMark().or(bad::getContextMark).orElse(null);
            faults.add(
                    mark == null ? Place.startOf(file) : place(file, mark),
                    YamlWords.of(bad.getProblem() == null ? "" : bad.getProblem()));
        } catch (YamlEngineException bad) {
            faults.add(Place.startOf(file), YamlWords.of(String.valueOf(bad.getMessage())));
        }
        return null;
    }

    private Node.@Nullable Entries document() {
        events.next();
        Event start = events.next();
        if (start.getEventId() == Event.ID.StreamEnd) {
            faults.add(Place.startOf(file), empty());
            return null;
        }
        Node top = node(events.next(), 1);
        events.next();
        Event after = events.next();
        if (after.getEventId() != Event.ID.StreamEnd) {
            faults.add(place(after), "a second document begins here; a file holds one " + form.thing());
            return null;
        }
        if (top instanceof Node.Entries entries) {
            return entries;
        }
        faults.add(
                top.place(),
                Node.isNothing(top)
                        ? empty()
                        : "a " + form.thing() + " is a map with keys such as " + form.needs() + "; this is "
                                + top.phrase());
        return null;
    }

    private String empty() {
        return "the " + form.thing() + " is empty; it needs " + form.needs();
    }

    private Node node(Event event, int depth) {
        count(event, 1);
        if (depth > DEEPEST) {
            throw new Beyond(
                    place(event), "nested deeper than " + DEEPEST + " levels, which no " + form.thing() + " needs");
        }
        if (event instanceof AliasEvent alias) {
            return aliased(alias);
        }
        int before = nodes;
        Node node = event instanceof ScalarEvent scalar
                ? new Node.Text(place(event), scalar.getValue(), scalar.getScalarStyle() != ScalarStyle.PLAIN)
                : event.getEventId() == Event.ID.SequenceStart ? items(event, depth) : entries(event, depth);
        tag(event);
        if (event instanceof NodeEvent anchored) {
            anchored.getAnchor().ifPresent(name -> anchors.put(name, new Anchored(node, nodes - before + 1)));
        }
        return node;
    }

    private void tag(Event event) {
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
        tag.ifPresent(name -> faults.add(
                place(event), "tags such as " + name + " are not used in a " + form.thing() + "; remove it"));
    }

    private Node aliased(AliasEvent event) {
        Anchored found = anchors.get(event.getAlias());
        if (found == null) {
            throw new Beyond(
                    place(event),
                    "*" + event.getAlias() + " stands for nothing yet; &" + event.getAlias()
                            + " has to be complete before it");
        }
        count(event, found.size());
        return found.node();
    }

    private Node items(Event start, int depth) {
        List<Node> items = new ArrayList<>();
        for (Event event = events.next(); event.getEventId() != Event.ID.SequenceEnd; event = events.next()) {
            items.add(node(event, depth + 1));
        }
        return new Node.Items(place(start), items);
    }

    private Node entries(Event start, int depth) {
        Map<String, Node.Entry> byKey = new LinkedHashMap<>();
        for (Event event = events.next(); event.getEventId() != Event.ID.MappingEnd; event = events.next()) {
            Node key = node(event, depth + 1);
            Node value = node(events.next(), depth + 1);
            if (!(key instanceof Node.Text text)) {
                faults.add(key.place(), "a key is a single word; this is " + key.phrase());
                continue;
            }
            Node.Entry first = byKey.putIfAbsent(text.text(), new Node.Entry(text, value));
            if (first != null) {
                faults.add(
                        key.place(),
                        text.text() + " is written twice; it stands first at line "
                                + first.key().place().line() + ", column "
                                + first.key().place().column()
                                + ": keep one of them");
            }
        }
        return new Node.Entries(place(start), byKey);
    }

    private void count(Event event, int more) {
        nodes = Math.addExact(nodes, more);
        if (nodes > form.mostNodes()) {
            throw new Beyond(
                    place(event),
                    "more than " + form.mostNodes() + " values, aliases counted with all they stand for, which no "
                            + form.thing() + " needs");
        }
    }

    private Place place(Event event) {
        return event.getStartMark().map(mark -> place(file, mark)).orElse(Place.startOf(file));
    }

    private static Place place(String file, Mark mark) {
        return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
    }
}
