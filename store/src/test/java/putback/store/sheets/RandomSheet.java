package putback.store.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Writes sound sheets of every shape, for tests that need many. */
final class RandomSheet {
    private final Random random;
    private final boolean sides;
    private final int parts;
    private final StringBuilder text = new StringBuilder();

    private RandomSheet(long seed) {
        this.random = new Random(seed);
        this.sides = random.nextBoolean();
        this.parts = 2 + random.nextInt(8);
    }

    static String of(long seed) {
        return new RandomSheet(seed).write();
    }

    private String write() {
        text.append("sheet: s").append(random.nextInt(100)).append("\ntitle: Sheet\n");
        text.append(sides ? "sides: both\n" : one("", "sides: none\n"));
        text.append(one("", "lift: {points: sill, note: not on the beam}\n"));
        text.append(one("", "times: {spread: 0.3, common: 0,1}\n".replace("0,1", "\"0,1\"")));
        text.append(one("", "setups: {height: 3.0, side: 30 s, tool: 0.15}\n"));
        text.append("parts:\n");
        for (int i = 0; i < parts; i++) {
            text.append("  p").append(i).append(": {").append(some(partKeys())).append("}\n");
        }
        if (sides) {
            text.append(one("", "  left.p0: {price: 3}\n")).append(one("", "  right.p0: {minutes: 1}\n"));
        }
        text.append("joints:\n");
        int joints = 1 + random.nextInt(10);
        for (int i = 0; i < joints; i++) {
            List<String> keys = new ArrayList<>(List.of("joins: " + joined(), "kind: " + word(Words.KINDS.keySet())));
            text.append("  j").append(i).append(": {").append(String.join(", ", keys));
            String more = some(jointKeys(i));
            text.append(more.isEmpty() ? "" : ", ").append(more).append("}\n");
        }
        text.append(one("", "units:\n  set: {name: Set, parts: [p0, p1], price: 12.00}\n"));
        text.append(
                "follow-ups:\n  f0: {minutes: 5, critical: true, height: any}\n  f1: {name: F, follows: [f0], source: here}\n");
        text.append(
                one(
                        "",
                        "resorts:\n  heat: {minutes: 6, chance: 0.6, breaks: {chance: 0.1, price: 12.00}, scraps: 1, when: [stuck]}\n"));
        return text.toString();
    }

    private List<String> partKeys() {
        return List.of(
                one("name: Part", "name: \"Part, large\""),
                "minutes: " + one("0.6", "36 s"),
                "price: " + one("92.00", "\"92,00\""),
                "companions: " + one("[p1]", "p1"),
                "pair: true",
                "sold: " + word(Words.SOLD.keySet()),
                "prepare: [compare, 5]",
                "aside: {open: [j0], minutes: 0.5, aid: strap}",
                "tether: {kind: " + word(Words.TETHERS.keySet()) + ", " + one("free: 310 mm", "plunge: 2.5 cm") + "}",
                "stored-energy: " + word(Words.ENERGIES.keySet()),
                "life: {median: 120000 km, shape: 3.5}");
    }

    private List<String> jointKeys(int self) {
        String before = self == 0 ? "[]" : "[j" + random.nextInt(self) + "]";
        return List.of(
                "name: Joint",
                "count: " + (1 + random.nextInt(5)),
                "thread: " + one("M12x1.25", one("M8", "1/2-20 UNF")),
                "class: " + one("10.9", one("\"8.8\"", one("A2-70", "SAE 5"))),
                "hex: " + one("18 mm", "9/16 in"),
                "hold: " + one("{hex: 18 mm}", "{key: 6 mm}"),
                torque(),
                "condition: " + word(Words.CONDITIONS.keySet()),
                "critical: " + one("true", "false"),
                "tighten: " + word(Words.TIGHTEN.keySet()),
                "break-loose: on wheels",
                "loosen-before: " + before,
                "tighten-after: f0",
                "once: true",
                "behind: " + one("p0", one("[p0, [p1, p0]]", "[]")),
                "after: " + before,
                "ahead-of: " + (self == 0 ? before : "j0"),
                "before-opening: park it",
                "pivot: true",
                "reach-on-wheels: [p1]",
                "lets-go: [{part: p0, aid: " + one("strap}", "jack, then: let down}") + "]",
                "spoils: [p1]",
                "stays-shut: [rod-nut]",
                "look: [here, there]",
                "mark: scribe",
                "before-closing: [clean, dry]",
                "turn: " + word(Words.TURNS.keySet()),
                "with-new: {p0: {hex: 17 mm, torque: 55 N·m, source: leaflet}}",
                "brings: [f0, f1]",
                "tool: " + one("hand", "24 mm ring"),
                "station: " + word(Words.STATIONS.keySet()),
                "height: " + word(Words.OPENED.keySet()),
                "minutes: {open: 1.2, close: 90 s, spread: 0.25}",
                "resorts: [heat, cut]",
                "exposure: " + one("0.8", "1"));
    }

    private String torque() {
        return one(
                "torque: 98 N·m, source: a book, window: [92 N·m, 104 N·m]",
                one(
                        "torque: {torque: 60 ft-lb, angle: 90 deg}",
                        one("torque: snug", "torque: 12,5 Nm".replace("12,5", "12.5"))));
    }

    private String joined() {
        int one = random.nextInt(parts);
        int other = (one + 1 + random.nextInt(parts - 1)) % parts;
        return "[p" + one + ", " + one("body", "p" + other) + "]";
    }

    private String some(List<String> keys) {
        List<String> some = new ArrayList<>();
        for (String key : keys) {
            if (random.nextInt(4) == 0) {
                some.add(key);
            }
        }
        return String.join(", ", some);
    }

    private String word(Iterable<String> words) {
        List<String> list = new ArrayList<>();
        words.forEach(list::add);
        return list.get(random.nextInt(list.size()));
    }

    private String one(String first, String second) {
        return random.nextBoolean() ? first : second;
    }
}
