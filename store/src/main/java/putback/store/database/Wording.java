package putback.store.database;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** What a database's failure means for the person in front of it. */
final class Wording {
    private Wording() {}

    /** Codes are SQLite's result codes (their low byte) and PostgreSQL's SQLSTATE classes. */
    static StoreFailure of(String where, Throwable failure) {
        SQLException cause = sql(failure);
        if (cause == null) {
            return new StoreFailure(where + ": " + failure.getMessage() + ".", failure);
        }
        String state = cause.getSQLState();
        String said = state == null ? sqlite(cause.getErrorCode() & 0xff) : postgres(state);
        return new StoreFailure(where + ": " + (said.isEmpty() ? cause.getMessage() + "." : said), failure);
    }

    private static @Nullable SQLException sql(Throwable failure) {
        for (Throwable at = failure; at != null; at = at.getCause()) {
            if (at instanceof SQLException found) {
                return found;
            }
        }
        return null;
    }

    private static String sqlite(int code) {
        return switch (code) {
            case 5, 6 -> "another program holds the file. Nothing was written; try again.";
            case 8 ->
                "the file or its folder may only be read. Nothing was written; give this user the right to write"
                        + " there.";
            case 10 ->
                "the disk answers with a fault. The last thing was not kept for sure; look at the disk before going on.";
            case 11 -> "the file is damaged. Stop the program, keep a copy of the file, and restore the last backup.";
            case 13 -> "the disk is full. Nothing was written; make room, then do the last thing again.";
            case 14 -> "the file cannot be opened. Is the folder there, and may this user write in it?";
            case 26 -> "this is not a file of books. Name another file, or restore a backup.";
            default -> "";
        };
    }

    private static String postgres(String state) {
        if (state.startsWith("08") || state.startsWith("57P")) {
            return "the server does not answer. Nothing was written; is it running, and is the network there?";
        }
        return switch (state) {
            case "28P01", "28000" -> "the server refuses this name and password.";
            case "3D000" -> "the server has no such database. Maybe create it first.";
            case "53100" -> "the server's disk is full. Nothing was written; make room, then do the last thing again.";
            case "53300" -> "the server has too many connections. Nothing was written; try again.";
            case "25006" -> "the server only lets us read. Nothing was written.";
            default -> "";
        };
    }
}
