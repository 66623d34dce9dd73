package putback.store.backup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.IOException;
import java.io.OutputStream;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;

/** A table as lines of JSON: the columns' names, then each row's values. */
final class Rows {
    static final JsonFactory JSON = JsonFactory.builder()
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
            .build();
    private static final int AT_ONCE = 500;

    private Rows() {}

    /** Writes all rows, parents first. Returns how many. */
    static long write(Handle handle, String table, OutputStream stream) throws IOException {
        JsonGenerator json = JSON.createGenerator(stream);
        json.setRootValueSeparator(null);
        try (PreparedStatement statement = handle.getConnection().prepareStatement(select(table))) {
            statement.setFetchSize(AT_ONCE);
            try (ResultSet rows = statement.executeQuery()) {
                return write(rows, json);
            }
        } catch (SQLException failure) {
            throw new org.jdbi.v3.core.ConnectionException(failure);
        }
    }

    private static long write(ResultSet rows, JsonGenerator json) throws SQLException, IOException {
        ResultSetMetaData columns = rows.getMetaData();
        json.writeStartArray();
        for (int i = 1; i <= columns.getColumnCount(); i++) {
            json.writeString(columns.getColumnName(i));
        }
        json.writeEndArray();
        json.writeRaw('\n');
        long count = 0;
        while (rows.next()) {
            json.writeStartArray();
            for (int i = 1; i <= columns.getColumnCount(); i++) {
                value(json, rows.getObject(i));
            }
            json.writeEndArray();
            json.writeRaw('\n');
            count++;
        }
        json.flush();
        return count;
    }

    private static void value(JsonGenerator json, @org.jspecify.annotations.Nullable Object value) throws IOException {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof Number number) {
            json.writeNumber(number.longValue());
        } else {
            json.writeString(value.toString());
        }
    }

    /** A job that came back stands below the one it came back from. */
    private static String select(String table) {
        if (table.equals("job")) {
            return "with recursive course(id, depth) as (select id, 0 from job where comeback_of is null"
                    + " union all select job.id, depth + 1 from job join course on job.comeback_of = course.id)"
                    + " select job.* from job left join course on course.id = job.id"
                    + " order by coalesce(course.depth, 0), job.id";
        }
        return "select * from " + table + " order by 1, 2";
    }
}
