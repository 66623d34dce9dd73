package putback.app.text;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import putback.angles.linkage.Adjustment;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Travel;
import putback.angles.linkage.WheelPosition;

/** A wheel through its travel, for a person. */
public final class TravelText {
    private static final double NOTHING_MM = 0.005;

    private TravelText() {}

    /** A table, then what to shift and turn. */
    public static String of(Corner corner, Travel travel, @Nullable Adjustment adjustment) {
        StringBuilder text = new StringBuilder();
        text.append(corner.right() ? "Right" : "Left")
                .append(" wheel, degrees and mm; toe in, top out, top rearward positive.\n\n");
        if (!travel.positions().isEmpty()) {
            text.append(" travel  camber    toe caster    SAI  incl.   scrub   trail half-track  strut\n");
        }
        for (WheelPosition wheel : travel.positions()) {
            text.append(String.format(
                    Locale.ROOT,
                    "%7.1f %7.3f %6.3f %6.3f %6.3f %6.2f %7.2f %7.2f %10.2f %6s\n",
                    wheel.travelMm(),
                    plain(wheel.camberDeg()),
                    plain(wheel.toeDeg()),
                    plain(wheel.casterDeg()),
                    wheel.saiDeg(),
                    wheel.includedDeg(),
                    wheel.scrubMm(),
                    wheel.trailMm(),
                    wheel.halfTrackMm(),
                    wheel.strutMm() == null ? "-" : String.format(Locale.ROOT, "%.1f", wheel.strutMm())));
        }
        if (adjustment != null) {
            adjusting(text.append('\n'), adjustment);
        }
        return text.toString();
    }

    /** Without the sign of a zero. */
    private static double plain(double value) {
        return Math.abs(value) < 5e-4 ? 0 : value;
    }

    private static void adjusting(StringBuilder text, Adjustment adjustment) {
        Double bolt = adjustment.boltShiftMm();
        if (bolt != null) {
            text.append(
                    Math.abs(bolt) < NOTHING_MM
                            ? "Leave the bolted joint of strut and carrier as it is.\n"
                            : String.format(
                                    Locale.ROOT,
                                    "%s of strut and carrier by %.2f mm, wheel top %s.\n",
                                    adjustment.isBeyondHoles()
                                            ? "It would take a shift at the bolted joint"
                                            : "Shift the bolted joint",
                                    Math.abs(bolt),
                                    bolt > 0 ? "outboard" : "inboard"));
        }
        Double rod = adjustment.rodMm();
        if (rod != null) {
            text.append(Math.abs(rod) < NOTHING_MM ? "Leave the track rod as it is.\n" : turning(rod, adjustment));
        }
        text.append(String.format(
                Locale.ROOT,
                "Camber %s from %.2f to %.2f deg, toe from %.2f to %.2f deg.\n",
                adjustment.isBeyondHoles() ? "would go" : "goes",
                plain(adjustment.before().camberDeg()),
                plain(adjustment.after().camberDeg()),
                plain(adjustment.before().toeDeg()),
                plain(adjustment.after().toeDeg())));
        for (String doubt : adjustment.doubts()) {
            RowText.wrapped(text, "", doubt);
        }
    }

    private static String turning(double rod, Adjustment adjustment) {
        Double turns = adjustment.rodTurns();
        return String.format(
                Locale.ROOT,
                "Make the track rod %.2f mm %s%s.\n",
                Math.abs(rod),
                rod > 0 ? "longer" : "shorter",
                turns == null ? "" : String.format(Locale.ROOT, ": %.2f turns", Math.abs(turns)));
    }
}
