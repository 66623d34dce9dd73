package putback.app.cli;

import java.util.List;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Turned;
import putback.app.json.AnglesJson;
import putback.app.papers.Papers;
import putback.app.text.AnglesText;
import putback.app.wheels.CarSvg;
import putback.store.sheets.AnglesRead;
import putback.store.sheets.AnglesReader;
import putback.store.sheets.Fault;

/** What a wheel-angle gauge read, what follows from it, and what to turn. */
final class AnglesCommand implements Command {
    private static final String NAME = "angles";

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "What wheel-angle readings give together, and what to turn so that all of it comes inside.",
                List.of("FILE"),
                List.of(
                        Option.value("--svg", "FILE", "the car from above as a picture, what is off drawn larger"),
                        Option.flag("--json", "for other programs"),
                        PaperOptions.PDF,
                        PaperOptions.PAPER,
                        Option.value("--on", "DATE", "day on the paper; left blank if not said")));
    }

    @Override
    public String more() {
        return """
                FILE is YAML or JSON. Positive: wheel top out, toe in, steering axis top rearward and inboard, either side.

                  rear:
                    left:  {camber: -1.2 deg, toe: 0.10 deg}
                    right: {camber: -1.1 deg, toe: 0.02 deg}
                  front:
                    left:
                      camber: -0.5 deg
                      toe: 0.10 deg
                      sweep: [{toe: -19.9 deg, camber: 1.26 deg},
                              {toe: 20.1 deg, camber: -0.78 deg}]
                    right: {camber: -0.4 deg, toe: 0.05 deg, caster: 3.1 deg, sai: 12.2 deg}
                  steering-ratio: 16
                  wanted:
                    front: {camber: [-1.0 deg, 0.0 deg], total-toe: [0.0 deg, 0.2 deg]}
                    rear: {thrust: [-0.15 deg, 0.15 deg]}
                  adjusters:
                    left-rod: {front.left.toe: 0.35 deg, per: turn, range: [-6, 6],
                               ways: [shorter, longer]}

                A sweep has readings with the wheel steered, seen from above; they need not be equal. Angles may be
                written 0°15' too, a toe in mm or inches beside toe-read-at: 406.4 mm. docs/conventions.md has the
                rest: gauge, wheelbase, ride-height, whole marks.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        PictureFile.alone(NAME, arguments);
        PaperOptions.check(NAME, arguments);
        if (arguments.has("--pdf") && (arguments.has("--json") || arguments.has("--svg"))) {
            throw Renewing.fault(NAME, "--pdf replaces the text, --json and --svg; give one of them");
        }
        String file = arguments.operands().get(0);
        AnglesRead read = AnglesReader.read(file);
        if (read instanceof AnglesRead.Faulty faulty) {
            for (Fault fault : faulty.faults()) {
                terminal.say(fault.toString());
            }
            return Exit.BAD_INPUT;
        }
        AngleJob job = ((AnglesRead.Sound) read).job();
        Turned turned = job.turned();
        String svg = arguments.value("--svg").orElse(null);
        if (svg != null) {
            return PictureFile.write(
                    svg, file, CarSvg.draw(job.title(), job.reading().angles(), turned), terminal);
        }
        if (arguments.has(PaperOptions.PDF.name())) {
            byte[] pdf = Papers.angles(job, PaperOptions.head(NAME, arguments), PaperOptions.style(NAME, arguments));
            return PdfFile.write(pdf, arguments.value("--pdf").orElse(""), terminal);
        }
        terminal.out().print(arguments.has("--json") ? AnglesJson.of(job, turned) + "\n" : AnglesText.of(job, turned));
        return Exit.DONE;
    }
}
