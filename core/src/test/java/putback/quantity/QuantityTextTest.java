package putback.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {
    @ParameterizedTest
    @CsvSource({
        "98, 98 N·m (72 lbf·ft)",
        "250, 250 N·m (184 lbf·ft)",
        "10, 10 N·m (7.4 lbf·ft)",
        "1.5, 1.5 N·m (1.11 lbf·ft)",
        "97.61888922798608, 97.6 N·m (72 lbf·ft)",
        "0, 0 N·m (0 lbf·ft)",
        "1000, 1000 N·m (738 lbf·ft)",
        "-1, -1 N·m (-0.74 lbf·ft)"
    })
    void a_torque_is_shown_in_both_units(double newtonMetres, String shown) {
        assertThat(new Torque(newtonMetres).text()).isEqualTo(shown);
    }

    @Test
    void the_garage_may_put_pound_feet_first() {
        assertThat(new Torque(98).textPoundFeetFirst()).isEqualTo("72 lbf·ft (98 N·m)");
    }

    @Test
    void the_limits_of_a_window_are_rounded_inward() {
        assertThat(Torque.windowText(new Torque(92), new Torque(104))).isEqualTo("92 to 104 N·m (68 to 76 lbf·ft)");
        assertThat(Torque.windowText(new Torque(88.2), new Torque(107.8))).isEqualTo("89 to 107 N·m (66 to 79 lbf·ft)");
    }

    @Test
    void a_narrow_window_keeps_its_decimals() {
        assertThat(Torque.windowText(new Torque(9), new Torque(11))).isEqualTo("9 to 11 N·m (6.7 to 8.1 lbf·ft)");
        assertThat(Torque.windowText(new Torque(98), new Torque(99))).isEqualTo("98 to 99 N·m (72.3 to 73 lbf·ft)");
    }

    @ParameterizedTest
    @CsvSource({
        "18, 18 mm",
        "5.5, 5.5 mm",
        "14.2875, 9/16 in",
        "12.7, 1/2 in",
        "20.6375, 13/16 in",
        "28.575, 1 1/8 in",
        "25.4, 1 in",
        "13.49375, 17/32 in",
        "17.3, 17.3 mm",
        "-14.2875, -14.29 mm"
    })
    void a_tool_is_called_by_the_size_it_was_made_to(double millimetres, String size) {
        assertThat(new Length(millimetres).acrossFlats()).isEqualTo(size);
    }

    @Test
    void other_quantities_are_shown_plainly() {
        assertThat(new Length(310).text()).isEqualTo("310 mm (12.2 in)");
        assertThat(new Length(25.4).text()).isEqualTo("25.4 mm (1 in)");
        assertThat(new Angle(90).text()).isEqualTo("90°");
        assertThat(new Angle(-0.125).text()).isEqualTo("-0.12°");
        assertThat(new Force(50_000).text()).isEqualTo("50 kN (11240 lbf)");
    }

    @Test
    void exactly_half_goes_to_the_even_digit() {
        assertThat(Rounding.nearest(0.125, 2)).isEqualTo("0.12");
        assertThat(Rounding.nearest(0.375, 2)).isEqualTo("0.38");
        assertThat(Rounding.nearest(2.5, 0)).isEqualTo("2");
    }

    @Test
    void noise_of_binary_arithmetic_does_not_move_a_limit() {
        assertThat(Rounding.up(0.1 + 0.2, 1)).isEqualTo("0.3");
        assertThat(Rounding.down(98 * 1.1 - 0.8, 0)).isEqualTo("107");
        assertThat(Rounding.down(Math.nextDown(107.0), 0)).isEqualTo("107");
    }

    @Test
    void a_quantity_that_is_not_finite_is_a_broken_program() {
        assertThatThrownBy(() -> new Torque(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Length(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }
}
