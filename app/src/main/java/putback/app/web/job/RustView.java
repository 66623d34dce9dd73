package putback.app.web.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.text.Headline;
import putback.app.web.planning.PriceView;
import putback.labour.seized.RustGrade;
import putback.plan.Plan;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.store.books.Scope;

/**
 * The fixings that a job opens and that rust can hold, to be graded as one walks round the car.
 *
 * @param usual grade of the whole car
 * @param sides heads of the columns: left and right, or one for a sheet without sides
 */
public record RustView(JobFile file, String renewed, String usual, List<String> sides, List<Row> rows) {
    public RustView {
        sides = List.copyOf(sides);
        rows = List.copyOf(rows);
    }

    /** A fixing, with a cell for each side on which the job opens it. */
    public record Row(String name, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** The cell below a head; null where the job does not open it there. */
        public @Nullable Cell on(String side) {
            for (Cell cell : cells) {
                if (cell.side().equals(side)) {
                    return cell;
                }
            }
            return null;
        }
    }

    /**
     * One of them on one side.
     *
     * @param grade its own; empty for as the whole car
     */
    public record Cell(String side, String joint, String label, String grade) {}

    /** What a grade looks and feels like. */
    public static List<String> grades() {
        return PriceView.grades();
    }

    static RustView of(JobFile file, Plan plan) {
        Scope scope = file.job().scope();
        Map<String, String> grades = Rust.byPlace(scope);
        Map<String, List<Cell>> rows = new LinkedHashMap<>();
        List<String> sides = new ArrayList<>();
        for (Joint joint : plan.assembly().joints()) {
            if (plan.selection().open().contains(joint.index()) && RustGrade.canSeize(joint)) {
                String side = joint.side() == Side.NONE ? "both" : joint.side().word();
                if (!sides.contains(side)) {
                    sides.add(side);
                }
                rows.computeIfAbsent(joint.entry().name(), name -> new ArrayList<>())
                        .add(new Cell(side, joint.id(), joint.name(), own(grades, joint)));
            }
        }
        List<Row> all = new ArrayList<>();
        rows.forEach((name, cells) -> all.add(new Row(name, cells)));
        sides.sort(Comparator.comparing(List.of("left", "right", "both")::indexOf));
        String usual = grades.get("");
        return new RustView(file, Headline.renewed(plan), usual == null ? "0" : usual, sides, all);
    }

    private static String own(Map<String, String> grades, Joint joint) {
        for (String place : List.of(joint.id(), joint.entry().id(), joint.side().word())) {
            String grade = grades.get(place);
            if (grade != null) {
                return grade;
            }
        }
        return "";
    }
}
