package putback.app.cli;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.json.AlongsideJson;
import putback.app.text.AlongsideText;
import putback.app.text.Screen;
import putback.labour.alongside.Alongside;
import putback.labour.alongside.LifeLeft;
import putback.labour.alongside.Neighbour;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Wanted;
import putback.quantity.Distance;
import putback.quantity.Parsed;
import putback.store.sheets.Read;

/** What else is cheap to renew while it is apart. */
final class AlongsideCommand implements Command {
    private static final String NAME = "alongside";
    private static final String MILEAGE = "--mileage";
    private static final String HORIZON = "--horizon";
    private static final String RATE = "--rate";

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "Says what else is cheap to renew while a car is apart, against doing it later.",
                List.of("SHEET"),
                List.of(
                        Renewing.RENEW,
                        Renewing.SIDE,
                        Option.value(MILEAGE, "\"90000 km\"", "how far the parts have come, km or mi"),
                        Option.value(HORIZON, "\"20000 km\"", "how far one looks ahead; 20000 km if not said"),
                        Option.value(RATE, "60.00", "an hour's work, for the expected saving in money"),
                        Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                Companions and the other side of an axle are said first. Then each part or unit
                that shares work with the job: the minutes it adds now, the minutes it takes
                alone later, and the difference, largest first.

                With --mileage, a part whose sheet gives a life also gets the chance that it
                fails within the horizon, having lasted so far, and what doing it now saves on
                average: that chance times the minutes saved, with --rate in money too.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        Renewing renewing = Renewing.of(NAME, arguments);
        LifeLeft left = lifeLeft(arguments);
        BigDecimal rate = Numbers.money(NAME, arguments, RATE, new BigDecimal("0.01"));
        if (left == null && (rate != null || arguments.has(HORIZON))) {
            throw Renewing.fault(
                    NAME,
                    (rate != null ? RATE : HORIZON) + " says nothing without " + MILEAGE
                            + ", which tells how worn the parts are; add " + MILEAGE + " \"90000 km\"");
        }
        Read.Sheet sheet = SheetFile.open(arguments.operands().get(0), terminal);
        Wanted wanted = sheet == null ? null : renewing.on(sheet.assembly(), sheet.name(), terminal);
        if (sheet == null || wanted == null) {
            return Exit.BAD_INPUT;
        }
        Planned planned = Planner.plan(sheet.assembly(), wanted);
        if (planned instanceof Planned.Locked locked) {
            terminal.say("putback: " + sheet.name() + ": " + locked.sentence());
            return Exit.NO_SOUND_ANSWER;
        }
        Plan plan = ((Planned.Sound) planned).plan();
        List<Neighbour> neighbours = Alongside.of(plan);
        terminal.out()
                .print(
                        arguments.has("--json")
                                ? AlongsideJson.of(plan, neighbours, left, rate) + "\n"
                                : AlongsideText.of(plan, neighbours, left, rate, Screen.here()));
        return Exit.DONE;
    }

    private static @Nullable LifeLeft lifeLeft(Arguments arguments) throws UsageFault {
        Distance mileage = distance(arguments, MILEAGE);
        Distance horizon = distance(arguments, HORIZON);
        Parsed<LifeLeft> left = LifeLeft.of(
                mileage == null ? new Distance(0) : mileage, horizon == null ? LifeLeft.USUAL_HORIZON : horizon);
        if (left instanceof Parsed.Value<LifeLeft> one) {
            return mileage == null ? null : one.value();
        }
        throw Renewing.fault(NAME, left.refusal());
    }

    private static @Nullable Distance distance(Arguments arguments, String name) throws UsageFault {
        String given = arguments.value(name).orElse(null);
        if (given == null) {
            return null;
        }
        Parsed<Distance> parsed = Distance.parse(given);
        if (parsed instanceof Parsed.Value<Distance> one) {
            return one.value();
        }
        throw Renewing.fault(NAME, name + ": " + parsed.refusal());
    }
}
