package putback.app.cli;

import java.util.List;
import putback.app.json.RowJson;
import putback.app.text.RowText;
import putback.labour.seized.Row;
import putback.quantity.Parsed;
import putback.store.sheets.Fault;
import putback.store.sheets.ResortsRead;
import putback.store.sheets.ResortsReader;

/** What to try on a fastener that will not move, cheapest way first. */
final class ResortsCommand implements Command {
    private static final String NAME = "resorts";

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "What to try on a fastener that will not move, in the order that costs least.",
                List.of("FILE"),
                List.of(Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                FILE is YAML or JSON:

                  rate: 60.00             # an hour's work
                  refuses: stuck          # stuck, spins, rounds, in bore or snapped; if known
                  near: [hose, spring]    # what must not get flame, heat, sparks or blows
                  resorts:
                    penetrant: {minutes: 3, chance: 0.35}
                    heat: {minutes: 6, chance: 0.6, breaks: {chance: 0.1, price: 12.00}}
                    cut: {minutes: 15, chance: 1, scraps: 18.00, when: [stuck, spins, rounds]}

                Attempts count as independent. What a resort does around it is guessed from the words heat, flame,
                torch, coil, weld, cut, grind, hammer, shock and chisel of its id, unless it says
                hazards: [flame, hot metal, sparks, blows], or [] for none. near may name hose, wire, rubber, bearing,
                gas, spring, airbag, high voltage, tank, alloy, tyre, solvent and cavity. The car's maker rules.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        ResortsRead read = ResortsReader.read(arguments.operands().get(0));
        if (read instanceof ResortsRead.Faulty faulty) {
            for (Fault fault : faulty.faults()) {
                terminal.say(fault.toString());
            }
            return Exit.BAD_INPUT;
        }
        ResortsRead.Sound sound = (ResortsRead.Sound) read;
        Parsed<Row> answered = sound.seized().answer();
        if (!(answered instanceof Parsed.Value<Row> value)) {
            throw Renewing.fault(NAME, answered.refusal());
        }
        Row row = value.value();
        terminal.out()
                .print(
                        arguments.has("--json")
                                ? RowJson.of(row) + "\n"
                                : RowText.of(row, sound.seized().ratePerHour()));
        return Exit.DONE;
    }
}
