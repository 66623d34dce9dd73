package putback.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.StatedTorque;
import putback.quantity.Torque;
import putback.quantity.TorqueUnit;
import putback.tightening.FrictionSpan;
import putback.tightening.HexSizes;
import putback.tightening.Plausibility;
import putback.tightening.PropertyClass;
import putback.tightening.ScrewThread;

/** What cannot be right, or is odd, about the fastener of a joint. A sheet with doubts can still be planned. */
public final class Doubts {
    /** Where a sheet states no class, a torque is held against the ordinary ones from the weakest to the strongest. */
    private static final PropertyClass WEAKEST = PropertyClass.C8_8;

    private static final PropertyClass STRONGEST = PropertyClass.C12_9;

    /** Between the smallest bleed nipple and the largest axle nut there is a margin on both sides. */
    private static final double SMALLEST_HEX_MM = 3;

    private static final double LARGEST_HEX_MM = 100;

    private Doubts() {}

    /** Sentences for a person, none where nothing is to be said or too little is known. */
    public static List<String> of(Fastener fastener) {
        List<String> doubts = new ArrayList<>();
        Length hex = fastener.hex();
        if (hex != null && (hex.millimetres() < SMALLEST_HEX_MM || hex.millimetres() > LARGEST_HEX_MM)) {
            doubts.add("a hexagon of " + hex.acrossFlats() + " is met on no car; measure it again.");
        }
        String written = fastener.thread();
        if (written == null) {
            return doubts;
        }
        if (!(ScrewThread.parse(written) instanceof Parsed.Value<ScrewThread> read)) {
            doubts.add("thread " + ((Parsed.Refused<ScrewThread>) ScrewThread.parse(written)).message() + ".");
            return doubts;
        }
        ScrewThread thread = read.value();
        String odd = hex == null || !doubts.isEmpty() ? null : HexSizes.doubt(thread, hex);
        if (odd != null) {
            doubts.add(odd);
        }
        String wrong = ofTorque(thread, fastener);
        if (wrong != null) {
            doubts.add(wrong);
        }
        return doubts;
    }

    /** The one of them that says that the torque can hardly be right; null where nothing is to be said of it. */
    public static @Nullable String ofTorque(Fastener fastener) {
        String written = fastener.thread();
        return written != null && ScrewThread.parse(written) instanceof Parsed.Value<ScrewThread> read
                ? ofTorque(read.value(), fastener)
                : null;
    }

    private static @Nullable String ofTorque(ScrewThread thread, Fastener fastener) {
        Torque torque = torque(fastener.tightening());
        return torque != null && torque.newtonMetres() > 0
                ? wrong(thread, fastener, new StatedTorque(torque, TorqueUnit.NEWTON_METRE))
                : null;
    }

    private static @Nullable Torque torque(Tightening tightening) {
        if (tightening instanceof Tightening.TorqueThenAngle both) {
            return both.torque();
        }
        return tightening instanceof Tightening.ToTorque one ? one.torque() : null;
    }

    /** A torque before an angle may be small: only what is too much is told of it. */
    private static @Nullable String wrong(ScrewThread thread, Fastener fastener, StatedTorque stated) {
        String written = fastener.propertyClass();
        FrictionSpan span = span(fastener.condition());
        if (written == null) {
            Plausibility least = Plausibility.of(thread, WEAKEST, span, stated);
            Plausibility most = Plausibility.of(thread, STRONGEST, span, stated);
            boolean tooLittle = !least.isPlausible() && !isHigh(stated, least);
            boolean tooMuch = !most.isPlausible() && isHigh(stated, most);
            return tooMuch ? most.reason() : tooLittle && !turned(fastener) ? least.reason() : null;
        }
        if (!(PropertyClass.parse(written) instanceof Parsed.Value<PropertyClass> grade)) {
            return "class " + ((Parsed.Refused<PropertyClass>) PropertyClass.parse(written)).message() + ".";
        }
        if (Plausibility.stands(thread, grade.value(), span, stated)) {
            return null;
        }
        Plausibility judged = Plausibility.of(thread, grade.value(), span, stated);
        return turned(fastener) && !isHigh(stated, judged) ? null : judged.reason();
    }

    private static boolean turned(Fastener fastener) {
        return fastener.tightening() instanceof Tightening.TorqueThenAngle;
    }

    private static boolean isHigh(StatedTorque stated, Plausibility judged) {
        return stated.torque().newtonMetres() > judged.high().newtonMetres();
    }

    private static FrictionSpan span(Condition condition) {
        return switch (condition) {
            case DRY -> FrictionSpan.DRY;
            case OILED -> FrictionSpan.OILED;
            case LOCKER -> FrictionSpan.LOCKER;
        };
    }
}
