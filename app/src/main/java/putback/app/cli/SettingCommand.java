package putback.app.cli;

import java.util.List;
import putback.app.asking.SettingQuestion;
import putback.app.asking.Unclear;
import putback.app.json.JsonWriter;
import putback.quantity.Torque;
import putback.quantity.TorqueUnit;
import putback.tightening.ReadingWindow;

/** What a torque wrench is set to with an adapter on it, and back. */
final class SettingCommand implements Command {
    private static final String NAME = "setting";

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
        try {
            SettingQuestion.Answer answer = SettingQuestion.answer(Typed.in(arguments));
            terminal.out().print(arguments.has("--json") ? json(answer) : text(answer));
        } catch (Unclear unclear) {
            throw Renewing.fault(NAME, unclear.said());
        }
        return Exit.DONE;
    }

    private static String text(SettingQuestion.Answer answer) {
        ReadingWindow window = answer.window();
        StringBuilder text = new StringBuilder();
        String factor = " (factor " + Torque.figure(answer.adapter().factor()) + ").";
        if (answer.isReading()) {
            Columns.paragraph(
                    text,
                    "A reading of " + both(answer) + " was "
                            + answer.atFastener().text() + " at the fastener" + factor);
            if (window != null) {
                Columns.paragraph(
                        text, "By the wrench's deviation it was " + Torque.spanText(window.low(), window.high()) + ".");
            }
        } else {
            Columns.paragraph(
                    text,
                    "Set the wrench to " + both(answer) + ": the fastener gets "
                            + answer.atFastener().text() + factor);
            if (window != null) {
                Columns.paragraph(text, "A reading of " + window.text() + " is surely right.");
            }
        }
        for (String remark : answer.remarks()) {
            Columns.paragraph(text, remark);
        }
        return text.toString();
    }

    /** Both units, and the one that was asked in where it is a third. */
    private static String both(SettingQuestion.Answer answer) {
        TorqueUnit unit = answer.unit();
        String text = unit == TorqueUnit.NEWTON_METRE
                ? answer.setting().text()
                : answer.setting().textPoundFeetFirst();
        return unit == TorqueUnit.NEWTON_METRE || unit == TorqueUnit.POUND_FOOT
                ? text
                : unit.text(answer.setting().newtonMetres() / unit.newtonMetres()) + ", " + text;
    }

    private static String json(SettingQuestion.Answer answer) {
        JsonWriter json = new JsonWriter(200);
        json.beginObject().key("settingNm").number(answer.setting().newtonMetres());
        json.key("settingLbfFt").number(answer.setting().poundFeet());
        json.key("factor").number(answer.adapter().factor());
        json.key("atFastenerNm").number(answer.atFastener().newtonMetres());
        json.key("atFastenerLbfFt").number(answer.atFastener().poundFeet());
        ReadingWindow window = answer.window();
        if (window != null) {
            json.key(answer.isReading() ? "fastenerNm" : "readingNm")
                    .beginArray()
                    .number(window.low().newtonMetres());
            json.number(window.high().newtonMetres()).endArray();
        }
        json.key("remarks").strings(answer.remarks());
        return json.endObject() + "\n";
    }
}
