package putback.app.cli;

import java.util.List;
import putback.angles.BushWindUp;
import putback.app.asking.BushQuestion;
import putback.app.asking.Unclear;
import putback.app.json.JsonWriter;

/** How far a rubber bush is wound up when it was tightened with the wheel hanging. */
final class BushCommand implements Command {
    private static final String NAME = "bush";

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "How far a rubber bush is wound up when its bolt was tightened at another height.",
                List.of(),
                List.of(
                        Option.value("--arm", "350mm", "from the pivot bolt to the arm's outer joint"),
                        Option.value(
                                "--ride", "-15mm", "outer joint above the pivot at ride height; below is negative"),
                        Option.value("--tightened", "-100mm", "the same when the bolt was tightened"),
                        Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                Positive: the arm hung lower when the bolt was tightened. What a bush stands for how long is not known
                here; its maker says at which height to tighten it, mostly ride height.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        try {
            BushWindUp answer = BushQuestion.answer(Typed.in(arguments));
            terminal.out().print(arguments.has("--json") ? json(answer) : text(answer));
            return Exit.DONE;
        } catch (Unclear unclear) {
            throw Renewing.fault(NAME, unclear.said());
        }
    }

    private static String text(BushWindUp answer) {
        StringBuilder text = new StringBuilder();
        Columns.paragraph(
                text,
                "The bush is wound up by " + answer.windUp().text() + " at ride height: the arm stands at "
                        + answer.atRide().text() + ", and stood at "
                        + answer.whenTightened().text() + " when the bolt was tightened.");
        Columns.paragraph(
                text,
                answer.isHardlyAny()
                        ? "That is hardly any."
                        : "Slacken the pivot bolt, bring the arm to ride height, and tighten it there.");
        return text.toString();
    }

    private static String json(BushWindUp answer) {
        JsonWriter json = new JsonWriter(100);
        json.beginObject().key("windUpDeg").number(answer.windUp().degrees());
        json.key("rideDeg").number(answer.atRide().degrees());
        json.key("tightenedDeg").number(answer.whenTightened().degrees());
        return json.endObject() + "\n";
    }
}
