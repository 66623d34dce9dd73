package putback.app.web.frame;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import putback.plan.Plan;
import putback.plan.tools.Tray;
import putback.store.books.Books;
import putback.store.photos.PhotoFiles;
import putback.tightening.toolbox.Toolbox;

/**
 * Whose pages these are.
 *
 * @param toolbox null where none was given
 * @param clock says by which day calibration is judged
 * @param books where customers, cars and jobs are kept; null where nothing is
 * @param photos where photos are kept; null where none are
 */
public record Garage(
        @Nullable Toolbox toolbox,
        Clock clock,
        @Nullable Books books,
        @Nullable PhotoFiles photos) {
    /** With books, but no place for photos. */
    public Garage(@Nullable Toolbox toolbox, Clock clock, @Nullable Books books) {
        this(toolbox, clock, books, null);
    }

    /** Without books: questions are answered, nothing is kept. */
    public Garage(@Nullable Toolbox toolbox, Clock clock) {
        this(toolbox, clock, null, null);
    }

    /** Without a toolbox. */
    public static final Garage UNKNOWN = new Garage(null, Clock.system(ZoneId.systemDefault()));

    /** What it has for a plan today; null without a toolbox. */
    @Nullable
    public Tray tray(Plan plan) {
        return toolbox == null ? null : Tray.of(plan, toolbox, LocalDate.now(clock));
    }
}
