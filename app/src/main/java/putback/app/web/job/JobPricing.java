package putback.app.web.job;

import putback.app.web.planning.Pricing;
import putback.plan.Plan;
import putback.store.books.Books;

/** The prices of a job's parts, as its own page has them; examples where the plan is for no job. */
public final class JobPricing implements Pricing {
    private final Books books;

    public JobPricing(Books books) {
        this.books = books;
    }

    @Override
    public Plan priced(Plan plan, String job) {
        JobFile file = job.isEmpty() ? null : JobFile.open(books, job);
        return file == null
                ? EXAMPLES.priced(plan, job)
                : plan.withParts(file.prices().needs(plan));
    }
}
