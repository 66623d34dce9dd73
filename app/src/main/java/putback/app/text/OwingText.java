package putback.app.text;

import java.util.Map;
import putback.app.text.Page.Ink;
import putback.ledger.Debt;
import putback.ledger.Owing;
import putback.ledger.Promised;

/** What a job owes, for a person: the most harmful first. */
public final class OwingText {
    private OwingText() {}

    /** All of it, from the verdict to what is doubtful about the ledger. */
    public static String of(Owing owing, Promised promised, Screen screen) {
        Page page = new Page(screen);
        page.words(Ink.STRONG, verdict(owing));
        for (Debt debt : owing.owes()) {
            page.words(Ink.PLAIN, "  - ", line(debt, promised));
        }
        for (String stands : owing.stands()) {
            page.words(Ink.PLAIN, "  - ", "Not to be driven: " + stands + ".");
        }
        if (!owing.carried().isEmpty()) {
            page.gap().heading("STAYS OPEN ON PURPOSE", "");
        }
        for (Owing.Carried carried : owing.carried()) {
            String by = carried.by().isEmpty() ? "nobody named" : carried.by();
            page.words(
                    Ink.PLAIN, "  - ", line(carried.debt(), promised) + "; carried by " + by + ": " + carried.reason());
        }
        if (!owing.untorqued().isEmpty()) {
            page.gap().heading("TIGHTENED WITHOUT A READING", "");
        }
        for (Map.Entry<String, String> joint : owing.untorqued().entrySet()) {
            page.words(Ink.PLAIN, "  - ", promised.name(joint.getKey()) + ": " + joint.getValue());
        }
        if (!owing.remarks().isEmpty()) {
            page.gap().heading("LOOK AT THE LEDGER", "");
        }
        for (String remark : owing.remarks()) {
            page.words(Ink.PLAIN, "  - ", remark);
        }
        return page.toString();
    }

    private static String verdict(Owing owing) {
        int owes = owing.owes().size();
        if (owes > 0) {
            return "This job still owes " + (owes == 1 ? "one thing" : owes + " things")
                    + "; the car is not to be driven.";
        }
        if (!owing.carried().isEmpty()) {
            return "Settled but for what stays open on purpose; the car is not to be driven.";
        }
        return owing.mayBeDriven()
                ? "Settled: nothing is owed."
                : "Settled: nothing is owed; but the car is not to be driven yet.";
    }

    /** One debt as a line of its own. */
    public static String line(Debt debt, Promised promised) {
        return promised.name(debt.subject()) + ": " + debt.detail();
    }
}
