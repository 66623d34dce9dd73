package putback.app.web.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.store.sheets.Piece;

class CardWordsTest {
    private static final CardWords METRIC = new CardWords("N·m");

    @ParameterizedTest
    @CsvSource({
        "torque, 98, 98 N·m",
        "torque, 72 lbf·ft, 72 lbf·ft",
        "torque, 90+60, 90 N·m + 60 deg",
        "torque, 90 Nm then 60°, 90 Nm + 60°",
        "torque, 98nm, 98 Nm",
        "torque, snug, snug",
        "hex, 18, 18 mm",
        "hex, 11/16 in, 11/16 in",
        "hold, 18, 18 mm",
        "hold, hex 18, 18 mm",
        "hold, k6, 6 mm key",
        "hold, 6 key, 6 mm key",
        "hold, key 6 mm, 6 mm key",
        "thread, M12x1.25, M12x1.25",
    })
    void whatIsTyped_isShownAgainInFull(String key, String typed, String shown) {
        Piece said = METRIC.said(key, typed);
        assertThat(CardWords.typed(key, said)).isEqualTo(shown);
        assertThat(METRIC.said(key, shown)).as("and means the same again").isEqualTo(said);
    }

    @Test
    void aBareNumber_isInTheGaragesOwnUnit() {
        assertThat(new CardWords("lbf·ft").said("torque", "72")).isEqualTo(Piece.Text.of("72 lbf·ft"));
    }

    @Test
    void whatNobodyKnows_isSaidToBeUnknown() {
        assertThat(METRIC.said("torque", "?")).isEqualTo(Piece.NOTHING);
        assertThat(METRIC.said("hex", "Not known")).isEqualTo(Piece.NOTHING);
    }

    private static CardCheck check(String torque, String thread, String grade) {
        return CardCheck.of(Map.of("torque", torque, "thread", thread, "class", grade), METRIC);
    }

    @Test
    void aTorque_isHeldAgainstItsThreadAndClass() {
        assertThat(check("98", "M12x1.25", "10.9").doubtful()).isFalse();
        assertThat(check("98", "M12x1.25", "10.9").said()).startsWith("98 N·m (72 lbf·ft)");
        assertThat(check("980", "M12x1.25", "10.9").doubtful()).isTrue();
        assertThat(check("20+90", "M12x1.25", "10.9").said()).contains("then an angle");
    }

    @Test
    void withoutThread_itIsShownInBothUnits_andNotJudged() {
        assertThat(check("98", "", "").said()).contains("98 N·m (72 lbf·ft)", "Give thread and class");
        assertThat(check("", "M12", "8.8")).isEqualTo(CardCheck.NOTHING);
        assertThat(check("twelve", "M12", "8.8").doubtful()).isTrue();
        assertThat(check("0", "", "").said()).contains("more than 0");
        assertThat(check("-5", "M12", "8.8").doubtful()).isTrue();
    }
}
