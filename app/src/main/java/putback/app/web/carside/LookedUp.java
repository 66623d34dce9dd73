package putback.app.web.carside;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Shelf;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.sheet.Side;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.Cars;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.overlay.Overlay;
import putback.store.overlay.OverlayRead;
import putback.store.sheets.Piece;
import putback.store.sheets.Read;

/**
 * Figures that were looked up at the car, kept on the car's own sheet with where they stand: a note
 * {@code Looked up: 22 N·m; handbook p. 42} at a joint. A figure holds for both sides, as the maker's does, unless the
 * sheet tells them apart. What the sheet cannot take is left in the ledger, where the note stays.
 */
final class LookedUp {
    private static final String START = "Looked up: ";
    private static final String JOINTS = "joints";
    private static final int TRIES = 3;

    private final Books books;
    private final Shelf shelf;

    LookedUp(Books books, Shelf shelf) {
        this.books = books;
        this.shelf = shelf;
    }

    void keep(String id, List<Event> appended) {
        for (Event event : appended) {
            Job job = figure(event) == null ? null : new Jobs(books).find(id).orElse(null);
            Car car = job == null ? null : new Cars(books).find(job.car()).orElse(null);
            if (job != null && car != null) {
                keep(job, car, event);
            }
        }
    }

    /** Figure and source; null for an event that is about something else. */
    private static String @Nullable [] figure(Event event) {
        String said = event.reason();
        if (event.did() != Did.NOTE || event.joint() == null || said == null || !said.startsWith(START)) {
            return null;
        }
        String[] parts = said.substring(START.length()).split("; ", 2);
        return parts.length == 2 && !parts[1].isBlank() ? parts : null;
    }

    private void keep(Job job, Car car, Event event) {
        String[] figure = figure(event);
        for (int i = 0; i < TRIES && figure != null; i++) {
            CarSheet own = new CarSheets(books).current(car.id()).orElse(null);
            Overlay now = own == null ? fresh(job, car) : overlay(own);
            if (now == null) {
                return;
            }
            Overlay said = said(now, String.valueOf(event.joint()), figure);
            if (!(shelf.text(Shelf.OF_CAR + car.id(), said.write()) instanceof Read.Sheet)) {
                return;
            }
            String why = "looked up at the car, job " + job.number();
            Saved<CarSheet> saved = books.write(change -> new CarSheets(books)
                    .add(change, car.id(), own == null ? 0 : own.number(), said.write(), event.by(), why));
            if (saved instanceof Saved.Done<CarSheet>) {
                return;
            }
        }
    }

    private static Overlay said(Overlay now, String joint, String[] figure) {
        String plain = joint;
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            plain = joint.startsWith(side.prefix())
                    ? joint.substring(side.prefix().length())
                    : plain;
        }
        String id = now.joint(joint).get("torque") == null ? plain : joint;
        return now.with(JOINTS, id, "torque", new Piece.Text(figure[0], false))
                .with(JOINTS, id, "source", new Piece.Text(figure[1], true));
    }

    private static @Nullable Overlay fresh(Job job, Car car) {
        return job.scope().named() && !job.scope().sheet().equals("car")
                ? Overlay.on(
                        Shelf.OF_CAR + car.id(),
                        car.called(),
                        List.of(job.scope().sheet()))
                : null;
    }

    private static @Nullable Overlay overlay(CarSheet sheet) {
        return Overlay.read(Shelf.OF_CAR + sheet.car(), sheet.text()) instanceof OverlayRead.Sound sound
                ? sound.overlay()
                : null;
    }
}
