package putback.app.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.json.JsonWriter;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Torque;
import putback.tightening.Adapter;
import putback.tightening.Graduation;
import putback.tightening.ReadingWindow;

/** What a torque wrench is set to with an adapter on it, and back. */
final class SettingCommand implements Command {
    private static final String NAME = "setting";
    private static final double MOST_DEVIATION = 20;

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "What to set a torque wrench to with an adapter on it, or what a reading was at the fastener.",
                List.of(),
                List.of(
                        Option.value("--torque", "\"90 N·m\"", "wanted at the fastener"),
                        Option.value("--reading", "\"80 N·m\"", "of the wrench, in place of --torque: the way back"),
                        Option.value("--wrench", "400mm", "from the middle of the grip to the drive"),
                        Option.value("--adapter", "50mm", "from the drive to the fastener; nothing if not said"),
                        Option.value("--at", "0deg", "0 straight on, 90 square, 180 pointing back"),
                        Option.value("--step", "\"2 N·m\"", "graduation of the wrench: the setting falls on a mark"),
                        Option.value("--limit", "\"95 N·m\"", "most at the fastener; a tenth above if not said"),
                        Option.value("--deviation", "4", "of the wrench in percent: prints what a reading may be"),
                        Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                S = T L / (L + E cos a). Pull where the length was measured to. A socket extension in line with the drive
                changes nothing. With --step the nearest mark is taken that does not pass the limit.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        Given given = new Given(NAME, arguments);
        Torque wanted = given.read("--torque", Torque::parse);
        Torque reading = given.read("--reading", Torque::parse);
        if ((wanted == null) == (reading == null)) {
            throw Renewing.fault(NAME, "give --torque for a setting, or --reading for the way back");
        }
        Adapter adapter = adapter(given);
        Torque from = positive(wanted == null ? "--reading" : "--torque", wanted == null ? reading : wanted);
        Torque setting = wanted == null ? from : onMark(given, adapter, from);
        Torque atFastener = adapter.atFastener(setting);
        ReadingWindow window = wanted == null ? null : window(given, adapter, wanted);
        terminal.out()
                .print(
                        arguments.has("--json")
                                ? json(setting, atFastener, adapter, window)
                                : text(setting, atFastener, adapter, window));
        return Exit.DONE;
    }

    private static Adapter adapter(Given given) throws UsageFault {
        Length wrench = given.read("--wrench", Length::parse);
        Length adapter = given.read("--adapter", Length::parse);
        Angle angle = given.read("--at", Angle::parse);
        if (wrench == null) {
            if (adapter == null) {
                return Adapter.NONE;
            }
            throw Renewing.fault(
                    NAME, "--wrench is missing, such as --wrench 400mm; without it no adapter can be reckoned");
        }
        return given.answer(
                Adapter.of(wrench, adapter == null ? new Length(0) : adapter, angle == null ? new Angle(0) : angle));
    }

    private static Torque onMark(Given given, Adapter adapter, Torque wanted) throws UsageFault {
        Torque exact = adapter.setting(wanted);
        Torque step = given.read("--step", Torque::parse);
        Torque limit = given.read("--limit", Torque::parse);
        if (limit != null && limit.newtonMetres() < wanted.newtonMetres()) {
            throw Renewing.fault(NAME, "--limit: " + limit.text() + " is below the wanted " + wanted.text());
        }
        if (step == null) {
            return exact;
        }
        Torque most = limit == null ? ReadingWindow.usualMost(wanted) : limit;
        return given.answer(Graduation.nearest(exact, positive("--step", step), adapter.setting(most)));
    }

    private static Torque positive(String option, @Nullable Torque torque) throws UsageFault {
        if (torque == null || !(torque.newtonMetres() > 0)) {
            throw Renewing.fault(
                    NAME, option + ": " + (torque == null ? "it" : torque.text()) + " has to be more than zero");
        }
        return torque;
    }

    private static @Nullable ReadingWindow window(Given given, Adapter adapter, Torque wanted) throws UsageFault {
        Double percent = given.read(
                "--deviation", text -> Given.number(text, 0, MOST_DEVIATION, "a deviation in percent, above 0 to 20"));
        if (percent == null) {
            return null;
        }
        Torque limit = given.read("--limit", Torque::parse);
        Torque most = limit == null ? ReadingWindow.usualMost(wanted) : limit;
        return given.answer(ReadingWindow.of(ReadingWindow.usualLeast(wanted), most, adapter, percent / 100));
    }

    private static String text(Torque setting, Torque atFastener, Adapter adapter, @Nullable ReadingWindow window) {
        return "Set the wrench to " + setting.text() + ": the fastener gets " + atFastener.text() + " (factor "
                + Torque.figure(adapter.factor()) + ").\n"
                + (window == null ? "" : "A reading of " + window.text() + " is surely right.\n");
    }

    private static String json(Torque setting, Torque atFastener, Adapter adapter, @Nullable ReadingWindow window) {
        JsonWriter json = new JsonWriter(200);
        json.beginObject().key("settingNm").number(setting.newtonMetres());
        json.key("settingLbfFt").number(setting.poundFeet()).key("factor").number(adapter.factor());
        json.key("atFastenerNm").number(atFastener.newtonMetres());
        json.key("atFastenerLbfFt").number(atFastener.poundFeet());
        if (window != null) {
            json.key("readingNm").beginArray().number(window.low().newtonMetres());
            json.number(window.high().newtonMetres()).endArray();
        }
        return json.endObject() + "\n";
    }
}
