package putback.store.backup;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Puts a table's lines back into a table. */
final class Loading {
    private static final int AT_ONCE = 500;

    private Loading() {}

    /** Returns how many rows. */
    static long read(Handle handle, String table, InputStream stream) throws IOException {
        try (JsonParser json = Rows.JSON.createParser(stream)) {
            List<String> columns = columns(json, table);
            long count = 0;
            try (PreparedBatch batch = handle.prepareBatch(insert(table, columns))) {
                while (json.nextToken() == JsonToken.START_ARRAY) {
                    row(json, batch, columns.size());
                    count++;
                    if (count % AT_ONCE == 0) {
                        batch.execute();
                    }
                }
                if (batch.size() > 0) {
                    batch.execute();
                }
            }
            return count;
        }
    }

    private static List<String> columns(JsonParser json, String table) throws IOException {
        List<String> columns = new ArrayList<>();
        if (json.nextToken() == JsonToken.START_ARRAY) {
            while (json.nextToken() == JsonToken.VALUE_STRING) {
                columns.add(json.getText());
            }
        }
        if (columns.isEmpty()
                || !columns.stream().allMatch(name -> Names.WORD.matcher(name).matches())) {
            throw new IOException("the columns of " + table + " cannot be read");
        }
        return columns;
    }

    private static String insert(String table, List<String> columns) {
        return "insert into " + table + " (" + String.join(", ", columns) + ") values ("
                + String.join(", ", java.util.Collections.nCopies(columns.size(), "?")) + ")";
    }

    private static void row(JsonParser json, PreparedBatch batch, int width) throws IOException {
        int at = 0;
        for (JsonToken token = json.nextToken(); token != JsonToken.END_ARRAY; token = json.nextToken()) {
            if (at >= width || token == null) {
                throw new IOException("a row is longer than its table is wide");
            }
            if (token == JsonToken.VALUE_NULL) {
                batch.bindNull(at++, java.sql.Types.VARCHAR);
            } else if (token == JsonToken.VALUE_NUMBER_INT) {
                batch.bind(at++, json.getLongValue());
            } else {
                batch.bind(at++, json.getText());
            }
        }
        if (at != width) {
            throw new IOException("a row is shorter than its table is wide");
        }
        batch.add();
    }
}
