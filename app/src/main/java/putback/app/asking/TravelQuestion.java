package putback.app.asking;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import putback.angles.linkage.Travel;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Parsed;

/**
 * What is asked of a suspension.
 *
 * @param camber change that is wanted; null where none is
 * @param toe change that is wanted; null where none is
 * @param play of the bolted joint either way; null where that is not asked
 * @param lower how much lower the body will stand; null where that is not asked
 */
public record TravelQuestion(
        Travel.Span span,
        Length rack,
        @Nullable Angle camber,
        @Nullable Angle toe,
        @Nullable Length play,
        @Nullable Length lower) {
    private static final double FARTHEST_RACK_MM = 500;

    /** Reads it, or says what is wrong with the first value that cannot be. */
    public static TravelQuestion read(Given given) throws Unclear {
        Travel.Span span = Given.answer(
                Travel.Span.of(length(given, "from", -60), length(given, "to", 60), length(given, "step", 10)));
        Length rack = length(given, "rack", 0);
        if (Math.abs(rack.millimetres()) > FARTHEST_RACK_MM) {
            throw given.unclear("rack", rack.text() + " is farther than any rack goes");
        }
        Function<String, @Nullable String> wants = wants(given);
        Given wanted = new Given(wants, "--want ");
        return new TravelQuestion(
                span,
                rack,
                wanted.read("camber", Angle::parse),
                wanted.read("toe", Angle::parse),
                given.read("play", Length::parse),
                given.read("lower", Length::parse));
    }

    /** Whether it is asked what a strut job may shift. */
    public boolean asksShift() {
        return play != null || lower != null;
    }

    public boolean wants() {
        return camber != null || toe != null;
    }

    private static Length length(Given given, String name, double otherwise) throws Unclear {
        Length length = given.read(name, Length::parse);
        return length == null ? new Length(otherwise) : length;
    }

    private static Function<String, @Nullable String> wants(Given given) throws Unclear {
        String text = given.read("want", Parsed.Value::new);
        String camber = null;
        String toe = null;
        if (text != null) {
            for (String part : text.replaceAll("(\\d),(\\d)", "$1.$2").split(",", -1)) {
                int equals = part.indexOf('=');
                String name =
                        equals < 0 ? part.strip() : part.substring(0, equals).strip();
                boolean known = equals >= 0 && (name.equals("camber") || name.equals("toe"));
                if (!known || (name.equals("camber") ? camber : toe) != null) {
                    throw given.unclear(
                            "want",
                            "\"" + part.strip() + "\" is not understood; write changes such as"
                                    + " camber=+0.60deg,toe=+0.25deg, each once");
                }
                String value = part.substring(equals + 1).strip();
                camber = name.equals("camber") ? value : camber;
                toe = name.equals("toe") ? value : toe;
            }
        }
        String wantedCamber = camber;
        String wantedToe = toe;
        return name -> name.equals("camber") ? wantedCamber : wantedToe;
    }
}
