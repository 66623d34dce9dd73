package putback.app.cli;

import java.util.List;
import putback.app.json.JsonWriter;
import putback.proof.Case;
import putback.proof.Proofs;
import putback.proof.Verdict;

/** Prints outside figures beside ours, for anyone who doubts a number. */
final class ProofCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "proof",
                "Holds published figures against ours.",
                List.of(),
                List.of(
                        Option.value(
                                "--room", "ROOM", "only the cases of one room: " + String.join(", ", Proofs.rooms())),
                        Option.flag("--json", "one JSON object instead of text")));
    }

    @Override
    public String more() {
        return """
                Each case has its source and page or table, the quantity, the source's figure, ours, the difference, what
                is allowed and why, and the verdict. Exit code 0 when none disagrees without an explanation, else 1.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        String room = arguments.value("--room").orElse("");
        if (!room.isEmpty() && !Proofs.rooms().contains(room)) {
            throw new UsageFault("putback proof: there is no room \"" + room + "\" with cases. There is: "
                    + String.join(", ", Proofs.rooms()));
        }
        List<Case> cases = Proofs.run(room);
        terminal.out().print(arguments.has("--json") ? json(cases) : text(cases));
        return disagree(cases) == 0 ? Exit.DONE : Exit.FAILED;
    }

    private static int disagree(List<Case> cases) {
        return count(cases, Verdict.DISAGREES);
    }

    private static int count(List<Case> cases, Verdict verdict) {
        int count = 0;
        for (Case one : cases) {
            count += one.verdict() == verdict ? 1 : 0;
        }
        return count;
    }

    private static String text(List<Case> cases) {
        StringBuilder text = new StringBuilder();
        String source = "";
        for (Case one : cases) {
            if (!one.source().equals(source)) {
                source = one.source();
                text.append('\n').append(source).append('\n');
            }
            text.append("  ")
                    .append(one.at())
                    .append(": ")
                    .append(one.quantity())
                    .append('\n');
            text.append("    theirs ").append(one.expected().toPlainString());
            text.append(", ours ").append(one.ours().toPlainString());
            text.append(", difference ").append(one.difference().toPlainString());
            text.append(", allowed ").append(one.allowed().toPlainString());
            text.append(" (").append(one.because()).append("): ");
            text.append(one.verdict().word()).append('\n');
        }
        text.append('\n').append(count(cases, Verdict.AGREES)).append(" of ").append(cases.size());
        return text.append(" agree, ")
                .append(count(cases, Verdict.KNOWN))
                .append(" in known disagreement, ")
                .append(disagree(cases))
                .append(" in disagreement without an explanation.\n")
                .toString();
    }

    private static String json(List<Case> cases) {
        JsonWriter json = new JsonWriter(400 * cases.size() + 100);
        json.beginObject().key("cases").beginArray();
        for (Case one : cases) {
            json.beginObject();
            json.key("room").value(one.room()).key("id").value(one.id());
            json.key("source").value(one.source()).key("at").value(one.at());
            json.key("quantity").value(one.quantity()).key("published").value(one.expected());
            json.key("ours").value(one.ours()).key("difference").value(one.difference());
            json.key("allowed").value(one.allowed()).key("because").value(one.because());
            json.key("verdict").value(one.verdict().word()).endObject();
        }
        json.endArray().key("agree").value(count(cases, Verdict.AGREES));
        return json.key("disagree").value(disagree(cases)).endObject() + "\n";
    }
}
