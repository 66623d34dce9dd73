package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import putback.app.ladder.Figures;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.quantity.Minutes;
import putback.sheet.Joint;

/** Steps of one fixing that follow each other and stand on one line. */
public final class StepLines {
    private final List<Step> steps;

    private StepLines(List<Step> steps) {
        this.steps = steps;
    }

    /** The steps from this place on that fold into one: start, run down, tighten. */
    public static StepLines at(List<Step> all, int from, int end) {
        List<Step> folded = new ArrayList<>(3);
        Step first = all.get(from);
        folded.add(first);
        for (int i = from + 1; i < end && goesOn(folded.get(folded.size() - 1), all.get(i)); i++) {
            folded.add(all.get(i));
        }
        return new StepLines(folded);
    }

    private static boolean goesOn(Step step, Step next) {
        Joint joint = step.joint();
        Joint other = next.joint();
        return joint != null
                && other != null
                && joint.index() == other.index()
                && (step.act() == Act.START || step.act() == Act.RUN_DOWN)
                && (next.act() == Act.RUN_DOWN || next.act() == Act.TIGHTEN);
    }

    public int count() {
        return steps.size();
    }

    /** {@code 12} or {@code 12–14}. */
    public String number() {
        int last = steps.get(steps.size() - 1).number();
        return steps.size() == 1 ? "" + last : steps.get(0).number() + "–" + last;
    }

    /** Work and set-up, with one decimal; nothing for none. */
    public String minutes() {
        Minutes sum = Minutes.ZERO;
        for (Step step : steps) {
            sum = sum.plus(step.minutes()).plus(step.setup());
        }
        return sum.isZero() ? "" : Figures.minutes(sum);
    }

    /** What stands on the rail: how the fixing is left. */
    public String mark(String rail) {
        Step last = steps.get(steps.size() - 1);
        return switch (last.act()) {
            case UNDO -> "○";
            case BREAK_LOOSE -> "◌";
            case RUN_DOWN -> "◐";
            case TIGHTEN -> "●";
            case START -> last.joint() != null && !last.joint().entry().kind().threaded() ? "●" : "◐";
            default -> rail;
        };
    }

    /** The sentences, the fixing named once, then the tools. */
    public String words() {
        StringBuilder words = new StringBuilder(160);
        for (int i = 0; i < steps.size(); i++) {
            String text = i == 0 ? steps.get(i).text() : unnamed(steps.get(i));
            boolean tightenedNext = i + 1 < steps.size() && steps.get(i + 1).act() == Act.TIGHTEN;
            words.append(i == 0 ? "" : " ").append(tightenedNext ? untilItTouches(text) : text);
        }
        String tools = tools(words.toString());
        return tools.isEmpty()
                ? words.toString()
                : words.append(" [").append(tools).append(']').toString();
    }

    /** Without what is said about a later tightening, since that is said in the same breath. */
    private static String untilItTouches(String text) {
        int touch = text.indexOf(" until ");
        for (int at = touch; at >= 0 && at < text.length(); at++) {
            if (text.charAt(at) == ',' || text.charAt(at) == ';') {
                return text.substring(0, at) + ".";
            }
        }
        return text;
    }

    private static String unnamed(Step step) {
        Joint joint = step.joint();
        if (joint == null) {
            return step.text();
        }
        String text = step.text();
        String name = joint.name();
        int at = text.indexOf(' ') + 1;
        for (; at < text.length(); at++) {
            if (isWord(text, at, name)) {
                return text.substring(0, at).stripTrailing() + text.substring(at + name.length());
            }
        }
        return text;
    }

    /** Whether a name stands here by itself, and not inside a longer word. */
    private static boolean isWord(String text, int at, String name) {
        int end = at + name.length();
        return text.regionMatches(true, at, name, 0, name.length())
                && text.charAt(at - 1) == ' '
                && (end == text.length() || !Character.isLetterOrDigit(text.charAt(end)));
    }

    private String tools(String said) {
        StringBuilder tools = new StringBuilder();
        for (Step step : steps) {
            add(tools, step.tool(), said);
            add(tools, step.hold(), said);
        }
        return tools.toString();
    }

    private static void add(StringBuilder tools, String tool, String said) {
        if (!tool.isEmpty() && !tool.equals("hand") && tools.indexOf(tool) < 0 && !said.contains(tool)) {
            tools.append(tools.isEmpty() ? "" : ", ").append(tool);
        }
    }

    /** The passes of a tightening. */
    public List<String> stages() {
        return steps.get(steps.size() - 1).stages();
    }

    /** All cautions, each once. */
    public List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        for (Step step : steps) {
            for (String caution : step.cautions()) {
                if (!cautions.contains(caution)) {
                    cautions.add(caution);
                }
            }
        }
        return cautions;
    }

    public Step last() {
        return steps.get(steps.size() - 1);
    }

    public Step first() {
        return steps.get(0);
    }
}
