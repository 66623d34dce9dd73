package putback.app.web.card;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Question;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.quantity.Shown;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.Cars;
import putback.store.books.KeptSheet;
import putback.store.books.KeptSheets;
import putback.store.books.Saved;
import putback.store.overlay.Handing;
import putback.store.overlay.NewId;
import putback.store.overlay.Overlay;
import putback.store.overlay.OverlayRead;
import putback.store.sheets.Fault;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** A car's own sheet as a whole: kept for its model, handed to another garage, taken from one, or as it once was. */
final class CarSheetPages implements PageGroup {
    private static final int MOST_BYTES = 1 << 20;

    private final Replies replies;
    private final Books books;
    private final Shelf shelf;

    CarSheetPages(Replies replies, Books books, Shelf shelf) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/car/{id}/sheet.yaml", context -> with(context, car -> hand(context, car)));
        routes.post("/car/{id}/sheet", context -> with(context, car -> take(context, car)));
        routes.post("/car/{id}/sheet/again", context -> with(context, car -> again(context, car)));
        routes.post("/car/{id}/sheet/kept", context -> with(context, car -> keep(context, car)));
    }

    private void with(Context context, java.util.function.Consumer<Car> work) {
        String id = context.pathParam("id");
        Car car = new Cars(books).find(id).orElse(null);
        if (car == null) {
            replies.missing(context, "car", id);
        } else {
            work.accept(car);
        }
    }

    private @Nullable Overlay own(Car car) {
        CarSheet sheet = new CarSheets(books).current(car.id()).orElse(null);
        return sheet == null ? null : CardFile.overlay(sheet);
    }

    private void none(Context context) {
        refuse(context, 404, "No sheet yet", List.of("Nothing is kept of how this car differs from its stock sheet."));
    }

    private void refuse(Context context, int status, String heading, List<String> lines) {
        replies.refuse(context, new Answer.Refused(status, heading, lines));
    }

    private void hand(Context context, Car car) {
        Overlay own = own(car);
        if (own == null) {
            none(context);
            return;
        }
        String id = NewId.of((car.make() + " " + car.model()).strip(), "car", List.of());
        Overlay handed = Handing.over(own, shelf.kept())
                .named(
                        id,
                        (car.make() + " " + car.model()).strip().isEmpty()
                                ? own.title()
                                : car.make() + " " + car.model());
        context.contentType("application/yaml; charset=utf-8");
        context.header("Content-Disposition", "attachment; filename=\"" + id + ".yaml\"");
        context.result(handed.write());
    }

    private void take(Context context, Car car) {
        UploadedFile file = context.uploadedFile("file");
        String text = file == null ? "" : text(file);
        if (file == null || text.isEmpty()) {
            refuse(context, 422, "Nothing was taken", List.of("Choose a sheet as a YAML file, of at most 1 MiB."));
            return;
        }
        String name = Shown.text(file.filename());
        if (Overlay.read(name, text) instanceof OverlayRead.Faulty faulty) {
            refuse(context, 422, "This sheet cannot be used", lines(faulty.faults()));
            return;
        }
        if (shelf.text(name, text) instanceof Read.Faulty faulty) {
            refuse(context, 422, "This sheet cannot be used", lines(faulty.faults()));
            return;
        }
        Overlay taken = ((OverlayRead.Sound) Overlay.read(name, text)).overlay();
        Form form = Form.of(context);
        add(
                context,
                car,
                form,
                taken.named(Shelf.OF_CAR + car.id(), car.called()).write(),
                "taken from " + name);
    }

    private static List<String> lines(List<Fault> faults) {
        List<String> lines = new ArrayList<>();
        faults.forEach(fault -> lines.add(fault.toString()));
        return lines;
    }

    /** Empty where there is too much of it. */
    private static String text(UploadedFile file) {
        try (InputStream content = file.content()) {
            byte[] bytes = content.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? "" : new String(bytes, StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void again(Context context, Car car) {
        Form form = Form.of(context);
        for (CarSheet sheet : new CarSheets(books).history(car.id())) {
            if (sheet.number() == form.number("number")) {
                add(context, car, form, sheet.text(), "number " + sheet.number() + " again");
                return;
            }
        }
        replies.missing(context, "sheet", form.text("number"));
    }

    private void add(Context context, Car car, Form form, String text, String why) {
        Saved<CarSheet> saved = books.write(
                change -> new CarSheets(books).add(change, car.id(), form.number("seen"), text, form.who(), why));
        if (saved instanceof Saved.Done<CarSheet>) {
            context.redirect("/car/" + car.id() + "/card" + back(form), HttpStatus.SEE_OTHER);
        } else {
            replies.overtaken(context, "/car/" + car.id() + "/card" + back(form), form);
        }
    }

    /** The card that it was done from. */
    private static String back(Form form) {
        List<String> renew = List.of(form.text("renew"));
        Question question = Question.of("car", renew, form.text("side"));
        return question.renew().isEmpty() ? "" : question.address("");
    }

    private void keep(Context context, Car car) {
        Form form = Form.of(context);
        Overlay own = own(car);
        String title = form.text("title");
        if (own == null || title.isEmpty()) {
            if (own == null) {
                none(context);
            } else {
                refuse(context, 422, "Not kept yet", List.of("Give the model a name, such as make, model and years."));
            }
            return;
        }
        List<String> taken = new ArrayList<>(SheetReader.stockIds());
        new KeptSheets(books).all().forEach(sheet -> taken.add(sheet.id()));
        String id = NewId.of(title.startsWith(Shelf.OF_CAR) ? "model " + title : title, "model", taken);
        String text = own.named(id, title).write();
        Saved<KeptSheet> saved = books.write(change -> new KeptSheets(books).add(change, id, title, text, form.who()));
        if (saved instanceof Saved.Done<KeptSheet>) {
            context.redirect("/sheet/" + id, HttpStatus.SEE_OTHER);
        } else {
            replies.overtaken(context, "/car/" + car.id() + "/card", form);
        }
    }
}
