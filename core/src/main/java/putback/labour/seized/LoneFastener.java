package putback.labour.seized;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.sheet.JointKind;
import putback.tightening.HexSizes;
import putback.tightening.ScrewThread;

/**
 * One fastener that will not move, of no job and no sheet: what somebody beside it can see. The order of resorts depends
 * on how it refuses, on what is near and on what a loss costs; size, kind and rust are for what has to be said first.
 *
 * @param kind one that can seize
 * @param thread null where it is not known, or there is none
 * @param rust null where nobody says
 * @param refusal one that its kind can have
 * @param nearby what must not get flame, hot metal, sparks or blows
 * @param scrapped whether the fastener and what it holds are thrown away anyway, so that nothing is lost with them
 * @param price of a new fastener, and of what an attempt may break
 * @param ratePerHour price of an hour's work, more than 0
 */
public record LoneFastener(
        JointKind kind,
        @Nullable ScrewThread thread,
        @Nullable RustGrade rust,
        Refusal refusal,
        List<Nearby> nearby,
        boolean scrapped,
        BigDecimal price,
        BigDecimal ratePerHour) {
    private static final double SLENDER_MM = 8;
    private static final int NEIGHBOURS = 10;

    public LoneFastener {
        nearby = List.copyOf(nearby);
    }

    /** Which ways a kind of fastener can refuse, the usual one first; none for a kind that does not seize. */
    public static List<Refusal> refusals(JointKind kind) {
        return switch (kind) {
            case BOLT_NUT -> List.of(Refusal.values());
            case BOLT, NUT, UNION -> List.of(Refusal.STUCK, Refusal.SPINS, Refusal.ROUNDS, Refusal.SNAPPED);
            case SCREW -> List.of(Refusal.STUCK, Refusal.ROUNDS, Refusal.SNAPPED);
            case TAPER -> List.of(Refusal.STUCK, Refusal.SPINS, Refusal.ROUNDS, Refusal.IN_BORE);
            case PRESS -> List.of(Refusal.IN_BORE);
            case CLIP, PLUG, PIN, CIRCLIP, HOOK, SEAT -> List.of();
        };
    }

    /** The row of resorts with the least expected cost; refused where its kind cannot refuse so. */
    public Parsed<Row> answer() {
        if (!refusals(kind).contains(refusal)) {
            return new Parsed.Refused<>("what is held by a " + kind.word() + " cannot be \"" + refusal.word()
                    + "\"; choose another kind, or another way of refusing");
        }
        BigDecimal lost = scrapped ? BigDecimal.ZERO : price;
        return new Seized(ratePerHour, UsualResorts.of(lost), refusal, nearby).answer();
    }

    /** What to see to before the first attempt, a sentence or two each. Common practice, no source. */
    public List<String> beforehand() {
        List<String> said = new ArrayList<>();
        said.add(
                scrapped
                        ? "It is scrap, so nothing is lost with it and no time goes into saving it. What is near is kept"
                                + " all the same."
                        : "Decide first whether it is kept or scrap: that saves the most time.");
        size(said);
        ofKind(said);
        ofRust(said);
        return said;
    }

    private void size(List<String> said) {
        if (thread == null || kind == JointKind.PRESS) {
            return;
        }
        List<String> sizes = new ArrayList<>();
        for (double across : HexSizes.across(thread)) {
            sizes.add(new Length(across).acrossFlats());
        }
        if (!sizes.isEmpty() && kind != JointKind.UNION) {
            said.add("Met on " + thread.designation() + ": " + String.join(", ", sizes)
                    + ". Brush thread and hexagon clean, and take a six-point socket that sits all the way on.");
        }
        if (thread.diameterMm() <= SLENDER_MM) {
            said.add(thread.designation()
                    + " is slender: it may twist off before it lets go, so no long bar and no impact wrench on it.");
        }
    }

    private void ofKind(List<String> said) {
        String words =
                switch (kind) {
                    case BOLT, SCREW ->
                        "Cutting its head frees the part, not the thread: the shank stays in it and has"
                                + " to come out after";
                    case NUT -> "If its stud breaks, what the stud belongs to is repaired or new";
                    case UNION ->
                        "Hold the other side of it with a second spanner. When the pipe turns with the nut,"
                                + " the pipe is new: say so before it is cut";
                    case TAPER -> "Leave the nut on by some turns until the taper has let go, so that nothing flies";
                    case PRESS -> "Support the ears or the eye around it, and stand out of its line";
                    default -> "";
                };
        if (!words.isEmpty()) {
            said.add(words + ".");
        }
    }

    private void ofRust(List<String> said) {
        if (rust == null || rust == RustGrade.CLEAN) {
            return;
        }
        if (rust.compareTo(RustGrade.SWOLLEN) >= 0) {
            said.add(
                    "The hexagon may have lost size: measure it, and drive the next smaller socket on if it is loose.");
        }
        if (rust == RustGrade.WASTED) {
            said.add("Where sections are wasted, look first whether what it is fixed to still bears a pull or a blow.");
        }
        long alike = Math.round(NEIGHBOURS * rust.seized(1, 1));
        if (alike > 0) {
            said.add("Of ten like it under this car, about " + alike
                    + " will refuse too (an assumption until the garage has counted its own): wet them all now.");
        }
    }
}
