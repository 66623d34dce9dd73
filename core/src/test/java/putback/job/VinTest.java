package putback.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.quantity.Parsed;

class VinTest {
    private static Vin vin(String text) {
        return ((Parsed.Value<Vin>) Vin.read(text)).value();
    }

    /**
     * Sources: 49 CFR 565.15(c), Table V, "Calculation of a check digit" (sum 411, remainder 4); NHTSA, Outline for New
     * Manufacturers, its example of a check digit (sum 314, remainder 6).
     */
    @ParameterizedTest
    @CsvSource({"1G4AH59H45G118341,4", "1J9RP1A36A1644345,6"})
    void checkDigit_isThatOfThePublishedExamples(String text, char digit) {
        assertThat(vin(text).checkDigit()).isEqualTo(digit);
        assertThat(vin(text).agrees()).isTrue();
        assertThat(vin(text).doubt()).isEmpty();
    }

    /** 49 CFR 565.15(c)(4): the remainder 10 is written X. Seventeen ones sum to 89, remainder 1; the X is found by search. */
    @Test
    void remainderTen_isAnX() {
        assertThat(vin("11111111111111111").agrees()).isTrue();
        for (char last = '0'; last <= '9'; last++) {
            Vin vin = vin("1111111111111111" + last);
            int rest = (89 - 2 + 2 * (last - '0')) % 11;
            assertThat(vin.checkDigit()).isEqualTo(rest == 10 ? 'X' : (char) ('0' + rest));
        }
    }

    @Test
    void changingOnePlace_isNoticed() {
        String sound = "1G4AH59H45G118341";
        for (int place = 0; place < 17; place++) {
            if (place != 8) {
                char other = sound.charAt(place) == '1' ? '2' : '1';
                String wrong = sound.substring(0, place) + other + sound.substring(place + 1);
                assertThat(vin(wrong).checkDigit() == '4')
                        .as("place %d", place + 1)
                        .isEqualTo(difference(sound.charAt(place), other, place) % 11 == 0);
            }
        }
    }

    private static int difference(char one, char other, int place) {
        int[] weights = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
        return weights[place] * (number(one) - number(other));
    }

    private static int number(char c) {
        return c <= '9' ? c - '0' : "ABCDEFGH".indexOf(c) + 1;
    }

    @Test
    void spacesAndSmallLetters_doNoHarm() {
        assertThat(vin("1g4 ah59h-45g118341").text()).isEqualTo("1G4AH59H45G118341");
    }

    @ParameterizedTest
    @CsvSource({
        "1G4AH59H45G11834,has 16 characters",
        "1G4AH59H45G1183411,has 18 characters",
        "IG4AH59H45G118341,maybe it is 1",
        "1G4AH59H45G11834O,maybe it is 0",
        "1G4AH59H45G11834!,only digits and letters",
        "1G4AH59H45G11834é,only digits and letters"
    })
    void whatCannotBeOne_isRefusedInWords(String text, String said) {
        assertThat(Vin.read(text).refusal()).contains(said);
    }

    @Test
    void europeanNumberWithoutCheckDigit_isDoubtedNotRefused() {
        assertThat(vin("WZZZZZ1JZ3W386752").doubt()).contains("may be right");
        assertThat(vin("1G4AH59H55G118341").doubt()).contains("look at the number again");
    }
}
