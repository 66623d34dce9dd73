package putback.app.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.json.TightnessJson;
import putback.app.text.TightnessText;
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
import putback.tightening.Tightness;

/** Torque against clamp load of one fastener, and whether the torque can be right. */
final class TightenCommand implements Command {
    private static final String NAME = "tighten";
    private static final double MOST_USE = 1.2;
    private static final double MOST_FACTOR = 1;

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "Torque and clamp load of one fastener, and whether that torque can be right.",
                List.of(),
                List.of(
                        Option.value("--thread", "M12x1.25", "or 1/2-20"),
                        Option.value("--class", "10.9", "4.6 to 12.9, A2-50 to A4-80, \"SAE 5\""),
                        Option.value("--torque", "\"98 N·m\"", "what is stated: gives the clamp load"),
                        Option.value("--clamp", "\"50 kN\"", "what is wanted: gives the torque"),
                        Option.value("--use", "0.9", "share of the yield stress, pull and twist together"),
                        Option.value("--friction", "0.12", "in the thread and under the head; 0.12 if not said"),
                        Option.value("--friction-thread", "0.10", "in the thread alone"),
                        Option.value("--friction-head", "0.12", "under the turned face alone"),
                        Option.value("--nut-factor", "0.2", "K of T = K d F, in place of friction"),
                        Option.value("--bearing", "15.06mm", "effective diameter under the turned face"),
                        Option.value("--prevailing", "\"1.5 N·m\"", "what a locking nut takes before it clamps"),
                        Option.value("--hex", "18mm", "across flats: does it go with the thread?"),
                        Option.value("--angle", "90deg", "turned further after the torque"),
                        Option.value("--stiffness", "\"250000 N/mm\"", "of bolt and joint together, for the angle"),
                        Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                Give one of --torque, --clamp and --use. Clamp load and torque after VDI 2230 (2001 and later), the
                strengths after ISO 898-1, ISO 3506-1 and SAE J429. The car maker's own figure rules.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        Given given = new Given(NAME, arguments);
        Tightness answer = given.answer(Tightness.of(asked(given)));
        terminal.out().print(arguments.has("--json") ? TightnessJson.of(answer) + "\n" : TightnessText.of(answer));
        return Exit.DONE;
    }

    private static Asked asked(Given given) throws UsageFault {
        ScrewThread thread = given.need("--thread", "M12x1.25", ScrewThread::parse);
        PropertyClass grade = given.need("--class", "10.9", PropertyClass::parse);
        Length bearing = given.read("--bearing", Length::parse);
        if (bearing != null && !(bearing.millimetres() > 0 && bearing.millimetres() < 10 * thread.diameterMm())) {
            throw Renewing.fault(
                    NAME,
                    "--bearing: " + bearing.text() + " is no diameter under the head of " + thread.designation()
                            + "; leave it out for the usual hexagon head");
        }
        Torque prevailing = given.read("--prevailing", Torque::parse);
        if (prevailing != null && prevailing.newtonMetres() < 0) {
            throw Renewing.fault(
                    NAME,
                    "--prevailing: " + prevailing.text() + " is below zero; a locking nut takes some"
                            + " torque to turn, never less than none");
        }
        Length hex = given.read("--hex", Length::parse);
        if (hex != null && hex.millimetres() <= 0) {
            throw Renewing.fault(NAME, "--hex: " + hex.text() + " is no size across flats");
        }
        return new Asked(
                thread,
                grade,
                goal(given),
                friction(given),
                given.read("--nut-factor", text -> Given.number(text, 0, MOST_FACTOR, "a nut factor, above 0 to 1")),
                bearing == null ? BearingFace.usual(thread) : BearingFace.given(bearing),
                prevailing == null ? Torque.ZERO : prevailing,
                hex,
                given.read("--angle", TightenCommand::angle),
                given.read("--stiffness", TightenCommand::stiffness));
    }

    private static Asked.Goal goal(Given given) throws UsageFault {
        StatedTorque torque = given.read("--torque", StatedTorque::parse);
        Force clamp = given.read("--clamp", Force::parse);
        Double use = given.read("--use", text -> Given.number(text, 0, MOST_USE, "a share, above 0 to 1.2"));
        int count = (torque == null ? 0 : 1) + (clamp == null ? 0 : 1) + (use == null ? 0 : 1);
        if (count != 1) {
            throw Renewing.fault(NAME, "give one of --torque, --clamp and --use" + (count == 0 ? "" : ", not several"));
        }
        if (torque != null) {
            positive("--torque", torque.torque().newtonMetres(), torque.torque().text());
            return new Asked.Goal.ByTorque(torque);
        }
        if (clamp != null) {
            positive("--clamp", clamp.newtons(), clamp.text());
            return new Asked.Goal.ByClamp(clamp);
        }
        return new Asked.Goal.ByUse(use == null ? 0 : use);
    }

    private static void positive(String option, double value, String text) throws UsageFault {
        if (!(value > 0)) {
            throw Renewing.fault(NAME, option + ": " + text + " tightens nothing; it has to be more than zero");
        }
    }

    private static Friction friction(Given given) throws UsageFault {
        Double both = given.read("--friction", TightenCommand::coefficient);
        Double thread = given.read("--friction-thread", TightenCommand::coefficient);
        Double head = given.read("--friction-head", TightenCommand::coefficient);
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
        Parsed<Angle> read = Angle.parse(text);
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
