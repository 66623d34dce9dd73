package putback.app.web.job;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.papers.HouseStyle;
import putback.ledger.Debt;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Owing;
import putback.ledger.Promised;
import putback.store.books.Books;

/** What broke and has no new one on record, in words. */
final class Broke {
    private Broke() {}

    /** One line for each: what it is, who said so, when, and how it came. */
    static List<String> lines(Promised promised, List<Event> done, HouseStyle style) {
        Owing owing = Owing.of(promised, done);
        List<Debt> debts = new ArrayList<>(owing.owes());
        owing.carried().forEach(one -> debts.add(one.debt()));
        List<String> lines = new ArrayList<>();
        for (Debt debt : debts) {
            if (debt.kind() == Debt.Kind.BROKEN) {
                lines.add(line(debt, promised, last(debt, done), style));
            }
        }
        return lines;
    }

    private static @Nullable Event last(Debt debt, List<Event> done) {
        Event last = null;
        for (Event event : done) {
            String about = event.joint() != null ? event.joint() : event.part();
            last = event.did() == Did.BREAK && debt.subject().equals(about) ? event : last;
        }
        return last;
    }

    private static String line(Debt debt, Promised promised, @Nullable Event event, HouseStyle style) {
        List<String> said = new ArrayList<>();
        said.add(promised.name(debt.subject()) + (debt.joint() == null ? "" : ", its fastener"));
        if (event != null) {
            String reason = event.reason();
            said.add(event.by());
            said.add(event.at() == null ? "" : JobView.when(Books.text(event.at()), style));
            said.add(reason == null ? "" : reason);
        }
        said.removeIf(String::isBlank);
        return String.join(", ", said);
    }
}
