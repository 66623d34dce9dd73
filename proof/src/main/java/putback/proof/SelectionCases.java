package putback.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import putback.sheet.Assembly;
import putback.sheet.Setups;
import putback.sheet.Station;

/** The least work to free a part where tasks wait for all of some and for any of others. */
final class SelectionCases {
    private static final String SOURCE =
            "Disassembly graphs after Ren et al. 2017 (P10) and Kalaycilar et al. 2016 (P22, P47); optima computed independently, not published";

    private SelectionCases() {}

    static void add(List<Case> cases, String name, Setups none) {
        String file = Files.text("planning/dlbp/" + name + ".yaml");
        Assembly assembly = tasks(file).assembly(none);
        MiniYaml.numbered(file, "min_total_time_to_free")
                .forEach((task, answer) -> cases.add(one(name, assembly, List.of(task), Entries.cost(answer))));
        for (Map<?, ?> answer : MiniYaml.listed(file, "min_total_time_to_free_several")) {
            List<Integer> targets = Entries.numbers(Entries.of(answer, "targets"));
            cases.add(one(name, assembly, targets, Entries.cost(answer)));
        }
    }

    private static Case one(String name, Assembly assembly, List<Integer> tasks, long expected) {
        String said = String.join(" and ", tasks.stream().map(String::valueOf).toList());
        return Case.exact(
                PlanningCases.ROOM,
                "free-" + name + "-" + said.replace(" and ", "-"),
                SOURCE,
                "file " + name + ".yaml, task " + said,
                "least total time to free it",
                expected,
                Answers.work(assembly, Benchwork.wanted(assembly, tasks)));
    }

    private static Benchwork tasks(String file) {
        Map<?, ?> time = (Map<?, ?>) MiniYaml.value(file, "time");
        Map<?, ?> and = (Map<?, ?>) MiniYaml.value(file, "and_pred");
        Map<?, ?> or = (Map<?, ?>) MiniYaml.value(file, "or_pred");
        Benchwork tasks = new Benchwork();
        time.forEach((id, minutes) -> {
            List<List<Integer>> needs = new ArrayList<>();
            for (int one : Entries.numbers(and.get(id))) {
                needs.add(List.of(one));
            }
            List<Integer> either = Entries.numbers(or.get(id));
            if (!either.isEmpty()) {
                needs.add(either);
            }
            tasks.task(Entries.number(id), Entries.number(minutes), needs, List.of(), "hand", Station.UNDERNEATH);
        });
        return tasks;
    }
}
