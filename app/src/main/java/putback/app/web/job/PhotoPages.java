package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.store.books.Books;
import putback.store.books.Jobs;
import putback.store.photos.Added;
import putback.store.photos.Photo;
import putback.store.photos.PhotoFiles;
import putback.store.photos.Photos;
import putback.store.photos.Stripping;

/** Photos of a job: taken in without their place, shown again. */
public final class PhotoPages implements PageGroup {
    private final Replies replies;
    private final Books books;
    private final Photos photos;

    public PhotoPages(Replies replies, Books books, PhotoFiles files) {
        this.replies = replies;
        this.books = books;
        photos = new Photos(books, files);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/job/{id}/photos", context -> page(context, ""));
        routes.post("/job/{id}/photos", this::take);
        routes.get("/photo/{id}", this::show);
    }

    private void page(Context context, String said) {
        String id = context.pathParam("id");
        new Jobs(books)
                .find(id)
                .ifPresentOrElse(
                        job -> replies.show(
                                context, "photos.jte", new PhotosView(id, job.number(), photos.of(id), said)),
                        () -> replies.missing(context, "job", id));
    }

    private void take(Context context) throws IOException {
        List<UploadedFile> files = context.uploadedFiles("photo");
        Form form = Form.of(context);
        String id = context.pathParam("id");
        for (UploadedFile file : files) {
            byte[] bytes;
            try (InputStream content = file.content()) {
                bytes = content.readNBytes(Stripping.MOST_BYTES + 1);
            }
            Added added = photos.add(id, bytes, form.text("words"), form.who());
            if (added instanceof Added.Refused refused) {
                context.status(422);
                page(context, refused.said());
                return;
            }
        }
        if (files.isEmpty()) {
            context.status(422);
            page(context, "No photo came with that. Choose one first.");
            return;
        }
        context.redirect("/job/" + id + "/photos", HttpStatus.SEE_OTHER);
    }

    private void show(Context context) {
        String id = context.pathParam("id");
        Photo photo = photos.find(id).orElse(null);
        byte[] file = photo == null ? null : photos.file(photo).orElse(null);
        if (photo == null || file == null) {
            replies.missing(context, "photo", id);
            return;
        }
        context.contentType(photo.type());
        context.header("Content-Security-Policy", "default-src 'none'; sandbox");
        context.result(file);
    }
}
