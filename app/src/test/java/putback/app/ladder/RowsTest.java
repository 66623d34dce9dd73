package putback.app.ladder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.app.fixtures.Plans;
import putback.plan.Plan;

/** How the two rails stand side by side. */
class RowsTest {
    private static List<Row> rows(Plan plan) {
        Rails rails = Rails.of(plan);
        return Rows.align(rails.left(), rails.right());
    }

    @Test
    void everyCell_standsOnceAndInItsOrder() {
        Rails rails = Rails.of(Plans.strutsClosedLeftFirst());
        List<Row> rows = Rows.align(rails.left(), rails.right());
        assertThat(rows.stream().map(Row::left).filter(cell -> cell != null)).containsExactlyElementsOf(rails.left());
        assertThat(rows.stream().map(Row::right).filter(cell -> cell != null)).containsExactlyElementsOf(rails.right());
    }

    @Test
    void reverseOrder_putsEveryFixingOnOneLevel() {
        assertThat(rows(Plans.struts()).stream().filter(Row::rung)).hasSize(22);
    }

    @Test
    void otherOrder_keepsAsManyLevelAsPossible() {
        assertThat(rows(Plans.strutsClosedOtherwise()).stream().filter(Row::rung))
                .hasSize(19);
        assertThat(rows(Plans.strutsClosedLeftFirst()).stream().filter(Row::rung))
                .hasSize(13);
    }

    @Test
    void endOfARungThatIsNotLevel_hasItsRowToItself() {
        assertThat(rows(Plans.strutsClosedOtherwise()))
                .filteredOn(row -> !row.rung())
                .filteredOn(row -> ends(row.left()) || ends(row.right()))
                .allMatch(row -> row.left() == null || row.right() == null);
    }

    private static boolean ends(Cell cell) {
        return cell != null && cell.rungEnd();
    }

    @Test
    void fixingsThatMoveTogether_shareALane() {
        Crossing crossing = Crossing.of(rows(Plans.strutsClosedLeftFirst()), 5);
        assertThat(crossing.jogs()).hasSize(9).allMatch(jog -> jog.lane() == 0);
    }
}
