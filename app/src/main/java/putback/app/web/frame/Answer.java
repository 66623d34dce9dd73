package putback.app.web.frame;

import java.util.List;
import putback.plan.Plan;
import putback.plan.Planner;
import putback.plan.selection.WantedNames;
import putback.plan.selection.WantedNames.Understood;
import putback.quantity.Shown;
import putback.store.sheets.Fault;
import putback.store.sheets.Read;

/** What the planner answers: a plan, or lines to show with a status. */
public sealed interface Answer {
    record Planned(Plan plan) implements Answer {}

    /**
     * @param status of HTTP
     */
    record Refused(int status, String heading, List<String> lines) implements Answer {}

    static Answer to(Question question, Shelf shelf) {
        Read read = shelf.read(question.sheet());
        if (read == null) {
            return new Refused(
                    404, "No such sheet", List.of("There is no sheet called " + Shown.text(question.sheet()) + "."));
        }
        if (read instanceof Read.Faulty faulty) {
            List<String> lines = faulty.faults().stream().map(Fault::toString).toList();
            return new Refused(422, "This sheet cannot be used", lines);
        }
        return to(question, (Read.Sheet) read);
    }

    /** The same for a sheet that is read already. */
    static Answer to(Question question, Read.Sheet read) {
        if (question.sides().isEmpty()) {
            String said = "The side is left, right or both, not " + Shown.text(question.side()) + ".";
            return new Refused(400, "Not understood", List.of(said));
        }
        if (question.renew().isEmpty()) {
            return new Refused(
                    400, "Nothing to renew", List.of("Tick at least one part or unit that is to be renewed."));
        }
        List<String> names = question.renew().stream().map(Shown::text).toList();
        Understood understood = WantedNames.understand(read.assembly(), names, question.sides());
        if (understood instanceof Understood.Unclear unclear) {
            return new Refused(400, "Not understood", unclear.messages());
        }
        return planned(Planner.plan(read.assembly(), ((Understood.Clear) understood).wanted()));
    }

    private static Answer planned(putback.plan.Planned planned) {
        if (planned instanceof putback.plan.Planned.Locked locked) {
            return locked(locked.sentence());
        }
        return new Planned(((putback.plan.Planned.Sound) planned).plan());
    }

    /** What is wanted cannot be reached in any order. */
    static Refused locked(String sentence) {
        return new Refused(422, "No sound order", List.of(sentence));
    }
}
