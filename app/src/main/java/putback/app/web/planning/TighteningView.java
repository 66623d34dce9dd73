package putback.app.web.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.asking.FastenerQuestion;
import putback.app.asking.Given;
import putback.app.asking.SettingQuestion;
import putback.app.asking.Unclear;
import putback.app.text.WrenchText;
import putback.app.tools.ClampBar;
import putback.app.tools.FastenerDrawing;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Garage;
import putback.plan.tools.Limits;
import putback.quantity.Torque;
import putback.tightening.Asked;
import putback.tightening.ReadingWindow;
import putback.tightening.Tightness;
import putback.tightening.toolbox.Task;
import putback.tightening.toolbox.Toolbox;
import putback.tightening.toolbox.WrenchChoice;

/**
 * One fastener as the Tightening page shows it.
 *
 * @param fault what cannot be meant so; empty for nothing
 * @param field the value it is about; empty for none
 * @param setting of the wrench for a torque without a thread, a line each; empty where none is asked
 * @param answer null where nothing is asked yet, or something is wrong
 */
public record TighteningView(
        Map<String, String> values,
        String fault,
        String field,
        List<String> setting,
        @Nullable Answer answer) {
    /**
     * @param drawing the fastener, SVG
     * @param bar clamp load against proof load, SVG
     * @param figures name and value, in order
     * @param wrench setting and windows, a line each
     */
    public record Answer(
            boolean plausible,
            String drawing,
            String bar,
            Map<String, String> figures,
            List<String> wrench,
            List<String> notes) {}

    private static final List<String> NAMES = List.of(
            "thread",
            "class",
            "torque",
            "clamp",
            "use",
            "hex",
            "friction",
            "friction-thread",
            "friction-head",
            "nut-factor",
            "bearing",
            "prevailing",
            "angle",
            "stiffness",
            "wrench",
            "adapter",
            "at",
            "step",
            "limit",
            "deviation");

    /** The value that was typed; empty where there is none. */
    public String value(String name) {
        String value = values.get(name);
        return value == null ? "" : value;
    }

    /** Whether any of the values is there. */
    public boolean hasAny(String... names) {
        for (String name : names) {
            if (!value(name).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** Whether thread and class and one of the three are there. */
    public boolean isAsked() {
        return !value("thread").isEmpty()
                && !value("class").isEmpty()
                && !(value("torque") + value("clamp") + value("use")).isEmpty();
    }

    /** What has still to be typed before the fastener is judged. */
    public String missing() {
        List<String> missing = new ArrayList<>();
        for (String name : List.of("thread", "class")) {
            if (!hasAny(name)) {
                missing.add("the " + name);
            }
        }
        if (!hasAny("torque", "clamp", "use")) {
            missing.add("a torque");
        }
        if (missing.size() == 3) {
            return "Type thread, class and a torque: what it clamps, whether it can be right, and what a reading may be."
                    + " A torque with wrench and adapter alone gives the setting.";
        }
        return "Still to be typed: " + String.join(" and ", missing) + ". Then: what it clamps, and whether the torque"
                + " can be right.";
    }

    /**
     * @param values what was typed, by name; what is blank counts as not given
     */
    static TighteningView of(Map<String, String> values, Garage garage) {
        Map<String, String> given = new LinkedHashMap<>();
        for (String name : NAMES) {
            String value = values.get(name);
            if (value != null && !value.isBlank()) {
                given.put(name, value.strip());
            }
        }
        TighteningView view = new TighteningView(given, "", "", List.of(), null);
        Given asked = new Given(given::get, "");
        try {
            if (view.isAsked()) {
                return new TighteningView(given, "", "", List.of(), answer(asked, garage));
            }
            boolean setting = asked.has("torque") && view.hasAny("wrench", "adapter", "step", "deviation");
            return setting
                    ? new TighteningView(given, "", "", setting(asked, SettingQuestion.answer(asked)), null)
                    : view;
        } catch (Unclear unclear) {
            return new TighteningView(given, unclear.said(), unclear.field(), List.of(), null);
        }
    }

    private static Answer answer(Given given, Garage garage) throws Unclear {
        Asked asked = FastenerQuestion.read(given);
        Tightness tightness = Given.answer(Tightness.of(asked));
        return new Answer(
                tightness.plausible(),
                FastenerDrawing.draw(tightness),
                ClampBar.draw(tightness),
                figures(tightness),
                wrench(given, tightness, garage),
                tightness.notes());
    }

    private static Map<String, String> figures(Tightness answer) {
        Map<String, String> figures = new LinkedHashMap<>();
        figures.put("Torque", answer.torque().text());
        figures.put("Clamp load", answer.clamp().text());
        figures.put("Of proof load", Math.round(100 * answer.proofUse()) + " %");
        figures.put("Of yield, pull and twist", Math.round(100 * answer.yieldUse()) + " %");
        figures.put("Proof load", answer.proofLoad().text());
        figures.put(
                "To loosen it",
                answer.yieldUse() > 1
                        ? "not reckoned: the bolt yields first"
                        : Torque.spanText(answer.looseningLow(), answer.looseningHigh()));
        return figures;
    }

    private static List<String> wrench(Given given, Tightness answer, Garage garage) throws Unclear {
        List<String> lines = new ArrayList<>();
        Torque torque = answer.torque();
        if (answer.breaksIt()) {
            return List.of("No setting: the bolt yields at this torque. Check the unit, the thread, the class and the"
                    + " source first.");
        }
        SettingQuestion.Answer setting = SettingQuestion.answer(given.with("torque", torque));
        if (given.has("wrench") || given.has("step") || setting.window() != null) {
            return setting(given, setting);
        }
        Limits limits = Limits.usual(torque);
        Toolbox toolbox = garage.toolbox();
        if (toolbox == null) {
            lines.addAll(WrenchText.lines(limits, null));
            return lines;
        }
        Task task = new Task(tool(answer.asked()), torque, limits.least(), limits.most(), false, false, false);
        lines.addAll(WrenchText.lines(limits, new WrenchChoice(toolbox, LocalDate.now(garage.clock())).of(task)));
        return lines;
    }

    private static List<String> setting(Given given, SettingQuestion.Answer setting) {
        List<String> lines = new ArrayList<>();
        ReadingWindow window = setting.window();
        lines.add("Set the wrench to " + setting.setting().text() + with(given) + ": the fastener gets "
                + setting.atFastener().text() + ".");
        if (window != null) {
            lines.add("A reading of " + window.text() + " is surely right.");
        }
        lines.addAll(setting.remarks());
        return lines;
    }

    private static String with(Given given) {
        String adapter = given.values().apply("adapter");
        String angle = given.values().apply("at");
        return adapter == null
                ? ""
                : ", with the adapter of " + adapter + (angle == null ? " straight on" : " at " + angle);
    }

    private static String tool(Asked asked) {
        return asked.hex() == null ? "socket" : asked.hex().acrossFlats() + " socket";
    }
}
