package putback.store.sheets;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.quantity.Shown;
import putback.quantity.Torque;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Text;
import putback.tightening.toolbox.TorqueWrench;
import putback.tightening.toolbox.Upkeep;

/** Reads one torque wrench of a toolbox. */
record WrenchReader(Faults faults) {
    private static final int LONGEST_ID = 16;
    private static final BigDecimal MOST_PERCENT = BigDecimal.valueOf(20);
    private static final double MOST_NM = 5000;

    /** Null, with the fault told, where it has no range. */
    @Nullable
    TorqueWrench wrench(String id, Entries values, Place at) {
        Fields wrench = Fields.of(values, at, "wrench " + id, Keys.WRENCH, faults);
        if (!isId(id)) {
            faults.add(at, "\"" + Shown.text(id) + "\": a wrench is called by letters, digits and hyphens, such as W2");
        }
        wrench.require("range");
        List<Torque> range = range(wrench);
        Torque step = step(wrench);
        Double percent = wrench.amounts().positive("deviation", MOST_PERCENT);
        Length drive = wrench.amounts().length("drive", false);
        Length length = wrench.amounts().length("length", false);
        Upkeep upkeep = upkeep(wrench);
        if (range.size() != 2) {
            return null;
        }
        double usual = TorqueWrench.usualDeviation(range.get(1));
        if (step != null && step.newtonMetres() > range.get(1).newtonMetres()) {
            wrench.fault("step", step.text() + " between two marks is more than its highest value");
        }
        return new TorqueWrench(
                id,
                wrench.text("name", ""),
                range.get(0),
                range.get(1),
                step,
                percent == null ? usual : percent / 100,
                percent != null,
                drive,
                length,
                wrench.flag("left-hand"),
                wrench.flag("angle"),
                upkeep);
    }

    private static Upkeep upkeep(Fields wrench) {
        BigDecimal operations = wrench.amounts()
                .number("operations", BigDecimal.ZERO, BigDecimal.valueOf(ToolboxReader.MOST_OPERATIONS));
        if (operations != null && operations.stripTrailingZeros().scale() > 0) {
            wrench.fault("operations", operations.toPlainString() + " is not a whole number");
        }
        return new Upkeep(
                date(wrench, "calibrated"), operations == null ? 0 : operations.intValue(), date(wrench, "dropped"));
    }

    private static @Nullable LocalDate date(Fields wrench, String key) {
        Text text = wrench.single(key);
        if (text == null) {
            return null;
        }
        try {
            return LocalDate.parse(text.text());
        } catch (DateTimeException notOne) {
            wrench.fault(
                    key,
                    "\"" + Shown.text(text.text())
                            + "\" is not a day; write year, month and day, such as 2026-02-11, or leave it out");
            return null;
        }
    }

    private static List<Torque> range(Fields wrench) {
        List<Node> items = wrench.lists().items("range");
        if (!wrench.has("range")) {
            return List.of();
        }
        Torque low = items.size() == 2 ? torque(wrench, items.get(0)) : null;
        Torque high = items.size() == 2 ? torque(wrench, items.get(1)) : null;
        if (items.size() != 2) {
            wrench.fault("range", "write its lowest and its highest mark, such as [40 N·m, 200 N·m]");
        }
        if (low == null || high == null) {
            return List.of();
        }
        boolean possible =
                low.newtonMetres() > 0 && low.newtonMetres() < high.newtonMetres() && high.newtonMetres() <= MOST_NM;
        if (!possible) {
            wrench.fault(
                    "range",
                    low.text() + " to " + high.text() + " is not possible; the lowest mark is more than 0 and less than"
                            + " the highest, and that at most " + (int) MOST_NM + " N·m");
        }
        return possible ? List.of(low, high) : List.of();
    }

    private static @Nullable Torque torque(Fields wrench, Node item) {
        Text text = wrench.lists().asText(item, "range");
        return text == null ? null : wrench.amounts().limit(text, "range");
    }

    private static @Nullable Torque step(Fields wrench) {
        Text text = wrench.single("step");
        Torque step = text == null ? null : wrench.amounts().limit(text, "step");
        if (step != null && step.newtonMetres() == 0) {
            wrench.fault("step", "between two marks there is more than 0; leave it out where it is set to any figure");
            return null;
        }
        return step;
    }

    private static boolean isId(String id) {
        if (id.isEmpty() || id.length() > LONGEST_ID) {
            return false;
        }
        for (int i = 0; i < id.length(); i++) {
            char c = id.charAt(i);
            boolean plain = c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-';
            if (!plain) {
                return false;
            }
        }
        return true;
    }
}
