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
                text.append('\n');
                Columns.paragraph(text, source);
            }
            Columns.indented(text, 2, one.at() + ": " + one.quantity());
            Columns.indented(
                    text,
                    4,
                    "theirs " + one.expected().toPlainString() + ", ours "
                            + one.ours().toPlainString() + ", difference "
                            + one.difference().toPlainString() + ", allowed "
                            + one.allowed().toPlainString() + " (" + one.because() + "): "
                            + one.verdict().word());
        }
        text.append('\n');
        Columns.paragraph(
                text,
                count(cases, Verdict.AGREES) + " of " + cases.size() + " agree, " + count(cases, Verdict.KNOWN)
                        + " in known disagreement, " + disagree(cases) + " in disagreement without an explanation.");
        return text.toString();
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
