package putback.store.books;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import putback.labour.price.Observed;
import putback.labour.seized.RustGrade;
import putback.quantity.Parsed;
import putback.store.database.StoreFailure;

/**
 * A lesson as its row has it.
 *
 * @param minutes decimal text; empty where nobody looked at the clock
 */
record LessonRow(String kind, String about, String minutes, int grade, int yes, int of) {
    private static final String OPEN = "open";
    private static final String CLOSE = "close";
    private static final String RUST = "rust";
    private static final String RESORT = "resort";

    static LessonRow of(Observed seen) {
        if (seen instanceof Observed.Took took) {
            return new LessonRow(took.opening() ? OPEN : CLOSE, took.joint(), text(took.minutes()), 0, 0, 0);
        }
        if (seen instanceof Observed.Rusted rusted) {
            return new LessonRow(RUST, rusted.joint(), "", rusted.grade().number(), rusted.seized(), rusted.of());
        }
        Observed.Tried tried = (Observed.Tried) seen;
        String minutes = tried.minutes() > 0 ? text(tried.minutes()) : "";
        return new LessonRow(RESORT, tried.resort(), minutes, 0, tried.worked() ? 1 : 0, 1);
    }

    private static String text(double minutes) {
        return BigDecimal.valueOf(minutes).toPlainString();
    }

    static LessonRow read(ResultSet row) throws SQLException {
        return new LessonRow(
                row.getString("kind"),
                row.getString("about"),
                row.getString("minutes"),
                row.getInt("grade"),
                row.getInt("yes"),
                row.getInt("of_all"));
    }

    Observed seen() {
        double took = minutes.isEmpty() ? 0 : Double.parseDouble(minutes);
        return switch (kind) {
            case OPEN, CLOSE -> new Observed.Took(about, kind.equals(OPEN), took);
            case RUST -> new Observed.Rusted(about, rust(), yes, of);
            default -> new Observed.Tried(about, yes > 0, took);
        };
    }

    private RustGrade rust() {
        if (RustGrade.of(grade) instanceof Parsed.Value<RustGrade> known) {
            return known.value();
        }
        throw new StoreFailure("what a job taught of " + about + " names rust grade " + grade
                + ", which there is not. Maybe restore a backup.");
    }
}
