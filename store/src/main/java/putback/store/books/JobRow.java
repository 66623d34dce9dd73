package putback.store.books;

import java.sql.ResultSet;
import java.sql.SQLException;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jdbi.v3.core.statement.StatementContext;
import putback.job.Stage;

/** A job as its row. */
final class JobRow {
    static final String COLUMNS = "id, number, car, complaint, conditions, distance_in, distance_out,"
            + " height_front_left, height_front_right, height_rear_left, height_rear_right, stage, sheet, renew, side,"
            + " terms, rust, comeback_of, opened_at, promised_at, version";

    private JobRow() {}

    static Job read(ResultSet row, StatementContext context) throws SQLException {
        Heights heights = new Heights(
                row.getString("height_front_left"),
                row.getString("height_front_right"),
                row.getString("height_rear_left"),
                row.getString("height_rear_right"));
        Arrival arrival = new Arrival(
                row.getString("complaint"),
                row.getString("conditions"),
                row.getString("distance_in"),
                row.getString("distance_out"),
                heights,
                row.getString("promised_at"));
        Scope scope = new Scope(
                row.getString("sheet"),
                row.getString("renew"),
                row.getString("side"),
                row.getString("terms"),
                row.getString("rust"));
        Stage stage = Stage.named(row.getString("stage"));
        String comeback = row.getString("comeback_of");
        return new Job(
                row.getString("id"),
                row.getString("number"),
                row.getString("car"),
                arrival,
                stage == null ? Stage.ASKED : stage,
                scope,
                comeback == null ? "" : comeback,
                row.getString("opened_at"),
                row.getInt("version"));
    }

    /** All that people edit. */
    static <S extends SqlStatement<S>> S bind(S statement, Job job) {
        Arrival arrival = job.arrival();
        Heights heights = arrival.heights();
        Scope scope = job.scope();
        return statement
                .bind("complaint", arrival.complaint())
                .bind("conditions", arrival.conditions())
                .bind("distanceIn", arrival.distanceIn())
                .bind("distanceOut", arrival.distanceOut())
                .bind("frontLeft", heights.frontLeft())
                .bind("frontRight", heights.frontRight())
                .bind("rearLeft", heights.rearLeft())
                .bind("rearRight", heights.rearRight())
                .bind("promised", arrival.promisedAt())
                .bind("sheet", scope.sheet())
                .bind("renew", scope.renew())
                .bind("side", scope.side())
                .bind("terms", scope.terms())
                .bind("rust", scope.rust());
    }
}
