package putback.app.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.papers.Reading;
import putback.plan.Plan;

final class NoLedgers implements Ledgers {
    @Override
    public List<String> owes(JobFile file, @Nullable Plan plan) {
        return List.of();
    }

    @Override
    public boolean started(JobFile file) {
        return false;
    }

    @Override
    public List<Reading> readings(JobFile file) {
        return List.of();
    }

    @Override
    public List<String> carried(JobFile file, Plan plan) {
        return List.of();
    }
}
