package putback.app.asking;

import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Torque;
import putback.tightening.Adapter;
import putback.tightening.Graduation;
import putback.tightening.ReadingWindow;

/** What a torque wrench is set to, or what a reading was, as a person asks it. */
public final class SettingQuestion {
    private static final double MOST_DEVIATION = 20;

    private SettingQuestion() {}

    /**
     * @param setting of the wrench, or the reading given
     * @param window what a reading may be; null where no deviation is given
     */
    public record Answer(
            Torque setting,
            Torque atFastener,
            Adapter adapter,
            @Nullable ReadingWindow window) {}

    /** Answers it, or says what is wrong with the first value that cannot be. */
    public static Answer answer(Given given) throws Unclear {
        Torque wanted = given.read("torque", Torque::parse);
        Torque reading = given.read("reading", Torque::parse);
        if ((wanted == null) == (reading == null)) {
            throw new Unclear(
                    "",
                    "give " + given.shown("torque") + " for a setting, or " + given.shown("reading")
                            + " for the way back");
        }
        Adapter adapter = adapter(given);
        Torque from = wanted == null ? positive(given, "reading", reading) : positive(given, "torque", wanted);
        Torque setting = wanted == null ? from : onMark(given, adapter, from);
        return new Answer(
                setting, adapter.atFastener(setting), adapter, wanted == null ? null : window(given, adapter, wanted));
    }

    private static Adapter adapter(Given given) throws Unclear {
        Length wrench = given.read("wrench", Length::parse);
        Length adapter = given.read("adapter", Length::parse);
        Angle angle = given.read("at", Angle::parse);
        if (wrench == null) {
            if (adapter == null) {
                return Adapter.NONE;
            }
            throw new Unclear(
                    "wrench",
                    given.shown("wrench") + " is missing, such as " + given.shown("wrench")
                            + " 400mm; without it no adapter can be reckoned");
        }
        return Given.answer(
                Adapter.of(wrench, adapter == null ? new Length(0) : adapter, angle == null ? new Angle(0) : angle));
    }

    private static Torque onMark(Given given, Adapter adapter, Torque wanted) throws Unclear {
        Torque exact = adapter.setting(wanted);
        Torque step = given.read("step", Torque::parse);
        Torque limit = given.read("limit", Torque::parse);
        if (limit != null && limit.newtonMetres() < wanted.newtonMetres()) {
            throw given.unclear("limit", limit.text() + " is below the wanted " + wanted.text());
        }
        if (step == null) {
            return exact;
        }
        Torque most = limit == null ? ReadingWindow.usualMost(wanted) : limit;
        return Given.answer(Graduation.nearest(exact, positive(given, "step", step), adapter.setting(most)));
    }

    private static Torque positive(Given given, String name, @Nullable Torque torque) throws Unclear {
        if (torque == null || !(torque.newtonMetres() > 0)) {
            throw given.unclear(name, (torque == null ? "it" : torque.text()) + " has to be more than zero");
        }
        return torque;
    }

    private static @Nullable ReadingWindow window(Given given, Adapter adapter, Torque wanted) throws Unclear {
        Double percent = given.read(
                "deviation", text -> Given.number(text, 0, MOST_DEVIATION, "a deviation in percent, above 0 to 20"));
        if (percent == null) {
            return null;
        }
        Torque limit = given.read("limit", Torque::parse);
        Torque most = limit == null ? ReadingWindow.usualMost(wanted) : limit;
        return Given.answer(ReadingWindow.of(ReadingWindow.usualLeast(wanted), most, adapter, percent / 100));
    }
}
