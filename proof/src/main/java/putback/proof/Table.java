package putback.proof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A published table: its citation in the first line, its columns in the second.
 *
 * @param citation document, page or table
 * @param columns names
 * @param rows as printed
 */
record Table(String citation, List<String> columns, List<List<String>> rows) {
    /** Of the room of tightening. */
    static Table of(String name) {
        return in("tightening", name);
    }

    static Table in(String room, String name) {
        List<String> lines = Files.text(room + "/" + name).lines().toList();
        List<List<String>> rows = new ArrayList<>();
        for (String line : lines.subList(2, lines.size())) {
            rows.add(List.of(line.split(",", -1)));
        }
        return new Table(lines.get(0).substring(2), List.of(lines.get(1).split(",", -1)), rows);
    }

    /** Whether there is a figure: a dash stands where the standard has none. */
    static boolean isPrinted(String cell) {
        return !cell.equals("-");
    }

    /** Half a unit of the last digit that is printed. */
    static BigDecimal halfDigit(String cell) {
        return BigDecimal.ONE.movePointLeft(new BigDecimal(cell).scale()).divide(BigDecimal.valueOf(2));
    }
}
