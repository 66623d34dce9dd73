package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import putback.quantity.Torque;
import putback.tightening.ReadingWindow;

class HouseStyleTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);

    @Test
    void money_hasItsSignWhereTheGarageWritesIt() {
        BigDecimal amount = new BigDecimal("92.00");
        assertThat(HouseStyle.PLAIN.money(amount)).isEqualTo("92.00");
        assertThat(Invented.EURO.money(amount)).isEqualTo("92,00\u00a0€");
        assertThat(Invented.DOLLAR.money(amount)).isEqualTo("$92.00");
        assertThat(Invented.DOLLAR.money(amount.negate())).isEqualTo("-$92.00");
        HouseStyle letters = new HouseStyle(PaperSize.A4, false, DateOrder.YEAR_MONTH_DAY, false, false, "CHF", true);
        assertThat(letters.money(amount)).isEqualTo("CHF\u00a092.00");
    }

    @Test
    void dates_standInTheGaragesOrder() {
        assertThat(HouseStyle.PLAIN.date(DAY)).isEqualTo("2026-03-09");
        assertThat(Invented.EURO.date(DAY)).isEqualTo("09.03.2026");
        assertThat(Invented.DOLLAR.date(DAY)).isEqualTo("03/09/2026");
    }

    @Test
    void torque_hasBothUnitsTheGaragesOwnFirst() {
        Torque torque = new Torque(9.5);
        assertThat(HouseStyle.PLAIN.torque(torque)).isEqualTo("9.5 N·m (7 lbf·ft)");
        assertThat(Invented.EURO.torque(torque)).isEqualTo("9,5 N·m (7 lbf·ft)");
        assertThat(Invented.DOLLAR.torque(torque)).isEqualTo("7 lbf·ft (9.5 N·m)");
    }

    @Test
    void window_hasBothUnitsTheGaragesOwnFirst() {
        ReadingWindow window = new ReadingWindow(new Torque(99), new Torque(121));
        assertThat(HouseStyle.PLAIN.window(window)).isEqualTo("99 to 121 N·m (74 to 89 lbf·ft)");
        assertThat(Invented.DOLLAR.window(window)).isEqualTo("74 to 89 lbf·ft (99 to 121 N·m)");
    }

    @Test
    void distance_isInMilesWhereTheGarageDrivesThem() {
        assertThat(Invented.EURO.about(100)).isEqualTo("100 km");
        assertThat(Invented.DOLLAR.about(100)).isEqualTo("60 mi");
        assertThat(Invented.DOLLAR.distanceUnit()).isEqualTo("mi");
    }

    @Test
    void sentences_getTheDecimalMarkAtFiguresWithAUnitOnly() {
        assertThat(Invented.EURO.words("Undo 2 x M12x1.25, class 10.9, tight to 9.5 N·m; takes 1.5 min, gap 0.8 mm."))
                .isEqualTo("Undo 2 x M12x1.25, class 10.9, tight to 9,5 N·m; takes 1,5 min, gap 0,8 mm.");
        assertThat(Invented.EURO.words("Thread M10x1.5 mm")).isEqualTo("Thread M10x1.5 mm");
        assertThat(HouseStyle.PLAIN.words("9.5 N·m")).isEqualTo("9.5 N·m");
    }
}
