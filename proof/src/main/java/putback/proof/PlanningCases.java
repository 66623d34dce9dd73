package putback.proof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.plan.order.Course;
import putback.plan.order.CourseSearch;
import putback.plan.order.Courses;
import putback.plan.order.Order;
import putback.plan.order.Ordering;
import putback.plan.selection.Selected;
import putback.plan.selection.Selector;
import putback.plan.selection.Wanted;
import putback.quantity.Minutes;
import putback.sheet.Assembly;
import putback.sheet.Setups;
import putback.sheet.Station;

/** Instances of planning with known optimum. */
final class PlanningCases {
    private static final String ROOM = "plan";
    private static final String TSPLIB = "TSPLIB, sequential ordering problems (Reinelt 1991)";
    private static final int STATES = 400_000;
    private static final Setups NONE = new Setups(Minutes.ZERO, Minutes.ZERO, Minutes.ZERO, Minutes.ZERO);
    private static final Setups TOOL_5_PLACE_8 =
            new Setups(Minutes.ZERO, Minutes.ZERO, Minutes.of("8"), Minutes.of("5"));

    private PlanningCases() {}

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        ordering(cases);
        for (String name : List.of("P10", "P10r", "P22", "P47")) {
            selection(cases, name);
        }
        for (String name : List.of("syn-973", "syn-194")) {
            together(cases, name);
        }
        return cases;
    }

    private static void ordering(List<Case> cases) {
        Map<String, Long> optimum = new LinkedHashMap<>();
        optimum.put("ESC07", 2125L);
        optimum.put("ESC12", 1675L);
        optimum.put("ESC25", 1681L);
        optimum.put("br17.10", 55L);
        optimum.forEach((name, published) -> {
            Order order = Ordering.least(SopFile.parse(Files.text("planning/sop/" + name + ".sop")), STATES);
            String at = "file " + name + ".sop, optimum of the TSPLIB list";
            cases.add(Case.exact(
                    ROOM,
                    "sop-" + name,
                    TSPLIB,
                    at,
                    "least cost of an order",
                    published,
                    BigDecimal.valueOf(order.cost())));
            cases.add(Case.exact(
                    ROOM,
                    "sop-" + name + "-bound",
                    TSPLIB,
                    at,
                    "lower bound reached",
                    published,
                    BigDecimal.valueOf(order.bound())));
        });
    }

    private static void selection(List<Case> cases, String name) {
        String file = Files.text("planning/dlbp/" + name + ".yaml");
        Assembly assembly = precedence(file).assembly(NONE);
        MiniYaml.numbered(file, "min_total_time_to_free").forEach((task, answer) -> {
            long published = Long.parseLong(String.valueOf(of(answer, "cost")));
            cases.add(Case.exact(
                    ROOM,
                    "free-" + name + "-" + task,
                    "graph after Kalaycilar et al. 2016 or Ren et al. 2017; optimum computed independently, not published",
                    "file " + name + ".yaml, task " + task,
                    "least total time to free the part",
                    published,
                    least(assembly, Benchwork.wanted(assembly, List.of(task)))));
        });
    }

    private static Benchwork precedence(String file) {
        Map<?, ?> time = (Map<?, ?>) MiniYaml.value(file, "time");
        Map<?, ?> and = (Map<?, ?>) MiniYaml.value(file, "and_pred");
        Map<?, ?> or = (Map<?, ?>) MiniYaml.value(file, "or_pred");
        Benchwork tasks = new Benchwork();
        time.forEach((id, minutes) -> {
            List<List<Integer>> needs = new ArrayList<>();
            for (int one : numbers(and.get(id))) {
                needs.add(List.of(one));
            }
            List<Integer> either = numbers(or.get(id));
            if (!either.isEmpty()) {
                needs.add(either);
            }
            tasks.task(number(id), number(minutes), needs, List.of(), "hand", Station.UNDERNEATH);
        });
        return tasks;
    }

    /** Set and order together, against the independent optimum; and the set alone. */
    private static void together(List<Case> cases, String name) {
        String file = Files.text("planning/andor/" + name + ".yaml");
        int target = number(MiniYaml.value(file, "target"));
        Map<Integer, Map<?, ?>> ops = MiniYaml.numbered(file, "ops");
        String source = "synthetic AND/OR instance, solved by brute force independently of this program";
        String at = "file " + name + ".yaml";
        Assembly assembly = operations(ops).assembly(TOOL_5_PLACE_8);
        Wanted wanted = Benchwork.wanted(assembly, List.of(target));
        long set = cost(MiniYaml.value(file, "min_operation_time_ignoring_setups"));
        cases.add(Case.exact(
                ROOM, name + "-set", source, at, "least work of a set, set-ups ignored", set, least(assembly, wanted)));
        long joint = cost(MiniYaml.value(file, "joint_optimum"));
        cases.add(Case.exact(
                ROOM,
                name + "-together",
                source,
                at,
                "least work and set-up together",
                joint,
                course(assembly, wanted)));
    }

    /** Task 0 stands for the start: at place 0 with no tool in hand yet. */
    private static Benchwork operations(Map<Integer, Map<?, ?>> ops) {
        Benchwork tasks = new Benchwork();
        tasks.task(0, 0, List.of(), List.of(), "none in hand yet", Station.WHEEL_WELL);
        ops.forEach((id, op) -> {
            List<List<Integer>> needs = new ArrayList<>();
            for (Object clause : (List<?>) of(op, "needs")) {
                needs.add(numbers(clause));
            }
            String tool = String.valueOf(of(op, "tool"));
            String place = String.valueOf(of(op, "pos"));
            tasks.task(
                    id,
                    number(of(op, "time")),
                    needs,
                    List.of(0),
                    tool.equals("none") ? "hand" : tool,
                    Station.values()[number(place.substring(1))]);
        });
        return tasks;
    }

    private static BigDecimal least(Assembly assembly, Wanted wanted) {
        if (Selector.least(assembly, wanted) instanceof Selected.Sound sound) {
            return sound.selection().work().decimal();
        }
        return BigDecimal.valueOf(-1);
    }

    private static BigDecimal course(Assembly assembly, Wanted wanted) {
        if (CourseSearch.best(assembly, wanted) instanceof Courses.Found found) {
            Course course = found.course();
            return course.selection().work().plus(course.setup()).decimal();
        }
        return BigDecimal.valueOf(-1);
    }

    private static long cost(Object answer) {
        return Long.parseLong(String.valueOf(of((Map<?, ?>) answer, "cost")));
    }

    private static List<Integer> numbers(@Nullable Object list) {
        return list == null
                ? List.of()
                : ((List<?>) list).stream().map(PlanningCases::number).toList();
    }

    private static Object of(Map<?, ?> entry, String key) {
        Object value = entry.get(key);
        if (value == null) {
            throw new IllegalStateException("a data file has an entry without " + key + ": " + entry);
        }
        return value;
    }

    private static int number(Object word) {
        return Integer.parseInt(String.valueOf(word));
    }
}
