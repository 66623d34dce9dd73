package putback.tightening;

import java.util.ArrayList;
import java.util.List;

/**
 * Which diameters and pitches there are: the choice a standard makes, which no formula gives. The pitch named first is
 * the coarse one, where there is one.
 */
final class ThreadSizes {
    /** ISO 261, 3 to 39 mm; M21, M23 and the like are not in it. From memory of the standard, checked row by row. */
    private static final String[] ISO_261 = {
        "3 0.5 0.35",
        "3.5 0.6 0.35",
        "4 0.7 0.5",
        "4.5 0.75 0.5",
        "5 0.8 0.5",
        "5.5 - 0.5",
        "6 1 0.75",
        "7 1 0.75",
        "8 1.25 1 0.75",
        "9 1.25 1 0.75",
        "10 1.5 1.25 1 0.75",
        "11 1.5 1 0.75",
        "12 1.75 1.5 1.25 1",
        "14 2 1.5 1.25 1",
        "15 - 1.5 1",
        "16 2 1.5 1",
        "17 - 1.5 1",
        "18 2.5 2 1.5 1",
        "20 2.5 2 1.5 1",
        "22 2.5 2 1.5 1",
        "24 3 2 1.5 1",
        "25 - 2 1.5 1",
        "26 - 1.5",
        "27 3 2 1.5 1",
        "28 - 2 1.5 1",
        "30 3.5 3 2 1.5 1",
        "32 - 2 1.5",
        "33 3.5 3 2 1.5",
        "35 - 1.5",
        "36 4 3 2 1.5",
        "38 - 1.5",
        "39 4 3 2 1.5"
    };

    /** ASME B1.1: size, then threads to the inch of UNC, UNF and of special pairings in use. */
    private static final String[] UNIFIED = {
        "4 40 48",
        "5 40 44",
        "6 32 40",
        "8 32 36",
        "10 24 32",
        "12 24 28",
        "1/4 20 28",
        "5/16 18 24",
        "3/8 16 24",
        "7/16 14 20",
        "1/2 13 20",
        "9/16 12 18",
        "5/8 11 18",
        "3/4 10 16",
        "7/8 9 14",
        "1 8 12 14",
        "1-1/8 7 12",
        "1-1/4 7 12",
        "1-3/8 6 12",
        "1-1/2 6 12"
    };

    private ThreadSizes() {}

    /** The pitches of a metric diameter, mm, the coarse one first and NaN where it has none; empty when there is no such size. */
    static List<Double> metricPitches(double diameterMm) {
        String start = ThreadText.plain(diameterMm) + " ";
        for (String row : ISO_261) {
            if (row.startsWith(start)) {
                List<Double> pitches = new ArrayList<>();
                for (String cell : row.substring(start.length()).split(" ", -1)) {
                    pitches.add(cell.equals("-") ? Double.NaN : Double.parseDouble(cell));
                }
                return pitches;
            }
        }
        return List.of();
    }

    /** The metric sizes next below and next above a diameter that is none, as {@code M12 and M14}. */
    static String metricNear(double diameterMm) {
        String below = "";
        for (String row : ISO_261) {
            String size = row.substring(0, row.indexOf(' '));
            if (Double.parseDouble(size) > diameterMm) {
                return below.isEmpty() ? "M" + size : below + " and M" + size;
            }
            below = "M" + size;
        }
        return below;
    }

    /** Threads to the inch of a unified size: UNC, UNF, then others; empty when there is no such size. */
    static List<Integer> threadsPerInch(String size) {
        for (String row : UNIFIED) {
            String[] cells = row.split(" ", -1);
            if (cells[0].equals(size)) {
                List<Integer> counts = new ArrayList<>();
                for (int i = 1; i < cells.length; i++) {
                    counts.add(Integer.valueOf(cells[i]));
                }
                return counts;
            }
        }
        return List.of();
    }
}
