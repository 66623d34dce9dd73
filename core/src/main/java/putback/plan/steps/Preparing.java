package putback.plan.steps;

import java.util.BitSet;
import java.util.List;
import putback.sheet.Joint;

/** What is done and marked before a joint is opened, each once. */
final class Preparing {
    private final StepLog log;
    private final Cautions cautions;
    private final BitSet prepared = new BitSet();
    private final BitSet marked = new BitSet();

    Preparing(StepLog log, Cautions cautions) {
        this.log = log;
        this.cautions = cautions;
    }

    void beforeOpening(Joint joint) {
        List<String> items = joint.entry().wording().beforeOpening();
        if (!items.isEmpty() && !prepared.get(joint.index())) {
            String text = text(joint, items);
            log.add(Draft.at(Act.CHECK, joint, text).caution(cautions.beforeOpening(text)));
        }
        prepared.set(joint.index());
    }

    void mark(Joint joint) {
        List<String> items = joint.entry().wording().marks();
        if (!items.isEmpty() && !marked.get(joint.index())) {
            log.add(Draft.at(Act.MARK, joint, text(joint, items)));
        }
        marked.set(joint.index());
    }

    private static String text(Joint joint, List<String> items) {
        return "Before opening " + Words.of(joint) + ": " + String.join("; ", items) + ".";
    }
}
