package putback.store.inspection;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import putback.store.books.Books;
import putback.store.books.BrokenChain;
import putback.store.books.Events;
import putback.store.database.Database;

/** Whether each job's chain of events still holds, link by link. */
final class LedgerInspection implements Inspection {
    @Override
    public String about() {
        return "ledgers";
    }

    @Override
    public List<String> faults(Database database) {
        List<String> garages =
                database.read(handle -> handle.createQuery("select distinct garage from job order by garage")
                        .mapTo(String.class)
                        .list());
        List<String> faults = new ArrayList<>();
        for (String garage : garages) {
            for (BrokenChain broken : new Events(new Books(database, garage, Clock.systemUTC())).verifyChains()) {
                faults.add("the ledger of job " + broken.job() + " does not hold from event "
                        + broken.fault().number() + " on: " + broken.fault().differs());
            }
        }
        return faults;
    }
}
