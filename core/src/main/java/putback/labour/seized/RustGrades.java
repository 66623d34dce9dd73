package putback.labour.seized;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.quantity.Shown;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Side;

/**
 * How rusty a car is: a grade for all of it, another for a side, another for single fixings. What is said more closely
 * counts.
 *
 * @param usual where nothing else is said
 * @param closer by {@code left}, {@code right} or the id of a joint
 */
public record RustGrades(RustGrade usual, Map<String, RustGrade> closer) {
    private static final String FORM = "; write 3, left=4 or left.strut-to-hub=2, several with commas";

    public RustGrades {
        closer = java.util.Collections.unmodifiableMap(new TreeMap<>(closer));
    }

    /** The same everywhere. */
    public static RustGrades all(RustGrade grade) {
        return new RustGrades(grade, Map.of());
    }

    /** The grade at a joint: its own, else its side's, else the usual one. */
    public RustGrade at(Joint joint) {
        RustGrade own = closer.get(joint.id());
        RustGrade side = closer.get(joint.side().word());
        return own != null ? own : side != null ? side : usual;
    }

    /** Whether nothing is rusty anywhere. */
    public boolean isClean() {
        for (RustGrade one : closer.values()) {
            if (one != RustGrade.CLEAN) {
                return false;
            }
        }
        return usual == RustGrade.CLEAN;
    }

    /**
     * Reads grades as a person writes them: {@code 3}, {@code left=4}, {@code left.strut-to-hub=2}; a fixing named
     * plainly in a sheet with sides is meant on both. Clean where nothing is said; refused where something is said twice.
     */
    public static Parsed<RustGrades> read(Assembly assembly, List<String> words) {
        RustGrade usual = null;
        Map<String, RustGrade> closer = new TreeMap<>();
        for (String word : words) {
            int equals = word.indexOf('=');
            Parsed<RustGrade> grade = grade(word.substring(equals + 1));
            if (!(grade instanceof Parsed.Value<RustGrade> read)) {
                return new Parsed.Refused<>(grade.refusal());
            }
            if (equals < 0) {
                if (usual != null) {
                    return new Parsed.Refused<>("a grade for the whole car is given twice" + FORM);
                }
                usual = read.value();
                continue;
            }
            String name = word.substring(0, equals).strip();
            List<String> meant = meant(assembly, name);
            if (meant.isEmpty()) {
                return new Parsed.Refused<>("no side or fixing is called " + Shown.text(name) + FORM);
            }
            for (String one : meant) {
                if (closer.put(one, read.value()) != null) {
                    return new Parsed.Refused<>("the grade of " + one + " is given twice" + FORM);
                }
            }
        }
        return new Parsed.Value<>(new RustGrades(usual == null ? RustGrade.CLEAN : usual, closer));
    }

    private static Parsed<RustGrade> grade(String word) {
        if (PlainNumber.parse(word.strip()) instanceof Parsed.Value<BigDecimal> number
                && number.value().signum() >= 0
                && number.value().compareTo(BigDecimal.TEN) < 0
                && number.value().stripTrailingZeros().scale() <= 0) {
            return RustGrade.of(number.value().intValue());
        }
        return new Parsed.Refused<>("\"" + Shown.text(word.strip())
                + "\" is not a grade; it is a whole number from 0 (clean) to 4 (wasted sections)" + FORM);
    }

    private static List<String> meant(Assembly assembly, String name) {
        List<String> meant = new ArrayList<>();
        for (Joint joint : assembly.joints()) {
            if (joint.id().equals(name) || joint.entry().id().equals(name)) {
                meant.add(joint.id());
            }
            boolean side = joint.side() != Side.NONE && joint.side().word().equals(name);
            if (side && !meant.contains(name)) {
                meant.add(name);
            }
        }
        return meant;
    }
}
