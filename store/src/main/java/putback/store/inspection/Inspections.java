package putback.store.inspection;

import java.util.List;
import putback.store.photos.PhotoFiles;

/** All looks, in the order in which they are taken. */
public final class Inspections {
    private Inspections() {}

    /** What stands on what was looked at before comes later. */
    public static List<Inspection> all(PhotoFiles photos) {
        return List.of(new BooksInspection(), new LedgerInspection(), new PhotosInspection(photos));
    }
}
