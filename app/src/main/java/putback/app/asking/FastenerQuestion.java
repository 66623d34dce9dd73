package putback.app.asking;

import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Force;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.SpringRate;
import putback.quantity.StatedTorque;
import putback.quantity.Torque;
import putback.tightening.Asked;
import putback.tightening.BearingFace;
import putback.tightening.Friction;
import putback.tightening.PropertyClass;
import putback.tightening.ScrewThread;

/** How tight one fastener is, as a person asks it. */
public final class FastenerQuestion {
    private static final double MOST_USE = 1.2;
    private static final double MOST_FACTOR = 1;

    private FastenerQuestion() {}

    /** Reads the question, or says what is wrong with the first value that cannot be. */
    public static Asked read(Given given) throws Unclear {
        ScrewThread thread = given.need("thread", "M12x1.25", ScrewThread::parse);
        PropertyClass grade = given.need("class", "10.9", PropertyClass::parse);
        Length bearing = given.read("bearing", Length::parse);
        if (bearing != null && !(bearing.millimetres() > 0 && bearing.millimetres() < 10 * thread.diameterMm())) {
            throw given.unclear(
                    "bearing",
                    bearing.text() + " is no diameter under the head of " + thread.designation()
                            + "; leave it out for the usual hexagon head");
        }
        Torque prevailing = given.read("prevailing", Torque::parse);
        if (prevailing != null && prevailing.newtonMetres() < 0) {
            throw given.unclear(
                    "prevailing",
                    prevailing.text() + " is below zero; a locking nut takes some"
                            + " torque to turn, never less than none");
        }
        Length hex = given.read("hex", Length::parse);
        if (hex != null && hex.millimetres() <= 0) {
            throw given.unclear("hex", hex.text() + " is no size across flats");
        }
        return new Asked(
                thread,
                grade,
                goal(given),
                friction(given),
                given.read("nut-factor", text -> Given.number(text, 0, MOST_FACTOR, "a nut factor, above 0 to 1")),
                bearing == null ? BearingFace.usual(thread) : BearingFace.given(bearing),
                prevailing == null ? Torque.ZERO : prevailing,
                hex,
                given.read("angle", FastenerQuestion::angle),
                given.read("stiffness", FastenerQuestion::stiffness));
    }

    private static Asked.Goal goal(Given given) throws Unclear {
        StatedTorque torque = given.read("torque", StatedTorque::parse);
        Force clamp = given.read("clamp", Force::parse);
        Double use = given.read("use", text -> Given.number(text, 0, MOST_USE, "a share, above 0 to 1.2"));
        int count = (torque == null ? 0 : 1) + (clamp == null ? 0 : 1) + (use == null ? 0 : 1);
        if (count != 1) {
            throw new Unclear(
                    "",
                    "give one of " + given.shown("torque") + ", " + given.shown("clamp") + " and " + given.shown("use")
                            + (count == 0 ? "" : ", not several"));
        }
        if (torque != null) {
            positive(
                    given,
                    "torque",
                    torque.torque().newtonMetres(),
                    torque.torque().text());
            return new Asked.Goal.ByTorque(torque);
        }
        if (clamp != null) {
            positive(given, "clamp", clamp.newtons(), clamp.text());
            return new Asked.Goal.ByClamp(clamp);
        }
        return new Asked.Goal.ByUse(use == null ? 0 : use);
    }

    private static void positive(Given given, String name, double value, String text) throws Unclear {
        if (!(value > 0)) {
            throw given.unclear(name, text + " tightens nothing; it has to be more than zero");
        }
    }

    private static Friction friction(Given given) throws Unclear {
        if (given.has("nut-factor") && (given.has("friction") || given.has("friction-head"))) {
            throw given.unclear("nut-factor", "it takes the place of friction; give one of them");
        }
        Double both = given.read("friction", FastenerQuestion::coefficient);
        Double thread = given.read("friction-thread", FastenerQuestion::coefficient);
        Double head = given.read("friction-head", FastenerQuestion::coefficient);
        double otherwise = both == null ? Friction.USUAL.thread() : both;
        return new Friction(or(thread, otherwise), or(head, otherwise));
    }

    private static double or(@Nullable Double given, double otherwise) {
        return given == null ? otherwise : given;
    }

    private static Parsed<Double> coefficient(String text) {
        return Given.number(text, 0, 1, "a coefficient of friction; it is above 0 and at most 1, such as 0.12");
    }

    private static Parsed<Angle> angle(String text) {
        Parsed<Angle> read = Given.angle(text);
        return read instanceof Parsed.Value<Angle> value
                        && !(value.value().degrees() > 0 && value.value().degrees() <= 360)
                ? new Parsed.Refused<>("\"" + text + "\" is not an angle above 0 to one turn")
                : read;
    }

    private static Parsed<Double> stiffness(String text) {
        Parsed<Double> read = SpringRate.parse(text).map(SpringRate::newtonsPerMillimetre);
        return read instanceof Parsed.Value<Double> value && !(value.value() > 0)
                ? new Parsed.Refused<>("\"" + text + "\" is no stiffness; it has to be more than zero")
                : read;
    }
}
