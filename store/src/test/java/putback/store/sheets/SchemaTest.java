package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The published schema and the reader say the same of a sheet, as far as a schema can say it. */
class SchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String TEXT = text("/putback/sheet.schema.json");
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(TEXT);

    @TempDir
    Path folder;

    @Test
    void the_schema_lists_the_keys_that_the_reader_knows() throws IOException {
        JsonNode schema = JSON.readTree(TEXT);
        for (Map.Entry<String, Set<String>> each : Keys.all().entrySet()) {
            JsonNode described = each.getKey().equals("sheet") ? schema : schema.at("/$defs/" + each.getKey());
            Set<String> keys = new TreeSet<>();
            described.get("properties").fieldNames().forEachRemaining(keys::add);
            assertThat(keys).as(each.getKey()).isEqualTo(new TreeSet<>(each.getValue()));
        }
    }

    @Test
    void the_schema_lists_the_words_that_the_reader_knows() throws IOException {
        JsonNode defs = JSON.readTree(TEXT).get("$defs");
        assertWords(defs, "/joint/properties/kind", Words.KINDS);
        assertWords(defs, "/joint/properties/station", Words.STATIONS);
        assertWords(defs, "/joint/properties/height", Words.OPENED);
        assertWords(defs, "/joint/properties/break-loose", Words.BREAK_LOOSE);
        assertWords(defs, "/fastener/properties/condition", Words.CONDITIONS);
        assertWords(defs, "/fastener/properties/tighten", Words.TIGHTEN);
        assertWords(defs, "/fastener/properties/turn", Words.TURNS);
        assertWords(defs, "/letting/properties/then", Words.THEN);
        assertWords(defs, "/tether/properties/kind", Words.TETHERS);
        assertWords(defs, "/part/properties/stored-energy", Words.ENERGIES);
        assertWords(defs, "/sold", Words.SOLD);
        assertWords(defs, "/follow-up/properties/height", Words.FOLLOWED);
    }

    /** A key that the reader only lists, and never looks at, would take anything. */
    @Test
    void every_key_is_looked_at() {
        String strange = "[[[]]]";
        everyKey(
                "sheet",
                Keys.SHEET,
                key -> "sheet: s\ntitle: t\nparts: {}\njoints: {}\n".replaceAll("(?m)^" + key + ":.*\n", "") + key
                        + ": [[[]]]\n");
        everyKey("part", Keys.PART, key -> Sheets.SMALL.replace("wheel: {}", "wheel: {" + key + ": " + strange + "}"));
        everyKey(
                "joint",
                Keys.JOINT,
                key -> Sheets.SMALL.replace(
                        "nuts: {joins: [wheel, hub], kind: nut}", "nuts: {" + key + ": " + strange + "}"));
        everyKey(
                "fastener",
                Keys.FASTENER,
                key -> Sheets.SMALL.replace(
                        "kind: nut}", "kind: nut, with-new: {hub: {" + key + ": " + strange + "}}}"));
        everyKey("unit", Keys.UNIT, key -> Sheets.SMALL + "units: {set: {" + key + ": " + strange + "}}\n");
        everyKey(
                "follow-up", Keys.FOLLOW_UP, key -> Sheets.SMALL + "follow-ups: {f: {" + key + ": " + strange + "}}\n");
        everyKey("resort", Keys.RESORT, key -> Sheets.SMALL + "resorts: {r: {" + key + ": " + strange + "}}\n");
        everyKey("lift", Keys.LIFT, key -> Sheets.SMALL + "lift: {" + key + ": " + strange + "}\n");
        everyKey("times", Keys.TIMES, key -> Sheets.SMALL + "times: {" + key + ": " + strange + "}\n");
        everyKey("setups", Keys.SETUPS, key -> Sheets.SMALL + "setups: {" + key + ": " + strange + "}\n");
        for (Map.Entry<String, Set<String>> nested : Map.of(
                        "aside", Keys.ASIDE, "tether", Keys.TETHER, "life", Keys.LIFE)
                .entrySet()) {
            everyKey(
                    nested.getKey(),
                    nested.getValue(),
                    key -> Sheets.SMALL.replace(
                            "wheel: {}", "wheel: {" + nested.getKey() + ": {" + key + ": " + strange + "}}"));
        }
        for (Map.Entry<String, Set<String>> nested : Map.of(
                        "hold", Keys.HOLD, "torque", Keys.TORQUE, "minutes", Keys.MINUTES, "lets-go", Keys.LETS_GO)
                .entrySet()) {
            everyKey(
                    nested.getKey(),
                    nested.getValue(),
                    key -> Sheets.SMALL.replace(
                            "kind: nut}", "kind: nut, " + nested.getKey() + ": {" + key + ": " + strange + "}}"));
        }
        everyKey(
                "breaks",
                Keys.BREAKS,
                key -> Sheets.SMALL + "resorts: {r: {minutes: 1, chance: 1, breaks: {" + key + ": " + strange
                        + "}}}\n");
    }

    private void everyKey(String what, Set<String> keys, java.util.function.UnaryOperator<String> sheet) {
        for (String key : keys) {
            assertThat(Sheets.faults(Sheets.read(folder, sheet.apply(key))))
                    .as("%s of %s", key, what)
                    .anySatisfy(fault -> assertThat(fault).contains("this is ").doesNotContain("is not a key"));
        }
    }

    @Test
    void the_sheet_with_every_key_passes_both() {
        agreeThatItIsSound(Sheets.everything());
    }

    @Test
    void small_sheets_pass_both() {
        agreeThatItIsSound(Sheets.SMALL);
        agreeThatItIsSound(Sheets.SIDED);
        agreeThatItIsSound(
                Sheets.SIDED.replace("wheel: {}", "wheel: {price: 3}\n  body: {}\n  left.wheel: {price: null}"));
    }

    @Test
    void every_stock_sheet_passes_both() {
        for (String id : SheetReader.stockIds()) {
            String yaml = text("/" + Stock.resource(id));
            assertThat(complaints(yaml)).as(id).isEmpty();
            assertThat(SheetReader.stock(id)).as(id).isInstanceOf(Read.Sheet.class);
        }
    }

    @Test
    void many_random_sheets_pass_both() {
        for (long seed = 1; seed <= 500; seed++) {
            String yaml = RandomSheet.of(seed);
            assertThat(complaints(yaml)).as("seed %d\n%s", seed, yaml).isEmpty();
            Read read = Sheets.read(folder, yaml);
            assertThat(read).as("seed %d\n%s\n%s", seed, yaml, read).isInstanceOf(Read.Sheet.class);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "nam: x",
                "name: [x]",
                "name: {a: b}",
                "minutes: -1",
                "minutes: soon",
                "minutes: 5 mm",
                "minutes: true",
                "price: -1",
                "price: dear",
                "price: [1]",
                "shared: yes",
                "shared: 1",
                "shared: \"true\"",
                "pair: [true]",
                "sold: pair",
                "companions: {a: b}",
                "companions: [[hub]]",
                "prepare: {a: b}",
                "aside: []",
                "aside: {opens: [nuts]}",
                "tether: hose",
                "tether: {free: 3 mm}",
                "tether: {kind: rope}",
                "tether: {kind: hose, free: 3}",
                "tether: {kind: hose, free: 3 kg}",
                "stored-energy: fun",
                "life: {median: 5 km}",
                "life: {median: 5 kg, shape: 2}",
                "life: 5 km"
            })
    void what_is_wrong_in_a_part_is_refused_by_both(String keys) {
        agreeThatItIsWrong(Sheets.SMALL.replace("wheel: {}", "wheel: {" + keys + "}"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "kindly: bolt",
                "count: 0",
                "count: 2.5",
                "count: many",
                "thread: 12x1",
                "thread: [M12]",
                "class: 11.9",
                "class: SAE 6",
                "hex: 18",
                "hex: 18 kg",
                "hex: big",
                "hold: {}",
                "hold: {hex: 1 mm, key: 2 mm}",
                "hold: 18 mm",
                "torque: 98",
                "torque: 12 mm",
                "torque: 90 furlong",
                "torque: NaN",
                "torque: {angle: 90 deg}",
                "torque: {torque: 5 N·m, angle: 9 mm}",
                "torque: [5 N·m]",
                "window: [1 N·m]",
                "window: 5 N·m",
                "source: [x]",
                "condition: wet",
                "critical: 1",
                "tighten: any",
                "break-loose: raised",
                "once: often",
                "behind: {a: b}",
                "behind: [[]]",
                "behind: [[[hub]]]",
                "behind: [Hub]",
                "reach-on-wheels: {}",
                "after: {a: b}",
                "lets-go: [hub]",
                "lets-go: [{part: hub}]",
                "lets-go: [{part: hub, aid: jack, then: drop}]",
                "with-new: [hub]",
                "with-new: {hub: {kind: nut}}",
                "with-new: {hub: {hex: 5}}",
                "station: under",
                "height: ride height",
                "minutes: 5",
                "minutes: {opened: 5}",
                "minutes: {open: -1}",
                "minutes: {spread: 4}",
                "exposure: 2",
                "exposure: -0.1",
                "pivot: maybe",
                "turn: left",
                "resorts: [[a]]",
                "brings: {a: b}",
                "look: {a: b}"
            })
    void what_is_wrong_in_a_joint_is_refused_by_both(String keys) {
        agreeThatItIsWrong(Sheets.SMALL.replace("kind: nut}", "kind: nut, " + keys + "}"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sides: maybe",
                "lift: sill",
                "lift: {point: x}",
                "times: {spread: x}",
                "times: {spread: 4}",
                "setups: {height: -1}",
                "setups: {hight: 1}",
                "units: [set]",
                "units: {set: {}}",
                "units: {set: {parts: []}}",
                "units: {Set: {parts: [hub]}}",
                "follow-ups: {f: {minutes: -3}}",
                "follow-ups: {left.f: {}}",
                "follow-ups: {f: {height: low}}",
                "resorts: {heat: {minutes: 5}}",
                "resorts: {heat: {minutes: 5, chance: 2}}",
                "resorts: {heat: {minutes: 5, chance: 1, breaks: 3}}",
                "tiems: {}",
                "base: {a: b}"
            })
    void what_is_wrong_at_the_top_is_refused_by_both(String line) {
        agreeThatItIsWrong(Sheets.SMALL + line + "\n");
    }

    @Test
    void what_is_missing_is_missed_by_both() {
        for (String gone : List.of("sheet: small\n", "title: Small\n", "joins: [wheel, hub], ", ", kind: nut")) {
            agreeThatItIsWrong(Sheets.SMALL.replace(gone, ""));
        }
        agreeThatItIsWrong(Sheets.SMALL.replace("[wheel, hub]", "[wheel]"));
        agreeThatItIsWrong(Sheets.SMALL.replace("wheel: {}", "wheel: 5"));
        agreeThatItIsWrong(Sheets.SMALL.replace("wheel: {}", "wheel:"));
        agreeThatItIsWrong(Sheets.SMALL.replace("wheel: {}", "wheel: {}\n  Cap: {}"));
        agreeThatItIsWrong("sheet: s\ntitle: t\nparts: []\njoints: {}\n");
        agreeThatItIsWrong("sheet: Small\ntitle: t\nparts: {}\njoints: {}\n");
    }

    private void agreeThatItIsSound(String yaml) {
        assertThat(complaints(yaml)).as(yaml).isEmpty();
        Read read = Sheets.read(folder, yaml);
        assertThat(read).as("%s\n%s", yaml, read).isInstanceOf(Read.Sheet.class);
    }

    private void agreeThatItIsWrong(String yaml) {
        assertThat(complaints(yaml)).as("the schema on %s", yaml).isNotEmpty();
        assertThat(Sheets.read(folder, yaml)).as("the reader on %s", yaml).isInstanceOf(Read.Faulty.class);
    }

    private static List<String> complaints(String yaml) {
        Object loaded = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        List<String> complaints = new ArrayList<>();
        SCHEMA.validate(JSON.<JsonNode>valueToTree(loaded)).forEach(error -> complaints.add(error.toString()));
        return complaints;
    }

    private static void assertWords(JsonNode defs, String pointer, Map<String, ?> words) {
        Set<String> listed = new TreeSet<>();
        defs.at(pointer).get("enum").forEach(word -> {
            if (!word.isNull()) {
                listed.add(word.asText());
            }
        });
        assertThat(listed).as(pointer).isEqualTo(new TreeSet<>(words.keySet()));
    }

    private static String text(String resource) {
        try (InputStream stream = SchemaTest.class.getResourceAsStream(resource)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
