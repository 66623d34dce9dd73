package putback.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.Random;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

class ConversionTest {
    /** One unit of the last digit of a double, relative. */
    private static final double LAST_DIGIT = 3e-16;

    /**
     * Validation. Source S27: US Army TM 10-5430-232-12&P, Table I-1, pound-feet to whole newton metres; allowed: the 1
     * N·m that the table is rounded to. Its row 1820 is a misprint and left out (the sister table prints 2000 = 2712).
     */
    @ParameterizedTest
    @CsvSource({"350, 475", "400, 542", "800, 1085", "1000, 1356", "1280, 1736", "1440, 1953", "2000, 2712"})
    void pound_feet_as_the_army_table_prints_them(int poundFeet, double newtonMetres) {
        assertThat(torque(poundFeet + " lbf·ft")).isCloseTo(newtonMetres, within(1.0));
    }

    /** Validation. Source S27: US Army TM 10-5430-232-12&P, Table I-2; allowed: the 0.01 N·m that it is rounded to. */
    @ParameterizedTest
    @CsvSource({"3.5, 0.4", "6.5, 0.73", "14, 1.58", "18, 2.03", "50, 5.65", "90, 10.17"})
    void pound_inches_as_the_army_table_prints_them(String poundInches, double newtonMetres) {
        assertThat(torque(poundInches + " lbf·in")).isCloseTo(newtonMetres, within(0.01));
    }

    /** Validation. Source S38: a transducer maker's page of torque units; allowed: half of the last digit printed. */
    @ParameterizedTest
    @CsvSource({"1 lbf·ft, 1.355818, 5e-7", "1 lbf·in, 0.11298483, 5e-9", "1 kgf·m, 9.80665, 1e-15"})
    void factors_as_a_maker_of_transducers_prints_them(String text, double newtonMetres, double allowed) {
        assertThat(torque(text)).isCloseTo(newtonMetres, within(allowed));
    }

    /** Exact by definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, gn = 9.80665 m/s2, multiplied out as decimals. */
    @Test
    void a_pound_foot_is_the_product_of_its_definitions() {
        BigDecimal poundForce = new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665"));
        BigDecimal poundFoot = poundForce.multiply(new BigDecimal("0.3048"));
        assertThat(Quantities.parse("1 lbf·ft", Kind.TORQUE))
                .isEqualTo(new Parsed.Value<>(poundFoot.stripTrailingZeros()));
        assertThat(Torque.NEWTON_METRES_PER_POUND_FOOT).isEqualTo(poundFoot.doubleValue());
        assertThat(Force.NEWTONS_PER_POUND_FORCE).isEqualTo(poundForce.doubleValue());
    }

    @Test
    void our_conversions_are_those_of_the_units_library() {
        Unit<?> gravity = Units.METRE_PER_SQUARE_SECOND.multiply(980_665).divide(100_000);
        Unit<?> poundForce = USCustomary.POUND.multiply(gravity);
        Unit<?> newtonMetre = Units.NEWTON.multiply(Units.METRE);
        Unit<?> millimetre = MetricPrefix.MILLI(Units.METRE);
        agree("lbf·ft", Kind.TORQUE, poundForce.multiply(USCustomary.FOOT), newtonMetre);
        agree("lbf·in", Kind.TORQUE, poundForce.multiply(USCustomary.INCH), newtonMetre);
        agree("kgf·m", Kind.TORQUE, Units.KILOGRAM.multiply(gravity).multiply(Units.METRE), newtonMetre);
        agree("N·m", Kind.TORQUE, newtonMetre, newtonMetre);
        agree("in", Kind.LENGTH, USCustomary.INCH, millimetre);
        agree("cm", Kind.LENGTH, MetricPrefix.CENTI(Units.METRE), millimetre);
        agree("m", Kind.LENGTH, Units.METRE, millimetre);
        agree("mi", Kind.DISTANCE, USCustomary.MILE, MetricPrefix.KILO(Units.METRE));
        agree("rad", Kind.ANGLE, Units.RADIAN, USCustomary.DEGREE_ANGLE);
        agree("s", Kind.TIME, Units.SECOND, Units.MINUTE);
        agree("h", Kind.TIME, Units.HOUR, Units.MINUTE);
        agree("lbf", Kind.FORCE, poundForce, Units.NEWTON);
        agree("kN", Kind.FORCE, MetricPrefix.KILO(Units.NEWTON), Units.NEWTON);
        agree("lb", Kind.MASS, USCustomary.POUND, Units.KILOGRAM);
    }

    private static void agree(String symbol, Kind kind, Unit<?> from, Unit<?> to) {
        UnitConverter library = converter(from, to);
        for (long seed = 1; seed <= 200; seed++) {
            double value = Math.rint(new Random(seed).nextDouble() * 1e7) / 1e4;
            double theirs = library.convert(value);
            double ours = ((Parsed.Value<BigDecimal>)
                            Quantities.parse(BigDecimal.valueOf(value).toPlainString() + symbol, kind))
                    .value()
                    .doubleValue();
            assertThat(ours)
                    .as("%s %s, seed %d", value, symbol, seed)
                    .isCloseTo(theirs, within(Math.abs(theirs) * LAST_DIGIT * 2));
        }
    }

    private static UnitConverter converter(Unit<?> from, Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (javax.measure.IncommensurableException impossible) {
            throw new AssertionError(impossible);
        }
    }

    /** The units library takes N·m for compatible with J; our kinds do not. */
    @Test
    void energy_is_no_torque_although_the_units_library_thinks_so() {
        assertThat(Units.NEWTON.multiply(Units.METRE).isCompatible(Units.JOULE)).isTrue();
        assertThat(Torque.parse("90 J")).isInstanceOf(Parsed.Refused.class);
    }

    /** Loading the units library takes longer than the rest of a command, so it must not happen without need. */
    @Test
    void coherent_units_are_read_without_the_units_library() throws Exception {
        URL classes = Torque.class.getProtectionDomain().getCodeSource().getLocation();
        try (URLClassLoader bare = new URLClassLoader(new URL[] {classes}, ClassLoader.getPlatformClassLoader())) {
            String[][] coherent = {
                {"Torque", "98 N·m"},
                {"Length", "18 mm"},
                {"Angle", "90 deg"},
                {"Minutes", "3 min"},
                {"Force", "50 kN"},
                {"Force", "5 N"},
                {"Mass", "1 kg"},
                {"Stress", "640 MPa"},
                {"SpringRate", "28 N/mm"},
                {"Distance", "1 km"}
            };
            for (String[] each : coherent) {
                Object parsed = bare.loadClass("putback.quantity." + each[0])
                        .getMethod("parse", String.class)
                        .invoke(null, each[1]);
                assertThat(parsed.getClass().getSimpleName()).as(each[1]).isEqualTo("Value");
            }
        }
    }

    private static double torque(String text) {
        return Torque.parse(text)
                .or(new Torque(Double.MAX_VALUE), message -> {})
                .newtonMetres();
    }
}
