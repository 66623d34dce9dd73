package putback.store.books;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;
import putback.job.Stage;

/** Jobs with their cars and customers, for lists. */
public final class JobLines {
    private static final String SELECT = "select job.id, job.number, car.plate, car.make, car.model, customer.name,"
            + " customer.phone, job.complaint, job.stage, job.opened_at, job.promised_at,"
            + " (select count(*) from part_line where part_line.job = job.id and part_line.state in"
            + " ('to order', 'ordered')) as missing"
            + " from job join car on car.id = job.car left join customer on customer.id = car.customer"
            + " where job.garage = :garage";

    private final Books books;

    public JobLines(Books books) {
        this.books = books;
    }

    /** The one with this id. */
    public Optional<JobLine> find(String id) {
        return books.read(handle -> handle.createQuery(SELECT + " and job.id = :id")
                .bind("garage", books.garage())
                .bind("id", id)
                .map(JobLines::read)
                .findFirst());
    }

    /** Those that are neither handed over nor declined, the oldest first. */
    public List<JobLine> open(int most) {
        return books.read(handle -> handle.createQuery(SELECT
                        + " and job.stage in ('asked', 'looked over', 'priced', 'agreed', 'under way', 'together')"
                        + " order by job.opened_at, job.id limit :most")
                .bind("garage", books.garage())
                .bind("most", most)
                .map(JobLines::read)
                .list());
    }

    /** Those that have all the words in number, complaint, scope, findings, car or owner, the newest first. */
    public List<JobLine> search(String typed, int most) {
        return books.read(handle -> Matching.all(
                        handle, SELECT, "job.search", Searched.words(typed), "job.opened_at desc, job.id desc", most)
                .bind("garage", books.garage())
                .map(JobLines::read)
                .list());
    }

    /** One car's, the newest first. */
    public List<JobLine> ofCar(String car) {
        return books.read(
                handle -> handle.createQuery(SELECT + " and job.car = :car order by job.opened_at desc, job.id desc")
                        .bind("garage", books.garage())
                        .bind("car", car)
                        .map(JobLines::read)
                        .list());
    }

    private static JobLine read(ResultSet row, StatementContext context) throws SQLException {
        Stage stage = Stage.named(row.getString("stage"));
        String car = String.join(" ", row.getString("plate"), row.getString("make"), row.getString("model"))
                .strip()
                .replaceAll(" +", " ");
        return new JobLine(
                row.getString("id"),
                row.getString("number"),
                car,
                text(row, "name"),
                text(row, "phone"),
                row.getString("complaint"),
                stage == null ? Stage.ASKED : stage,
                row.getString("opened_at"),
                row.getString("promised_at"),
                row.getInt("missing"));
    }

    private static String text(ResultSet row, String column) throws SQLException {
        String text = row.getString(column);
        return text == null ? "" : text;
    }
}
