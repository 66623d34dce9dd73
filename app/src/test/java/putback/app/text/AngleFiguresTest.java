package putback.app.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AngleFiguresTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.02 | (less than 1/16)",
                "0.05 | (less than 1/16)",
                "0.0625 | (1/16)",
                "0.07 | (about 1/16)",
                "0.09 | (between 1/16 and 1/8)",
                "0.125 | (1/8)",
                "0.13 | (about 1/8)",
                "0.5 | (1/2)",
                "0.57 | (about 9/16)",
                "1.95 | (about 1 15/16)",
                "2.98 | (about 3)"
            })
    void aTurn_isGivenAsTheFractionThatTheHandCanTurn(double turns, String said) {
        assertThat(AngleFigures.fraction(turns).strip()).isEqualTo(said);
    }

    @Test
    void whatIsSaidToBeAboutTheSame_isNeverAnEighthOfTheTurnOff() {
        Pattern about = Pattern.compile(" \\(about (?:(\\d+)(?: |(?=\\))))?(?:(\\d+)/(\\d+))?\\)");
        for (int thousandths = 1; thousandths < 4000; thousandths++) {
            double turns = thousandths / 1000.0;
            Matcher said = about.matcher(AngleFigures.fraction(turns));
            if (said.matches()) {
                double whole = said.group(1) == null ? 0 : Double.parseDouble(said.group(1));
                double part = said.group(2) == null
                        ? 0
                        : Double.parseDouble(said.group(2)) / Double.parseDouble(said.group(3));
                assertThat(Math.abs(whole + part - turns)).as("%s turns", turns).isLessThan(turns / 8);
            }
        }
    }

    @Test
    void wholeTurns_needNoFraction() {
        assertThat(AngleFigures.fraction(2)).isEmpty();
    }
}
