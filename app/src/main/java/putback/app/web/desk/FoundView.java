package putback.app.web.desk;

import java.util.List;
import putback.store.books.Car;
import putback.store.books.Customer;
import putback.store.books.JobLine;

/** What a search found. */
public record FoundView(String typed, List<Car> cars, List<JobLine> jobs, List<Person> people) {
    public FoundView {
        cars = List.copyOf(cars);
        jobs = List.copyOf(jobs);
        people = List.copyOf(people);
    }

    /** A customer and the cars. */
    public record Person(Customer customer, List<Car> cars) {
        public Person {
            cars = List.copyOf(cars);
        }
    }

    /** Whether there is nothing. */
    public boolean nothing() {
        return cars.isEmpty() && jobs.isEmpty() && people.isEmpty();
    }
}
