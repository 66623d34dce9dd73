package putback.app.papers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.labour.price.Invoice;
import putback.quantity.Torque;

/** What was done, found and declined, what it costs, and when to come back. */
final class HandoverPaper {
    private static final int RECHECKS = 2;
    private final Handover handover;
    private final HouseStyle style;
    private final List<Block> blocks = new ArrayList<>();

    private HandoverPaper(Handover handover, HouseStyle style) {
        this.handover = handover;
        this.style = style;
    }

    static Paper of(Handover handover, JobHead head, HouseStyle style) {
        HandoverPaper paper = new HandoverPaper(handover, style);
        boolean draft = !handover.draft().isEmpty();
        if (draft) {
            paper.blocks.add(new Block.Framed("Draft, not to be handed over", List.of(handover.draft())));
        }
        paper.carried();
        JobCard.sentences(paper.blocks, draft ? "What is to be done" : "What was done", handover.done());
        JobCard.sentences(paper.blocks, "Road tests", handover.drives());
        paper.invoice();
        paper.findings();
        JobCard.sentences(paper.blocks, "What you should know", handover.cautions());
        paper.blocks.add(new Block.Heading("Terms"));
        paper.blocks.add(handover.law().afterWork());
        paper.signatures();
        paper.recheck();
        return new Paper(Paper.Kind.HANDOVER, handover.title(), "", head, style, paper.blocks);
    }

    private void carried() {
        if (!handover.carried().isEmpty()) {
            blocks.add(new Block.Framed("Not to be driven. This is still open:", handover.carried()));
        }
    }

    private void invoice() {
        Invoice invoice = handover.invoice();
        blocks.add(new Block.Heading(handover.draft().isEmpty() ? "Invoice" : "Invoice, draft"));
        blocks.add(invoice == null ? Block.Words.of("Nothing to pay.") : InvoiceTable.of(invoice, style));
        JobCard.sentences(blocks, "Not in this total", handover.unpriced());
    }

    private void findings() {
        List<Row> rows = new ArrayList<>();
        for (Finding one : handover.findings()) {
            rows.add(Row.Cells.of(
                    Cell.of(one.what(), one.urgency().isEmpty() ? List.of() : List.of("How urgent: " + one.urgency())),
                    Cell.of(
                            said(one.kind()),
                            one.writtenBy().isEmpty() ? List.of() : List.of("written down by " + one.writtenBy())),
                    Cell.of(one.said().isEmpty() ? "" : "“" + one.said() + "”"),
                    Cell.EMPTY));
        }
        blocks.add(new Block.Heading("Found, and declined"));
        if (rows.isEmpty()) {
            blocks.add(Block.Words.of("Nothing else was written down."));
            return;
        }
        blocks.add(new Block.Table(
                List.of(
                        new Column("What was found", 40, false),
                        new Column("What became of it", 20, false),
                        new Column("The customer's words", 22, false),
                        new Column("Customer's initials", 18, false)),
                rows,
                false));
    }

    private static String said(Finding.Kind kind) {
        return switch (kind) {
            case OPEN -> "not answered yet";
            case AGREED -> "told; the customer wants it done";
            case DECLINED -> "advised, declined";
            case DECLINED_SAFETY -> "advised, declined: the car is not safe with it";
        };
    }

    private void signatures() {
        blocks.add(new Block.Fields(List.of(
                new Block.Field("Received the car and was told the above. Customer's signature", ""),
                new Block.Field("Handed over by", ""))));
        blocks.add(Block.Words.of(GarageTerms.NO_ADVICE));
    }

    private void recheck() {
        Recheck recheck = handover.recheck();
        if (recheck == null) {
            return;
        }
        blocks.add(new Block.Cut());
        blocks.add(new Block.Heading("Recheck card: wheel fasteners"));
        blocks.add(new Block.Framed("Wheels were off", comeBack(recheck)));
        blocks.add(Block.Words.of(torque(recheck)));
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < RECHECKS; i++) {
            rows.add(Row.Cells.of(Cell.of("\u00a0", List.of("\u00a0"))));
        }
        blocks.add(new Block.Table(
                List.of(
                        new Column("Date", 20, false),
                        new Column("Odometer, " + style.distanceUnit(), 20, false),
                        new Column("Wheel: moved or not", 25, false),
                        new Column("Torque, " + style.torqueUnit(), 15, false),
                        new Column("By", 20, false)),
                rows,
                false));
    }

    private List<String> comeBack(Recheck recheck) {
        LocalDate by = recheck.by();
        return List.of(
                "Come back after about " + style.about(recheck.kilometres()) + ", by "
                        + (by == null ? "______________" : style.date(by)) + " at the latest.",
                "Wheel fasteners settle after a wheel was off. They are tightened again with a torque wrench, car"
                        + " standing on its wheels.",
                "If a wheel knocks or shakes before that: stop where it is safe, and call.");
    }

    private String torque(Recheck recheck) {
        Torque torque = recheck.torque();
        if (torque == null) {
            return "Torque: not known. It is looked up in the maker's data, never guessed.";
        }
        String source = recheck.source().isEmpty() ? "source not given." : "source: " + recheck.source() + ".";
        return "Torque: " + style.torque(torque) + ", " + source;
    }
}
