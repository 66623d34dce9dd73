package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.app.json.JsonTree;

/** Whole jobs with things left out, done twice, done wrongly and in another order: what is owed is what is owed. */
class OwingRandomTest {
    private static final int STREAMS = 60;
    private static final List<String> HEIGHTS = List.of("raised", "ride height", "on wheels");

    @TempDir
    Path folder;

    private List<Map<?, ?>> steps = List.of();
    private Random random = new Random(0);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "front-strut|strut|1",
                "front-strut|arm|2",
                "front-strut|track-rod-end|3",
                "front-strut|bearing|4",
                "front-brake|pads,disc|5",
                "front-brake|hose|6",
                "twist-beam|bush|7",
                "twist-beam|spring,damper|8",
                "demo-van|spring,damper,pads|9"
            })
    void whatIsOwed_isWhatTheRulesSay(String sheet, String renew, long seed) throws IOException {
        Path plan = folder.resolve("plan.json");
        String json = Said.by("plan", sheet, "--renew", renew, "--side", "left", "--json")
                .out();
        Files.writeString(plan, json);
        steps = new ArrayList<>();
        for (Object step : (List<?>)
                Objects.requireNonNull(((Map<?, ?>) Objects.requireNonNull(JsonTree.read(json))).get("steps"))) {
            steps.add((Map<?, ?>) step);
        }
        int settled = 0;
        for (int stream = 0; stream < STREAMS; stream++) {
            random = new Random(1000 * seed + stream);
            List<Map<String, Object>> events = wholeJob();
            for (int faults = stream == 0 ? 0 : random.nextInt(5); faults > 0; faults--) {
                spoil(events);
            }
            List<String> lines = events.stream().map(OwingRandomTest::line).toList();
            String name = sheet + " " + renew + ", seed " + (1000 * seed + stream);
            List<String> owes = owed(plan, lines, name);
            assertThat(owes).as(name).isEqualTo(OwingOracle.owes(steps, parsed(lines)));
            settled += owes.isEmpty() ? 1 : 0;
        }
        assertThat(settled).as("settled of " + STREAMS).isBetween(1, STREAMS - 15);
    }

    private List<String> owed(Path plan, List<String> lines, String name) throws IOException {
        Path ledger = folder.resolve("events.jsonl");
        Files.write(ledger, lines);
        Said said = Said.by("owing", "--plan", plan.toString(), "--ledger", ledger.toString(), "--json");
        assertThat(said.err()).as(name).isEmpty();
        List<String> owes = new ArrayList<>();
        Map<?, ?> all = (Map<?, ?>) Objects.requireNonNull(JsonTree.read(said.out()));
        for (Object one : (List<?>) Objects.requireNonNull(all.get("owes"))) {
            Map<?, ?> debt = (Map<?, ?>) one;
            Object subject = debt.get("joint") != null ? debt.get("joint") : debt.get("part");
            owes.add(debt.get("kind") + " " + (subject == null ? debt.get("followUp") : subject));
        }
        owes.sort(null);
        return owes;
    }

    private List<Map<?, ?>> parsed(List<String> lines) {
        List<Map<?, ?>> events = new ArrayList<>();
        lines.forEach(line -> events.add((Map<?, ?>) JsonTree.read(line)));
        return events;
    }

    private List<Map<String, Object>> wholeJob() {
        List<Map<String, Object>> events = new ArrayList<>();
        for (Map<?, ?> step : steps) {
            if (step.get("do").equals("start") && "new".equals(step.get("fasteners"))) {
                events.add(event("replace-fastener", events.size(), step, List.of("joint")));
            }
            List<String> keys = List.of("joint", "part", "aid", "followUp", "height", "torqueNm", "angleDeg");
            events.add(event(String.valueOf(step.get("do")), events.size(), step, keys));
        }
        return events;
    }

    private static Map<String, Object> event(String word, int number, Map<?, ?> step, List<String> keys) {
        Map<String, Object> event = new LinkedHashMap<>();
        event.put("id", "e" + number);
        event.put("at", time(5 * number));
        event.put("by", word.equals("second-look") ? "K" : "M");
        event.put("do", word);
        for (String key : keys) {
            Object value = step.get(key);
            if (value != null) {
                event.put(key, value);
            }
        }
        return event;
    }

    private static String time(int minute) {
        return "2026-03-02T%02d:%02d:00Z".formatted(6 + minute / 60 % 18, minute % 60);
    }

    private static String line(Map<String, Object> event) {
        StringBuilder line = new StringBuilder("{");
        for (Map.Entry<String, Object> entry : event.entrySet()) {
            Object value = entry.getValue();
            line.append(line.length() > 1 ? "," : "")
                    .append('"')
                    .append(entry.getKey())
                    .append("\":");
            line.append(value instanceof String ? "\"" + value + "\"" : value);
        }
        return line.append('}').toString();
    }

    private void spoil(List<Map<String, Object>> events) {
        int at = random.nextInt(events.size());
        Map<String, Object> event = events.get(at);
        switch (random.nextInt(14)) {
            case 0, 1 -> events.remove(at);
            case 2 -> events.add(event);
            case 3 ->
                events.add(random.nextInt(events.size()), fresh(event, "device", "T" + random.nextInt(1_000_000)));
            case 4 -> events.add(at, events.remove(random.nextInt(events.size())));
            case 5 -> ofTightening(events, "torqueNm", true);
            case 6 -> ofTightening(events, random.nextBoolean() ? "torqueNm" : "angleDeg", false);
            case 7 -> event.remove("height");
            case 8 -> replace(events, at, "height", HEIGHTS.get(random.nextInt(3)));
            case 9 -> lookedBySame(events);
            case 10 -> events.add(random.nextInt(events.size()), odd("break", random.nextBoolean() ? "joint" : "part"));
            case 11 ->
                events.add(odd("carry", List.of("joint", "part", "followUp").get(random.nextInt(3))));
            default ->
                events.add(
                        random.nextInt(events.size() + 1),
                        odd(
                                List.of("undo", "break-loose", "replace-fastener", "tighten", "start")
                                        .get(random.nextInt(5)),
                                "joint"));
        }
    }

    private static Map<String, Object> fresh(Map<String, Object> event, String key, Object value) {
        Map<String, Object> copy = new LinkedHashMap<>(event);
        copy.put("id", copy.get("id") + "." + key);
        copy.put(key, value);
        return copy;
    }

    private static void replace(List<Map<String, Object>> events, int at, String key, Object value) {
        events.set(at, fresh(events.get(at), key, value));
    }

    private void ofTightening(List<Map<String, Object>> events, String key, boolean wrong) {
        List<Integer> places = places(events, "tighten");
        if (places.isEmpty()) {
            return;
        }
        int at = places.get(random.nextInt(places.size()));
        Map<String, Object> copy = new LinkedHashMap<>(events.get(at));
        copy.put("id", copy.get("id") + "." + key);
        if (wrong) {
            copy.put(key, 1 + random.nextInt(200));
        } else {
            copy.remove(key);
            if (random.nextInt(3) == 0) {
                copy.put("untorqued", "no wrench reaches it");
            }
        }
        events.set(at, copy);
    }

    private static List<Integer> places(List<Map<String, Object>> events, String word) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            if (word.equals(events.get(i).get("do"))) {
                places.add(i);
            }
        }
        return places;
    }

    private void lookedBySame(List<Map<String, Object>> events) {
        List<Integer> places = places(events, "second-look");
        if (places.isEmpty()) {
            return;
        }
        int at = places.get(random.nextInt(places.size()));
        Map<String, Object> copy = fresh(events.get(at), "by", "M");
        copy.put("at", time(5 * random.nextInt(events.size())));
        events.set(at, copy);
    }

    /** Something that the plan does not foresee, at a joint or part of the plan or at one that it does not know. */
    private Map<String, Object> odd(String word, String key) {
        Map<String, Object> event = new LinkedHashMap<>();
        event.put("id", "o" + random.nextInt(1_000_000));
        event.put("by", random.nextBoolean() ? "M" : "K");
        event.put("do", word);
        List<Object> known = steps.stream()
                .map(step -> (Object) step.get(key))
                .filter(Objects::nonNull)
                .toList();
        event.put(
                key,
                known.isEmpty() || random.nextInt(4) == 0
                        ? "left.stray-" + key
                        : known.get(random.nextInt(known.size())));
        if (word.equals("carry")) {
            event.put("reason", "waits for a part");
        }
        return event;
    }
}
