package putback.tightening;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Length;

/**
 * Which hexagons go with which thread: ISO 4014 and 4017 first, then DIN 931 and 933, flange heads (EN 1662, EN 1665),
 * the small Japanese series, structural bolts (EN 14399-4) and what is met on wheels, links and axles (common practice, no
 * source). The small flange, Japanese and wheel sizes are from memory. What a pipe union or a bleed nipple has, a bolt of
 * the same diameter has not: those sizes go with their own fine thread only (common practice, no source).
 *
 * <p>Source: ISO4014.
 */
public final class HexSizes {
    private static final String[] METRIC = {
        "3 5.5",
        "4 7",
        "5 8 7",
        "6 10 8",
        "7 11 10",
        "8 13 7 10 11 12",
        "10 16 12 13 14 15 17 18",
        "12 18 15 16 17 19 21 22",
        "14 21 18 19 20 22 24",
        "16 24 21 22 23 27",
        "18 27 24 30",
        "20 30 27 28 32",
        "22 34 27 30 32 36",
        "24 36 30 32 34 41",
        "27 41 36 46",
        "30 46 41 50",
        "33 50 46",
        "36 55 50 60",
        "39 60 55"
    };

    /** Unions of brake pipes and bleed nipples: diameter, pitch, then sizes. */
    private static final double[][] UNIONS = {{8, 1, 7, 8, 9, 10}, {10, 1, 10, 11, 12}, {12, 1, 13, 14}};

    /** ASME B18.2.1 hex cap screws, then heavy hex and wheel nuts; thread and sizes in sixteenths of an inch. */
    private static final int[][] INCH = {
        {4, 7, 6},
        {5, 8, 9},
        {6, 9, 10},
        {7, 10, 11, 12},
        {8, 12, 13, 14},
        {9, 13, 14},
        {10, 15, 17},
        {12, 18, 20},
        {14, 21, 23},
        {16, 24, 26},
        {18, 27, 29},
        {20, 30, 32},
        {22, 33, 35},
        {24, 36, 38}
    };

    private static final double PER_INCH = 16;

    /** Sockets fit within this. */
    private static final double NEAR_MM = 0.26;

    private HexSizes() {}

    /** Sizes across flats in mm that only a pipe union or a bleed nipple of this thread has; empty for other threads. */
    private static List<Double> ofUnions(ScrewThread thread) {
        List<Double> sizes = new ArrayList<>();
        for (double[] row : UNIONS) {
            if (!thread.series().isInch() && row[0] == thread.diameterMm() && row[1] == thread.pitchMm()) {
                for (int i = 2; i < row.length; i++) {
                    sizes.add(row[i]);
                }
            }
        }
        return sizes;
    }

    /** Sizes across flats in mm that are met on a thread, the standard one first; empty where none is known. */
    public static List<Double> across(ScrewThread thread) {
        List<Double> sizes = new ArrayList<>();
        if (thread.series().isInch()) {
            for (int[] row : INCH) {
                if (Math.abs(row[0] / PER_INCH * Length.MILLIMETRES_PER_INCH - thread.diameterMm()) < 1e-9) {
                    for (int i = 1; i < row.length; i++) {
                        sizes.add(row[i] / PER_INCH * Length.MILLIMETRES_PER_INCH);
                    }
                }
            }
            return sizes;
        }
        String start = ThreadText.plain(thread.diameterMm()) + " ";
        for (String row : METRIC) {
            if (row.startsWith(start)) {
                for (String cell : row.substring(start.length()).split(" ", -1)) {
                    sizes.add(Double.valueOf(cell));
                }
            }
        }
        return sizes;
    }

    /** What is odd about a hexagon on a thread, in a sentence; null when nothing is. */
    public static @Nullable String doubt(ScrewThread thread, Length hex) {
        List<Double> sizes = across(thread);
        if (sizes.isEmpty() || has(sizes, hex) || has(ofUnions(thread), hex)) {
            return null;
        }
        StringBuilder known = new StringBuilder();
        for (double size : sizes) {
            known.append(known.isEmpty() ? "" : ", ").append(new Length(size).acrossFlats());
        }
        return "a hexagon of " + hex.acrossFlats() + " does not go with " + thread.designation() + "; met on it: "
                + known + ", the first by " + standard(thread) + ". Measure it, or check the thread.";
    }

    /** How a hexagon goes with a thread, in a sentence; the doubt where it does not. */
    static String said(ScrewThread thread, Length hex) {
        String doubt = doubt(thread, hex);
        if (doubt != null) {
            return Character.toUpperCase(doubt.charAt(0)) + doubt.substring(1);
        }
        List<Double> sizes = across(thread);
        String head = "A hexagon of " + hex.acrossFlats();
        if (sizes.isEmpty()) {
            return head + " is held against nothing: no size is known for " + thread.designation() + ".";
        }
        if (has(sizes.subList(0, 1), hex)) {
            return head + " goes with " + thread.designation() + ", by " + standard(thread) + ".";
        }
        String usual = ", where " + standard(thread) + " has " + new Length(sizes.get(0)).acrossFlats() + ".";
        return has(sizes, hex)
                ? head + " is met on " + thread.designation() + usual
                : head + " is met on " + thread.designation() + " only at pipe unions and bleed nipples" + usual;
    }

    private static String standard(ScrewThread thread) {
        return thread.series().isInch() ? "ASME B18.2.1" : "ISO 4014";
    }

    private static boolean has(List<Double> sizes, Length hex) {
        for (double size : sizes) {
            if (Math.abs(size - hex.millimetres()) <= NEAR_MM) {
                return true;
            }
        }
        return false;
    }
}
