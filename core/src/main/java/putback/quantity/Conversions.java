package putback.quantity;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import systems.uom.common.USCustomary;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.Units;

/**
 * Conversions to the coherent unit of a kind, by the units library. Loaded only when something is written in another
 * unit, since loading it takes longer than the rest of a command.
 */
final class Conversions {
    private static final Unit<?> MILLIMETRE = MetricPrefix.MILLI(Units.METRE);
    private static final Unit<?> NEWTON_METRE = Units.NEWTON.multiply(Units.METRE);

    /** Standard gravity, 9.80665 m/s2, exact by definition. */
    private static final Unit<?> GRAVITY =
            Units.METRE_PER_SQUARE_SECOND.multiply(980_665).divide(100_000);

    private static final Unit<?> POUND_FORCE = USCustomary.POUND.multiply(GRAVITY);
    private static final Map<Symbol, UnitConverter> TO_COHERENT = converters();

    private Conversions() {}

    /** Exact where the result ends as a decimal, else to 34 digits. */
    static BigDecimal toCoherent(BigDecimal number, Symbol symbol) {
        UnitConverter converter = TO_COHERENT.get(symbol);
        if (converter == null) {
            throw new IllegalArgumentException(symbol + " needs no conversion");
        }
        Number converted = converter.convert((Number) number);
        return converted instanceof RationalNumber rational
                ? rational.bigDecimalValue()
                : new BigDecimal(converted.toString());
    }

    private static Map<Symbol, UnitConverter> converters() {
        Map<Symbol, UnitConverter> converters = new EnumMap<>(Symbol.class);
        converters.put(Symbol.POUND_FOOT, between(POUND_FORCE.multiply(USCustomary.FOOT), NEWTON_METRE));
        converters.put(Symbol.POUND_INCH, between(POUND_FORCE.multiply(USCustomary.INCH), NEWTON_METRE));
        converters.put(
                Symbol.KILOGRAM_FORCE_METRE,
                between(Units.KILOGRAM.multiply(GRAVITY).multiply(Units.METRE), NEWTON_METRE));
        converters.put(Symbol.CENTIMETRE, between(MetricPrefix.CENTI(Units.METRE), MILLIMETRE));
        converters.put(Symbol.METRE, between(Units.METRE, MILLIMETRE));
        converters.put(Symbol.INCH, between(USCustomary.INCH, MILLIMETRE));
        converters.put(Symbol.MILE, between(USCustomary.MILE, MetricPrefix.KILO(Units.METRE)));
        converters.put(Symbol.RADIAN, between(Units.RADIAN, USCustomary.DEGREE_ANGLE));
        converters.put(Symbol.SECOND, between(Units.SECOND, Units.MINUTE));
        converters.put(Symbol.HOUR, between(Units.HOUR, Units.MINUTE));
        converters.put(Symbol.POUND_FORCE, between(POUND_FORCE, Units.NEWTON));
        converters.put(Symbol.POUND, between(USCustomary.POUND, Units.KILOGRAM));
        return converters;
    }

    private static UnitConverter between(Unit<?> from, Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (javax.measure.IncommensurableException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
