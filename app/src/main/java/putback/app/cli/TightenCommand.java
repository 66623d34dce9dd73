package putback.app.cli;

import java.util.List;
import putback.app.asking.FastenerQuestion;
import putback.app.asking.Given;
import putback.app.asking.Unclear;
import putback.app.json.TightnessJson;
import putback.app.text.Screen;
import putback.app.text.TightnessText;
import putback.tightening.Tightness;

/** Torque against clamp load of one fastener, and whether the torque can be right. */
final class TightenCommand implements Command {
    private static final String NAME = "tighten";

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
        try {
            Tightness answer = Given.answer(Tightness.of(FastenerQuestion.read(Typed.in(arguments))));
            terminal.out()
                    .print(
                            arguments.has("--json")
                                    ? TightnessJson.of(answer) + "\n"
                                    : TightnessText.of(answer, Screen.here()));
            return Exit.DONE;
        } catch (Unclear unclear) {
            throw Renewing.fault(NAME, unclear.said());
        }
    }
}
