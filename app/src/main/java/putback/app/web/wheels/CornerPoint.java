package putback.app.web.wheels;

import java.util.List;

/**
 * A point of a corner that is asked for.
 *
 * @param key as the file names it
 * @param said as a person calls it
 * @param example where it is on the invented example, x, y and z in mm
 */
public record CornerPoint(String key, String said, List<String> example) {
    static final List<String> AXES = List.of("x", "y", "z");

    static final List<CornerPoint> STRUT = List.of(
            of("arm-front", "lower arm, front pivot", "250", "400", "200"),
            of("arm-rear", "lower arm, rear pivot", "-250", "450", "200"),
            of("ball-joint", "ball joint", "0", "900", "200"),
            of("strut-top", "strut, at its top mount", "-40", "700", "850"),
            of("strut-lower", "strut, low down on its axis", "-14", "830", "427.5"),
            of("rod-inner", "track rod, inner end", "50", "200", "250"),
            of("rod-outer", "track rod, outer end", "150", "800", "275"),
            of("wheel-centre", "wheel centre", "-20", "950", "313.426"));

    static final List<CornerPoint> WISHBONE = List.of(
            of("lower-front", "lower arm, front pivot", "200", "400", "200"),
            of("lower-rear", "lower arm, rear pivot", "-200", "400", "210"),
            of("lower-ball", "lower ball joint", "0", "780", "190"),
            of("upper-front", "upper arm, front pivot", "120", "480", "460"),
            of("upper-rear", "upper arm, rear pivot", "-150", "480", "450"),
            of("upper-ball", "upper ball joint", "-15", "745", "470"),
            of("rod-inner", "track rod, inner end", "130", "380", "230"),
            of("rod-outer", "track rod, outer end", "130", "760", "225"),
            of("wheel-centre", "wheel centre", "0", "830", "310"));

    public CornerPoint {
        example = List.copyOf(example);
    }

    private static CornerPoint of(String key, String said, String... example) {
        return new CornerPoint(key, said, List.of(example));
    }
}
