package putback.store.sheets;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The sheets that come with the program. Their ids are listed in a file, since a folder in a jar cannot be searched. */
final class Stock {
    static final String FOLDER = "putback/sheets/";
    static final String INDEX = FOLDER + "stock.txt";

    private Stock() {}

    /** In the order of the list; lines that begin with {@code #} are notes. */
    static List<String> ids() {
        List<String> ids = new ArrayList<>();
        try (InputStream stream = opened(INDEX)) {
            for (String line : new String(stream.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                String id = line.strip();
                if (!id.isEmpty() && !id.startsWith("#")) {
                    ids.add(id);
                }
            }
        } catch (IOException missing) {
            throw new IllegalStateException("the list of stock sheets is missing from the program", missing);
        }
        return List.copyOf(ids);
    }

    static boolean has(String id) {
        return Ids.isId(id) && Shipped.has(resource(id));
    }

    static String resource(String id) {
        return FOLDER + id + ".yaml";
    }

    static InputStream open(String id) throws IOException {
        return opened(resource(id));
    }

    private static InputStream opened(String resource) throws IOException {
        InputStream stream = Shipped.open(resource);
        if (stream == null) {
            throw new FileNotFoundException(resource);
        }
        return stream;
    }
}
