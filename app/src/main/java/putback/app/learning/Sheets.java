package putback.app.learning;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.store.sheets.Read;

/** Where a sheet is found by the name that a job gives. */
public interface Sheets {
    /** Null when none is called so. */
    @Nullable
    Read read(String name);

    /** The ids of the sheets that it is built on at the bottom; itself where it is built on none. */
    List<String> roots(String name);

    /** The name of the own sheet of a car. */
    String ofCar(String car);
}
