package putback.tightening;

import java.util.Locale;
import putback.quantity.Force;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.Shown;

/**
 * How strong a bolt is, as its head is marked: ISO 898-1 property classes (table 3), ISO 3506-1 austenitic stainless
 * steel, SAE J429 grades (table 1). Strengths are split by diameter where the standards split them.
 */
public enum PropertyClass {
    C4_6("4.6", Strength.of(400, 240, 225)),
    C4_8("4.8", Strength.of(420, 340, 310)),
    C5_6("5.6", Strength.of(500, 300, 280)),
    C5_8("5.8", Strength.of(520, 420, 380)),
    C6_8("6.8", Strength.of(600, 480, 440)),
    C8_8("8.8", Strength.of(800, 640, 580), 16, Strength.of(830, 660, 600)),
    C9_8("9.8", Strength.of(900, 720, 650)),
    C10_9("10.9", Strength.of(1040, 940, 830)),
    C12_9("12.9", Strength.of(1220, 1100, 970)),
    A2_50("A2-50", Strength.withoutProof(500, 210)),
    A2_70("A2-70", Strength.withoutProof(700, 450)),
    A2_80("A2-80", Strength.withoutProof(800, 600)),
    A4_50("A4-50", Strength.withoutProof(500, 210)),
    A4_70("A4-70", Strength.withoutProof(700, 450)),
    A4_80("A4-80", Strength.withoutProof(800, 600)),
    SAE_2("SAE 2", ksi(74, 57, 55), 0.75 * Length.MILLIMETRES_PER_INCH, ksi(60, 36, 33)),
    SAE_5("SAE 5", ksi(120, 92, 85), Length.MILLIMETRES_PER_INCH, ksi(105, 81, 74)),
    SAE_8("SAE 8", ksi(150, 130, 120));

    private final String mark;
    private final Strength small;
    private final double splitMm;
    private final Strength large;

    PropertyClass(String mark, Strength strength) {
        this(mark, strength, Double.MAX_VALUE, strength);
    }

    /**
     * @param splitMm largest nominal diameter of the first strength
     */
    PropertyClass(String mark, Strength small, double splitMm, Strength large) {
        this.mark = mark;
        this.small = small;
        this.splitMm = splitMm;
        this.large = large;
    }

    private static Strength ksi(double tensile, double yield, double proof) {
        double mpa = Force.NEWTONS_PER_POUND_FORCE * 1000 / (Length.MILLIMETRES_PER_INCH * Length.MILLIMETRES_PER_INCH);
        return Strength.of(tensile * mpa, yield * mpa, proof * mpa);
    }

    /** Reads {@code 10.9}, {@code A2-70}, {@code SAE 5} or {@code grade 5}; never throws. */
    public static Parsed<PropertyClass> parse(String text) {
        String wanted = squeezed(text);
        for (PropertyClass one : values()) {
            String known = squeezed(one.mark);
            if (wanted.equals(known) || (one.isSae() && wanted.equals(known.replace("SAE", "GRADE")))) {
                return new Parsed.Value<>(one);
            }
        }
        return new Parsed.Refused<>(
                "\"" + Shown.text(text) + "\" is not a property class; there are 4.6, 4.8, 5.6, 5.8,"
                        + " 6.8, 8.8, 9.8, 10.9, 12.9, A2-50 to A4-80, SAE 2, SAE 5 and SAE 8");
    }

    private static String squeezed(String text) {
        return text.strip()
                .toUpperCase(Locale.ROOT)
                .replace(',', '.')
                .replace(" ", "")
                .replace("SAEGRADE", "SAE");
    }

    /** As it is marked on the head, or called. */
    public String mark() {
        return mark;
    }

    /** Whether it is one of the SAE grades, which belong to inch threads. */
    public boolean isSae() {
        return this == SAE_2 || this == SAE_5 || this == SAE_8;
    }

    public Strength strength(ScrewThread thread) {
        return thread.diameterMm() <= splitMm ? small : large;
    }
}
