package putback.store.inspection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.store.database.Database;
import putback.store.photos.PhotoFiles;

/** Whether each photo that the books name is on the disk as it was kept. */
final class PhotosInspection implements Inspection {
    private final PhotoFiles files;

    PhotosInspection(PhotoFiles files) {
        this.files = files;
    }

    @Override
    public String about() {
        return "photos";
    }

    @Override
    public List<String> faults(Database database) {
        List<String> faults = new ArrayList<>();
        named(database).forEach((hash, job) -> {
            String wrong = files.wrong(hash);
            if (!wrong.isEmpty()) {
                faults.add("photo of job " + job + ": " + wrong);
            }
        });
        return faults;
    }

    private static Map<String, String> named(Database database) {
        return database.read(handle -> {
            Map<String, String> jobs = new LinkedHashMap<>();
            handle.createQuery(
                            "select hash, number from photo join job on job.id = photo.job order by job.number, photo.id")
                    .mapToMap()
                    .forEach(row -> jobs.putIfAbsent((String) row.get("hash"), (String) row.get("number")));
            return jobs;
        });
    }
}
