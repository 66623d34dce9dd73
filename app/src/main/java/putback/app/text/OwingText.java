package putback.app.text;

import java.util.Map;
import putback.app.text.Page.Ink;
import putback.ledger.Debt;
import putback.ledger.Owing;

/** What a job owes, for a person: the most harmful first. */
public final class OwingText {
    private OwingText() {}

    /** All of it, from the verdict to what was tightened without a figure. */
    public static String of(Owing owing, Screen screen) {
        Page page = new Page(screen);
        page.words(Ink.STRONG, verdict(owing));
        for (Debt debt : owing.owes()) {
            page.words(Ink.PLAIN, "  - ", line(debt));
        }
        if (!owing.carried().isEmpty()) {
            page.gap().heading("STAYS OPEN ON PURPOSE", "");
        }
        for (Owing.Carried carried : owing.carried()) {
            String by = carried.by().isEmpty() ? "nobody named" : carried.by();
            page.words(Ink.PLAIN, "  - ", line(carried.debt()) + "; carried by " + by + ": " + carried.reason());
        }
        if (!owing.untorqued().isEmpty()) {
            page.gap().heading("TIGHTENED, NOT TORQUED", "");
        }
        for (Map.Entry<String, String> joint : owing.untorqued().entrySet()) {
            page.words(Ink.PLAIN, "  - ", joint.getKey() + ": " + joint.getValue());
        }
        return page.toString();
    }

    private static String verdict(Owing owing) {
        int owes = owing.owes().size();
        if (owes > 0) {
            return "This job still owes " + (owes == 1 ? "one thing" : owes + " things")
                    + "; the car is not to be driven.";
        }
        return owing.carried().isEmpty()
                ? "Settled: nothing is owed."
                : "Settled but for what stays open on purpose; the car is not to be driven.";
    }

    private static String line(Debt debt) {
        return debt.subject() + ": " + debt.kind().word() + "; " + debt.detail();
    }
}
