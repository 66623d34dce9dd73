package putback.app.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.linkage.Adjustment;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Lock;
import putback.angles.linkage.StrutJob;
import putback.angles.linkage.Travel;
import putback.angles.reach.Hanging;
import putback.app.asking.Given;
import putback.app.asking.TravelQuestion;
import putback.app.asking.Unclear;
import putback.app.json.TravelJson;
import putback.app.text.HangingText;
import putback.app.text.TravelText;
import putback.app.wheels.CornerSvg;
import putback.quantity.Length;
import putback.store.sheets.CornerRead;
import putback.store.sheets.CornerReader;
import putback.store.sheets.Fault;

/** How a wheel stands and points through its travel, and what to adjust for a wanted change. */
final class KinematicsCommand implements Command {
    private static final String NAME = "kinematics";

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "How a wheel points through its travel, from the points of its suspension; what to adjust for a change.",
                List.of("FILE"),
                List.of(
                        Option.value("--from", "-60mm", "lowest travel of the wheel centre"),
                        Option.value("--to", "60mm", "highest"),
                        Option.value("--step", "10mm", "from one position to the next"),
                        Option.value("--rack", "0mm", "shift of the rack, to the left positive"),
                        Option.value("--want", "camber=+0.60deg,toe=+0.25deg", "changes: what to shift and turn"),
                        Option.value("--play", "1mm", "play of the strut's bolted joint either way: what may shift"),
                        Option.value("--lower", "10mm", "how much lower the body will stand: what will shift"),
                        Option.value("--svg", "FILE", "the corner from the front, the side and above as a picture"),
                        Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                FILE is YAML or JSON; points in mm, x forward, y left, z up:

                  suspension: strut              # strut | double wishbone
                  side: left
                  points:
                    arm-front: [250, 400, 200]   # lower arm, inner pivots
                    arm-rear: [-250, 450, 200]
                    ball-joint: [0, 900, 200]
                    strut-top: [-40, 700, 850]
                    strut-lower: [-14, 830, 427.5]   # on the strut's axis, on the carrier
                    rod-inner: [50, 200, 250]
                    rod-outer: [150, 800, 275]
                    wheel-centre: [-20, 950, 313.426]
                  spin-axis: [0, 150, 5]         # outboard; straight out if not said
                  tyre-radius: 313.6 mm
                  adjust: {bolt: {pivot: [-14, 850, 400], spacing: 60 mm}, rod: {pitch: 1.5 mm}}

                  ties:
                    hose: {kind: hose, from: [60, 560, 520], to: [90, 690, 330], free: 310 mm}

                With ties it says how far the hub may drop or lean; a shaft has plunge: 25 mm in place of free.
                A double wishbone has lower-front, lower-rear, lower-ball and upper-front, upper-rear, upper-ball.
                --want asks for changes from how it stands. A positive bolt shift tips the wheel top outboard, a
                positive rod is longer. docs/conventions.md has every sign.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        try {
            PictureFile.alone(NAME, arguments);
            TravelQuestion question = TravelQuestion.read(Typed.in(arguments));
            String file = arguments.operands().get(0);
            CornerRead read = CornerReader.read(file);
            if (read instanceof CornerRead.Faulty faulty) {
                for (Fault fault : faulty.faults()) {
                    terminal.say(fault.toString());
                }
                return Exit.BAD_INPUT;
            }
            CornerRead.Sound sound = (CornerRead.Sound) read;
            String svg = arguments.value("--svg").orElse(null);
            if (svg != null) {
                return PictureFile.write(svg, file, CornerSvg.draw(sound.corner()), terminal);
            }
            return answer(question, sound, file, arguments.has("--json"), terminal);
        } catch (Unclear unclear) {
            throw Renewing.fault(NAME, unclear.said());
        }
    }

    private static int answer(
            TravelQuestion question, CornerRead.Sound sound, String file, boolean json, Terminal terminal)
            throws UsageFault, Unclear {
        Corner corner = sound.corner();
        StrutJob job = question.asksShift()
                ? Given.answer(StrutJob.of(corner, or(question.play()), or(question.lower())))
                : null;
        Hanging hanging = sound.ties().isEmpty() ? null : new Hanging(corner, sound.ties());
        Adjustment adjustment = null;
        if (question.wants()) {
            Adjustment.Asked asked = Adjustment.of(corner, question.rack(), question.camber(), question.toe());
            if (asked instanceof Adjustment.Asked.Senseless senseless) {
                throw Renewing.fault(NAME, "--want: " + senseless.because());
            }
            if (asked instanceof Adjustment.Asked.BeyondReach beyond) {
                terminal.say("putback: " + file + ": " + beyond.because());
                return Exit.NO_SOUND_ANSWER;
            }
            adjustment = ((Adjustment.Asked.Found) asked).adjustment();
        }
        Travel travel = Travel.of(corner, question.rack(), question.span());
        terminal.out()
                .print(
                        json
                                ? TravelJson.of(travel, adjustment, job, hanging) + "\n"
                                : TravelText.of(corner, travel, adjustment) + HangingText.of(job, hanging));
        for (Lock lock : travel.locks()) {
            terminal.say("putback: " + file + ": " + lock.words());
        }
        return travel.locks().isEmpty() ? Exit.DONE : Exit.NO_SOUND_ANSWER;
    }

    private static Length or(@Nullable Length length) {
        return length == null ? new Length(0) : length;
    }
}
