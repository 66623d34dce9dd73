package putback.proof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.quantity.Minutes;
import putback.sheet.Access;
import putback.sheet.Assembled;
import putback.sheet.Assembly;
import putback.sheet.Condition;
import putback.sheet.Fastener;
import putback.sheet.Height;
import putback.sheet.Holding;
import putback.sheet.JointEntry;
import putback.sheet.JointKind;
import putback.sheet.Lift;
import putback.sheet.PartEntry;
import putback.sheet.Setups;
import putback.sheet.Sheet;
import putback.sheet.Station;
import putback.sheet.StoredEnergy;
import putback.sheet.Tightening;
import putback.sheet.Times;
import putback.sheet.Timing;
import putback.sheet.Where;
import putback.sheet.Wording;

/** Tasks that wait for others, as a sheet: each task is a part held to the body by one joint. */
final class Benchwork {
    private final List<PartEntry> parts = new ArrayList<>();
    private final List<JointEntry> joints = new ArrayList<>();

    /**
     * @param needs clauses of tasks: one task of each has to be done before
     * @param after tasks that have to be done before
     * @param tool {@code hand} for none
     */
    Benchwork task(int id, int minutes, List<List<Integer>> needs, List<Integer> after, String tool, Station station) {
        List<List<String>> behind = needs.stream()
                .map(clause -> clause.stream().map(Benchwork::part).toList())
                .toList();
        parts.add(new PartEntry(
                part(id),
                Where.ONCE,
                part(id),
                Minutes.ZERO,
                null,
                List.of(),
                false,
                false,
                List.of(),
                null,
                null,
                StoredEnergy.NONE,
                null));
        joints.add(new JointEntry(
                joint(id),
                Where.ONCE,
                joint(id),
                List.of(part(id), Sheet.BODY),
                JointKind.CLIP,
                fastener(),
                new Access(behind),
                null,
                after.stream().map(Benchwork::joint).toList(),
                List.of(),
                List.of(),
                List.of(),
                false,
                Timing.PLAIN,
                false,
                Wording.SILENT,
                List.of(),
                List.of(),
                tool,
                station,
                Height.RAISED,
                Minutes.of(BigDecimal.valueOf(minutes)),
                Minutes.ZERO,
                0.25,
                List.of(),
                null));
        return this;
    }

    private static Fastener fastener() {
        return new Fastener(
                1,
                null,
                null,
                null,
                Holding.NOTHING,
                Tightening.UNKNOWN,
                null,
                Condition.DRY,
                false,
                Height.RAISED,
                false,
                false,
                null,
                null);
    }

    private static String part(int id) {
        return "part-" + id;
    }

    private static String joint(int id) {
        return "task-" + id;
    }

    Assembly assembly(Setups setups) {
        Sheet sheet = new Sheet(
                "tasks",
                "Tasks",
                Lift.NOT_SAID,
                false,
                parts,
                joints,
                List.of(),
                List.of(),
                Times.DEFAULT,
                List.of(),
                setups);
        if (Assembly.of(sheet) instanceof Assembled.Sound sound) {
            return sound.assembly();
        }
        throw new IllegalStateException("the tasks do not make a sheet: " + Assembly.of(sheet));
    }

    static Wanted wanted(Assembly assembly, Collection<Integer> tasks) {
        return new Wanted(assembly.parts().stream()
                .filter(one -> tasks.stream().anyMatch(task -> one.id().equals(part(task))))
                .<Target>map(Target.OfPart::new)
                .toList());
    }
}
