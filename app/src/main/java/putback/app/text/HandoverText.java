package putback.app.text;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import putback.app.text.Page.Ink;
import putback.ledger.Handover;
import putback.ledger.PlanStep;
import putback.ledger.Signature;

/** The handover card for a terminal: what must not be done first, then what comes next. */
public final class HandoverText {
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private HandoverText() {}

    /** All of it. */
    public static String of(Handover card, Screen screen) {
        Page page = new Page(screen);
        page.words(Ink.STRONG, card.where());
        for (String not : card.mustNot()) {
            page.words(Ink.OCHRE, "  ! ", not);
        }
        list(page, "OUT", card.out());
        list(page, "NOT TIGHT", card.loose());
        list(page, "NOT IN ITS PLACE", card.away());
        list(page, "ONLY TO HELP", card.aids());
        page.gap().heading("NEXT", "");
        if (card.next() == null) {
            page.words(Ink.PLAIN, "  ", "Nothing of the plan is left.");
        } else {
            PlanStep next = card.next();
            String text = next.text().isEmpty() ? next.did().word() : next.text();
            page.words(Ink.PLAIN, "  " + next.number() + "  ", text);
        }
        return page.gap().words(Ink.FAINT, last(card.last())).toString();
    }

    private static void list(Page page, String heading, List<String> items) {
        if (items.isEmpty()) {
            return;
        }
        page.gap().heading(heading, "");
        for (String item : items) {
            page.words(Ink.PLAIN, "  - ", item);
        }
    }

    private static String last(Signature last) {
        String who = last.by().isEmpty() ? "somebody who gave no name" : last.by();
        return last.equals(Signature.NONE)
                ? "Nothing is written down yet."
                : "Last written by " + who
                        + (last.at() == null ? ", at no time given." : ", " + MINUTE.format(last.at()) + ".");
    }
}
