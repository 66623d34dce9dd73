package putback.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import putback.quantity.Minutes;
import putback.sheet.Assembly;
import putback.sheet.Setups;
import putback.sheet.Station;

/** The fewest changes of tool and direction; a direction stands where a sheet has a station. */
final class StaplerCases {
    private static final String SOURCE =
            "Stapler with 18 operations, from a public data set; optima computed independently, not published";
    private static final Minutes ONE = Minutes.of("1");

    private final String file = Files.text("planning/andor/stapler-18.yaml");
    private final Map<?, ?> tools = (Map<?, ?>) MiniYaml.value(file, "tool");
    private final Map<?, ?> directions = (Map<?, ?>) MiniYaml.value(file, "direction");
    private final List<?> pairs = (List<?>) MiniYaml.value(file, "before_after");
    private final Map<Object, Station> stations = new TreeMap<>();

    private StaplerCases() {
        for (Object direction : directions.values()) {
            if (!stations.containsKey(direction)) {
                stations.put(direction, Station.values()[stations.size()]);
            }
        }
    }

    static void add(List<Case> cases) {
        StaplerCases stapler = new StaplerCases();
        List<Integer> all = stapler.tools.keySet().stream().map(Entries::number).toList();
        Setups both = new Setups(Minutes.ZERO, Minutes.ZERO, ONE, ONE);
        cases.add(stapler.whole("changes of tool", all, tool(), "min_tool_changes_only"));
        cases.add(stapler.whole("changes of direction", all, direction(), "min_direction_changes_only"));
        cases.add(stapler.whole("changes of tool and direction", all, both, "min_tool_plus_direction_changes"));
        MiniYaml.numbered(stapler.file, "selective").forEach((task, answer) -> {
            Assembly assembly = stapler.tasks(all).assembly(both);
            cases.add(Case.exact(
                    PlanningCases.ROOM,
                    "stapler-" + task,
                    SOURCE,
                    "file stapler-18.yaml, operation " + task,
                    "fewest changes of tool and direction on the way to it",
                    Entries.number(Entries.of(answer, "min_tool_plus_direction")),
                    Answers.workAndSetup(assembly, Benchwork.wanted(assembly, List.of(task)))));
        });
    }

    private static Setups tool() {
        return new Setups(Minutes.ZERO, Minutes.ZERO, Minutes.ZERO, ONE);
    }

    private static Setups direction() {
        return new Setups(Minutes.ZERO, Minutes.ZERO, ONE, Minutes.ZERO);
    }

    private Case whole(String quantity, List<Integer> all, Setups setups, String key) {
        Assembly assembly = tasks(all).assembly(setups);
        return Case.exact(
                PlanningCases.ROOM,
                "stapler-" + quantity.replace(' ', '-'),
                SOURCE,
                "file stapler-18.yaml, all operations",
                "fewest " + quantity,
                Entries.number(MiniYaml.value(file, key)),
                Answers.workAndSetup(assembly, Benchwork.wanted(assembly, all)));
    }

    private Benchwork tasks(Collection<Integer> ids) {
        Benchwork tasks = new Benchwork();
        for (int id : ids) {
            String key = String.valueOf(id);
            Station station = stations.get(Entries.of(directions, key));
            tasks.task(
                    id,
                    0,
                    List.of(),
                    before(id),
                    "tool " + Entries.of(tools, key),
                    station == null ? Station.UNDERNEATH : station);
        }
        return tasks;
    }

    private List<Integer> before(int id) {
        List<Integer> before = new ArrayList<>();
        for (Object pair : pairs) {
            List<Integer> both = Entries.numbers(pair);
            if (both.get(1) == id) {
                before.add(both.get(0));
            }
        }
        return before;
    }
}
