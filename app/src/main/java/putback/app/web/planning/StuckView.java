package putback.app.web.planning;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.text.RowReport;
import putback.labour.price.Assumed;
import putback.labour.seized.LoneFastener;
import putback.labour.seized.Nearby;
import putback.labour.seized.Refusal;
import putback.labour.seized.Row;
import putback.labour.seized.RustGrade;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.sheet.JointKind;
import putback.tightening.ScrewThread;

/**
 * A fastener that will not move, as the page asks about it.
 *
 * @param values what was typed or chosen, by name
 * @param near what was ticked as near
 * @param wrong what is wrong, by field
 * @param answer null where something is wrong, or nothing is asked yet
 */
public record StuckView(
        Map<String, String> values,
        List<Nearby> near,
        Map<String, String> wrong,
        @Nullable Answer answer) {
    private static final BigDecimal USUAL_RATE = new BigDecimal("60.00");
    private static final BigDecimal MOST = new BigDecimal("100000");

    private static final Map<JointKind, String> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put(JointKind.BOLT_NUT, "bolt with a nut");
        KINDS.put(JointKind.BOLT, "bolt in a thread or captive nut");
        KINDS.put(JointKind.NUT, "nut on a stud");
        KINDS.put(JointKind.SCREW, "screw");
        KINDS.put(JointKind.UNION, "union of a pipe or hose");
        KINDS.put(JointKind.TAPER, "taper with its nut");
        KINDS.put(JointKind.PRESS, "pressed in its bore");
    }

    /**
     * @param beforehand what to see to before the first attempt
     */
    public record Answer(List<String> beforehand, RowReport row) {}

    public StuckView {
        near = List.copyOf(near);
    }

    /** The value that was typed; empty where there is none. */
    public String value(String name) {
        return values.getOrDefault(name, "");
    }

    /** What is wrong with a field; empty where nothing is. */
    public String wrong(String name) {
        return wrong.getOrDefault(name, "");
    }

    public Map<JointKind, String> kinds() {
        return KINDS;
    }

    public List<String> grades() {
        return PriceView.grades();
    }

    public List<Refusal> refusals() {
        return List.of(Refusal.values());
    }

    /** How a person says which way it refuses. */
    public String said(Refusal refusal) {
        return switch (refusal) {
            case STUCK -> "it does not turn at all";
            case SPINS -> "stud, bolt or pipe turns with it";
            case ROUNDS -> "the hexagon rounds";
            case IN_BORE -> "the nut is off, bolt or taper stays in its bore";
            case SNAPPED -> "it snapped";
        };
    }

    public List<Nearby> all() {
        return List.of(Nearby.values());
    }

    /** How a person says what is near. */
    public String said(Nearby nearby) {
        return switch (nearby) {
            case HOSE -> "brake hose or pipe";
            case WIRE -> "wire or sensor";
            case RUBBER -> "gaiter or bush that is kept";
            case BEARING -> "bearing or ball joint that is kept";
            case GAS -> "gas-filled damper or strut";
            case SPRING -> "spring or bar under load";
            case AIRBAG -> "airbag or belt tensioner";
            case HIGH_VOLTAGE -> "high voltage";
            case TANK -> "fuel tank or line";
            case ALLOY -> "aluminium or magnesium";
            case TYRE -> "tyre on its rim";
            case SOLVENT -> "brake cleaner, still wet";
            case CAVITY -> "closed tube or cavity";
        };
    }

    public boolean isNear(Nearby nearby) {
        return near.contains(nearby);
    }

    static StuckView of(Map<String, String> typed, List<String> ticked) {
        Map<String, String> values = new LinkedHashMap<>();
        typed.forEach((name, value) -> values.put(name, value.strip()));
        List<Nearby> near = new ArrayList<>();
        for (Nearby one : Nearby.values()) {
            if (ticked.contains(one.word())) {
                near.add(one);
            }
        }
        return values.isEmpty() ? new StuckView(values, near, Map.of(), null) : new Asking(values, near).view();
    }

    /** Reads what was typed. */
    private record Asking(Map<String, String> values, List<Nearby> near, Map<String, String> wrong) {
        Asking(Map<String, String> values, List<Nearby> near) {
            this(values, near, new LinkedHashMap<>());
        }

        StuckView view() {
            JointKind kind = JointKind.BOLT_NUT;
            for (JointKind one : KINDS.keySet()) {
                kind = one.word().equals(values.get("kind")) ? one : kind;
            }
            LoneFastener fastener = new LoneFastener(
                    kind,
                    thread(),
                    rust(),
                    refusal(kind),
                    near,
                    !value("scrapped").isEmpty(),
                    amount("price", Assumed.FASTENER_PRICE, BigDecimal.ZERO),
                    amount("rate", USUAL_RATE, new BigDecimal("0.01")));
            Parsed<Row> answered = fastener.answer();
            if (wrong.isEmpty() && answered instanceof Parsed.Value<Row> row) {
                Answer answer = new Answer(fastener.beforehand(), RowReport.of(row.value()));
                return new StuckView(values, near, wrong, answer);
            }
            if (!(answered instanceof Parsed.Value<Row>)) {
                wrong.put("refuses", answered.refusal());
            }
            return new StuckView(values, near, wrong, null);
        }

        private String value(String name) {
            return values.getOrDefault(name, "");
        }

        private @Nullable ScrewThread thread() {
            if (value("thread").isEmpty()) {
                return null;
            }
            Parsed<ScrewThread> parsed = ScrewThread.parse(value("thread"));
            if (parsed instanceof Parsed.Value<ScrewThread> thread) {
                return thread.value();
            }
            wrong.put("thread", parsed.refusal());
            return null;
        }

        private @Nullable RustGrade rust() {
            String grade = value("rust");
            return grade.matches("[0-4]") ? RustGrade.values()[Integer.parseInt(grade)] : null;
        }

        /** The usual way where none is said. */
        private Refusal refusal(JointKind kind) {
            for (Refusal one : Refusal.values()) {
                if (one.word().equals(values.get("refuses"))) {
                    return one;
                }
            }
            return LoneFastener.refusals(kind).get(0);
        }

        private BigDecimal amount(String name, BigDecimal usual, BigDecimal least) {
            if (value(name).isEmpty()) {
                return usual;
            }
            Parsed<BigDecimal> parsed = PlainNumber.parse(value(name));
            if (parsed instanceof Parsed.Value<BigDecimal> amount
                    && amount.value().compareTo(least) >= 0
                    && amount.value().compareTo(MOST) <= 0) {
                return amount.value();
            }
            wrong.put(
                    name,
                    parsed instanceof Parsed.Value<BigDecimal>
                            ? "it may be from " + least + " to " + MOST + "; write it like " + usual
                            : parsed.refusal());
            return usual;
        }
    }
}
