package putback.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import putback.plan.selection.Wanted;
import putback.quantity.Minutes;
import putback.sheet.Assembly;
import putback.sheet.Setups;
import putback.sheet.Station;

/** What to open and in which order, chosen together and one after the other. */
final class TogetherCases {
    private static final String SOURCE =
            "Synthetic tasks with tools and places; solved by brute force independently of this program, not published";
    private static final Setups TOOL_5_PLACE_8 =
            new Setups(Minutes.ZERO, Minutes.ZERO, Minutes.of("8"), Minutes.of("5"));

    private TogetherCases() {}

    static void add(List<Case> cases, String name) {
        String file = Files.text("planning/andor/" + name + ".yaml");
        Map<Integer, Map<?, ?>> ops = MiniYaml.numbered(file, "ops");
        Assembly assembly = tasks(ops, ops.keySet()).assembly(TOOL_5_PLACE_8);
        Wanted wanted = Benchwork.wanted(assembly, List.of(Entries.number(MiniYaml.value(file, "target"))));
        Map<?, ?> alone = (Map<?, ?>) MiniYaml.value(file, "min_operation_time_ignoring_setups");
        long together = Entries.cost(MiniYaml.value(file, "joint_optimum"));
        List<Integer> set = Entries.numbers(Entries.of(alone, "set"));
        Assembly only = tasks(ops, set).assembly(TOOL_5_PLACE_8);
        cases.add(Case.exact(
                PlanningCases.ROOM,
                name + "-set",
                SOURCE,
                at(name),
                "least work of a set, set-ups ignored",
                Entries.cost(alone),
                Answers.work(assembly, wanted)));
        cases.add(Case.exact(
                PlanningCases.ROOM,
                name + "-set-in-order",
                SOURCE,
                at(name),
                "work and least set-up of that set",
                Entries.number(MiniYaml.value(file, "that_set_with_its_best_order_and_setups")),
                Answers.workAndSetup(only, Benchwork.wanted(only, set))));
        cases.add(Case.exact(
                PlanningCases.ROOM,
                name + "-together",
                SOURCE,
                at(name),
                "least work and set-up together",
                together,
                Answers.workAndSetup(assembly, wanted)));
        cases.add(Case.exact(
                PlanningCases.ROOM,
                name + "-together-bound",
                SOURCE,
                at(name),
                "work and set-up below which nothing is",
                together,
                Answers.bound(assembly, wanted)));
    }

    private static String at(String name) {
        return "file " + name + ".yaml";
    }

    /** Task 0 stands for the start: at place 0 with no tool in hand yet. */
    private static Benchwork tasks(Map<Integer, Map<?, ?>> ops, Collection<Integer> among) {
        Benchwork tasks = new Benchwork();
        tasks.task(0, 0, List.of(), List.of(), "none in hand yet", Station.WHEEL_WELL);
        ops.forEach((id, op) -> {
            if (among.contains(id)) {
                String tool = String.valueOf(Entries.of(op, "tool"));
                String place = String.valueOf(Entries.of(op, "pos"));
                tasks.task(
                        id,
                        Entries.number(Entries.of(op, "time")),
                        needs(op, among),
                        List.of(0),
                        tool.equals("none") ? "hand" : tool,
                        Station.values()[Entries.number(place.substring(1))]);
            }
        });
        return tasks;
    }

    private static List<List<Integer>> needs(Map<?, ?> op, Collection<Integer> among) {
        List<List<Integer>> needs = new ArrayList<>();
        for (Object clause : (List<?>) Entries.of(op, "needs")) {
            needs.add(Entries.numbers(clause).stream().filter(among::contains).toList());
        }
        return needs;
    }
}
