package putback.app.cli;

import java.util.ArrayList;
import java.util.List;
import putback.angles.bounce.Bounce;
import putback.angles.bounce.Decay;
import putback.app.json.BounceJson;
import putback.app.text.BounceText;
import putback.quantity.Parsed;
import putback.store.sheets.TraceRead;
import putback.store.sheets.TraceReader;

/** How well a corner is damped, from a recorded bounce; two records compare left and right. */
final class BounceCommand implements Command {
    private static final String NAME = "bounce";

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "How well a corner is damped, from a recorded bounce; two files compare left and right.",
                List.of("FILE.csv", "[FILE2.csv]"),
                List.of(Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                Each row: time in s, then height in mm or acceleration in m/s2. Push the corner down, let go, and record
                until it rests. It is read from the greatest deflection on. frequencyHz is the one that is seen, which
                is a little below the undamped one. No limit is published for this test: compare with the other side.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) {
        List<Decay> decays = new ArrayList<>();
        for (String file : arguments.operands()) {
            TraceRead read = TraceReader.read(file);
            if (read instanceof TraceRead.Faulty faulty) {
                FaultLines.say(faulty.faults(), "a bounce trace", terminal);
                continue;
            }
            Parsed<Decay> decay = Bounce.of(((TraceRead.Sound) read).trace());
            if (decay instanceof Parsed.Value<Decay> one) {
                decays.add(one.value());
            } else {
                terminal.say(TraceReader.fault(file, decay.refusal()).toString());
            }
        }
        if (decays.size() < arguments.operands().size()) {
            return Exit.BAD_INPUT;
        }
        terminal.out().print(arguments.has("--json") ? BounceJson.of(decays) + "\n" : BounceText.of(decays));
        return Exit.DONE;
    }
}
