package putback.app.asking;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.StatedTorque;
import putback.quantity.Torque;
import putback.quantity.TorqueUnit;
import putback.tightening.Adapter;
import putback.tightening.Graduation;
import putback.tightening.ReadingWindow;

/** What a torque wrench is set to, or what a reading was, as a person asks it. */
public final class SettingQuestion {
    private static final double MOST_DEVIATION = 20;
    private static final double MOST_NM = 5000;
    private static final double NOISE = 1e-9;

    private SettingQuestion() {}

    /**
     * @param setting of the wrench, or the reading given
     * @param window what a reading may be, or with a reading given what the fastener may have had; null where no deviation
     *     is given
     * @param remarks what else the hand has to know, each a sentence
     */
    public record Answer(
            boolean isReading,
            Torque setting,
            TorqueUnit unit,
            Torque atFastener,
            Adapter adapter,
            @Nullable ReadingWindow window,
            List<String> remarks) {
        public Answer {
            remarks = List.copyOf(remarks);
        }
    }

    /** Answers it, or says what is wrong with the first value that cannot be. */
    public static Answer answer(Given given) throws Unclear {
        StatedTorque wanted = given.read("torque", StatedTorque::parse);
        StatedTorque reading = given.read("reading", StatedTorque::parse);
        if ((wanted == null) == (reading == null)) {
            throw new Unclear(
                    "",
                    "give " + given.shown("torque") + " for a setting, or " + given.shown("reading")
                            + " for the way back");
        }
        Adapter adapter = adapter(given);
        return wanted == null ? wasRead(given, adapter, reading) : toSet(given, adapter, wanted);
    }

    private static Answer wasRead(Given given, Adapter adapter, @Nullable StatedTorque read) throws Unclear {
        Torque reading = positive(given, "reading", read == null ? null : read.torque());
        if (given.has("step")) {
            throw given.unclear("step", "a reading is what it is; leave the marks out");
        }
        Torque at = adapter.atFastener(reading);
        Torque limit = given.read("limit", Torque::parse);
        Double deviation = deviation(given);
        List<String> remarks = remarks(adapter);
        ReadingWindow had = null;
        if (deviation != null) {
            had = new ReadingWindow(
                    new Torque(at.newtonMetres() / (1 + deviation)), new Torque(at.newtonMetres() / (1 - deviation)));
        }
        double most = had == null ? at.newtonMetres() : had.high().newtonMetres();
        if (limit != null && most > limit.newtonMetres()) {
            remarks.add("That is above the limit of " + limit.text()
                    + (at.newtonMetres() > limit.newtonMetres() ? "." : " if the wrench is off as far as it may be."));
        }
        return new Answer(
                true, reading, read == null ? TorqueUnit.NEWTON_METRE : read.unit(), at, adapter, had, remarks);
    }

    private static Answer toSet(Given given, Adapter adapter, StatedTorque stated) throws Unclear {
        Torque wanted = positive(given, "torque", stated.torque());
        Torque limit = given.read("limit", Torque::parse);
        if (limit != null && limit.newtonMetres() < wanted.newtonMetres()) {
            throw given.unclear("limit", limit.text() + " is below the wanted " + wanted.text());
        }
        Torque most = limit == null ? ReadingWindow.usualMost(wanted) : limit;
        Torque least = ReadingWindow.usualLeast(wanted);
        Double deviation = deviation(given);
        ReadingWindow window = Given.answer(ReadingWindow.of(least, most, adapter, deviation == null ? 0 : deviation));
        Torque exact = adapter.setting(wanted);
        List<String> remarks = remarks(adapter);
        Torque target = exact;
        if (exact.newtonMetres() > window.high().newtonMetres()) {
            target = window.high();
            remarks.add("It is set below what is wanted, so that the wrench's deviation does not pass the limit.");
        }
        Torque setting = onMark(given, target, window);
        if (setting.newtonMetres() > MOST_NM) {
            throw new Unclear("", "a setting of " + setting.text() + " is more than any wrench has; check the lengths");
        }
        return new Answer(
                false,
                setting,
                stated.unit(),
                adapter.atFastener(setting),
                adapter,
                deviation == null ? null : window,
                remarks);
    }

    private static List<String> remarks(Adapter adapter) {
        List<String> remarks = new ArrayList<>();
        if (adapter.changesTheLever()) {
            remarks.add("Pull where the length of the wrench was measured to: with an adapter a hand further in or out"
                    + " changes the torque.");
        }
        if (adapter.isDelicate()) {
            remarks.add("With a factor of " + Torque.figure(adapter.factor())
                    + " a small error in a length, or in where the hand pulls, makes a large one in the torque.");
        }
        return remarks;
    }

    private static Torque onMark(Given given, Torque target, ReadingWindow window) throws Unclear {
        Torque step = given.read("step", Torque::parse);
        if (step == null) {
            return target;
        }
        Torque mark = Given.answer(Graduation.nearest(target, positive(given, "step", step), window.high()));
        if (mark.newtonMetres() < window.low().newtonMetres() * (1 - NOISE)) {
            throw given.unclear(
                    "step", "no mark of " + step.text() + " lies between " + window.text() + "; take a finer wrench");
        }
        return mark;
    }

    private static @Nullable Double deviation(Given given) throws Unclear {
        Double percent = given.read(
                "deviation",
                text -> Given.number(
                        text.replace("%", ""), 0, MOST_DEVIATION, "a deviation in percent, above 0 to 20"));
        return percent == null ? null : percent / 100;
    }

    private static Adapter adapter(Given given) throws Unclear {
        Length wrench = given.read("wrench", Length::parse);
        Length adapter = given.read("adapter", Length::parse);
        Angle angle = given.read("at", Given::angle);
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

    private static Torque positive(Given given, String name, @Nullable Torque torque) throws Unclear {
        if (torque == null || !(torque.newtonMetres() > 0)) {
            throw given.unclear(name, (torque == null ? "it" : torque.text()) + " has to be more than zero");
        }
        return torque;
    }
}
