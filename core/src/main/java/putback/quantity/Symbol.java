package putback.quantity;

import org.jspecify.annotations.Nullable;

/** The units that a quantity may be written in, each under all its spellings. */
enum Symbol {
    NEWTON_METRE(Kind.TORQUE, 0),
    POUND_FOOT(Kind.TORQUE),
    POUND_INCH(Kind.TORQUE),
    KILOGRAM_FORCE_METRE(Kind.TORQUE),
    MILLIMETRE(Kind.LENGTH, 0),
    CENTIMETRE(Kind.LENGTH),
    METRE(Kind.LENGTH),
    INCH(Kind.LENGTH),
    KILOMETRE(Kind.DISTANCE, 0),
    MILE(Kind.DISTANCE),
    DEGREE(Kind.ANGLE, 0),
    RADIAN(Kind.ANGLE),
    SECOND(Kind.TIME),
    MINUTE(Kind.TIME, 0),
    HOUR(Kind.TIME),
    NEWTON(Kind.FORCE, 0),
    KILONEWTON(Kind.FORCE, 3),
    POUND_FORCE(Kind.FORCE),
    KILOGRAM(Kind.MASS, 0),
    POUND(Kind.MASS),
    MEGAPASCAL(Kind.STRESS, 0),
    NEWTON_PER_MILLIMETRE(Kind.SPRING_RATE, 0);

    private static final int CONVERTED = Integer.MIN_VALUE;

    private final Kind kind;
    private final int tens;

    Symbol(Kind kind) {
        this(kind, CONVERTED);
    }

    /**
     * @param tens which power of ten of the coherent unit of its kind it is
     */
    Symbol(Kind kind, int tens) {
        this.kind = kind;
        this.tens = tens;
    }

    Kind kind() {
        return kind;
    }

    /** Whether the decimal point is all that moves on the way to the coherent unit, so that no unit library is needed. */
    boolean isCoherent() {
        return tens != CONVERTED;
    }

    int tens() {
        return tens;
    }

    /** The unit of a spelling, spaces and kinds of dot aside; null when there is none. */
    static @Nullable Symbol of(String spelling) {
        return switch (plain(spelling)) {
            case "N.m", "Nm", "N-m" -> NEWTON_METRE;
            case "lbf.ft",
                    "ft.lbf",
                    "lb.ft",
                    "ft.lb",
                    "lbf-ft",
                    "ft-lbf",
                    "lb-ft",
                    "ft-lb",
                    "lbfft",
                    "ftlbf",
                    "lbft",
                    "ftlb",
                    "ft-lbs",
                    "lbs-ft" -> POUND_FOOT;
            case "lbf.in",
                    "in.lbf",
                    "lb.in",
                    "in.lb",
                    "lbf-in",
                    "in-lbf",
                    "lb-in",
                    "in-lb",
                    "lbfin",
                    "inlbf",
                    "lbin",
                    "inlb",
                    "in-lbs",
                    "lbs-in" -> POUND_INCH;
            case "kgf.m", "m.kgf", "kgf-m", "m-kgf", "kgfm" -> KILOGRAM_FORCE_METRE;
            case "mm" -> MILLIMETRE;
            case "cm" -> CENTIMETRE;
            case "m" -> METRE;
            case "in" -> INCH;
            case "km" -> KILOMETRE;
            case "mi", "mile", "miles" -> MILE;
            case "deg", "°", "º" -> DEGREE;
            case "rad" -> RADIAN;
            case "s" -> SECOND;
            case "min" -> MINUTE;
            case "h" -> HOUR;
            case "N" -> NEWTON;
            case "kN" -> KILONEWTON;
            case "lbf" -> POUND_FORCE;
            case "kg" -> KILOGRAM;
            case "lb" -> POUND;
            case "MPa", "N/mm2", "N/mm²" -> MEGAPASCAL;
            case "N/mm" -> NEWTON_PER_MILLIMETRE;
            default -> null;
        };
    }

    private static String plain(String spelling) {
        StringBuilder plain = new StringBuilder(spelling.length());
        for (int i = 0; i < spelling.length(); i++) {
            char c = spelling.charAt(i);
            if (!NumberText.isSpace(c)) {
                plain.append(isDot(c) ? '.' : isHyphen(c) ? '-' : c);
            }
        }
        return plain.toString();
    }

    /** Middle dot, dot operator, bullet operator, bullet, katakana and Greek dots, asterisk. */
    private static boolean isDot(char c) {
        return "·⋅∙•・·*".indexOf(c) >= 0;
    }

    private static boolean isHyphen(char c) {
        return "‐‑−–".indexOf(c) >= 0;
    }
}
