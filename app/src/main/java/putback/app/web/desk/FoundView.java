package putback.app.web.desk;

import java.util.List;
import putback.store.books.Car;
import putback.store.books.Customer;
import putback.store.books.JobLine;

/** What a search found. */
public record FoundView(String typed, List<Car> cars, List<JobLine> jobs, List<Customer> customers) {
    public FoundView {
        cars = List.copyOf(cars);
        jobs = List.copyOf(jobs);
        customers = List.copyOf(customers);
    }

    /** Whether there is nothing. */
    public boolean nothing() {
        return cars.isEmpty() && jobs.isEmpty() && customers.isEmpty();
    }
}
