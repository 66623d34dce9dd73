package putback.app.web.job;

import java.util.List;
import putback.store.photos.Photo;

/**
 * A job's photos as their page shows them.
 *
 * @param said why the last one was not kept; empty for nothing
 */
public record PhotosView(String job, String number, List<Photo> photos, String said) {
    public PhotosView {
        photos = List.copyOf(photos);
    }
}
