package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import putback.labour.seized.Attempt;
import putback.labour.seized.LeftOut;
import putback.labour.seized.Row;
import putback.labour.seized.Try;

/**
 * What to try on a fastener that will not move, in the pieces that a page is set from.
 *
 * @param tries in order
 * @param average what all of it takes; empty where nothing may be tried
 * @param cautions before the first of them
 * @param banned what would do harm here
 * @param idle what is not worth a try
 * @param ending when to stop, and what is left to decide
 */
public record RowReport(
        List<Tried> tries,
        String average,
        List<String> cautions,
        List<Not> banned,
        List<Not> idle,
        List<String> ending) {
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("wire-brush", "wire-brush thread and hexagon"),
            Map.entry("penetrant", "penetrant, and let it soak"),
            Map.entry("rock", "tighten a little, then rock it to and fro"),
            Map.entry("hammer", "hammer on the flats or the head"),
            Map.entry("grip", "grip the stud or hold the head"),
            Map.entry("heat", "heat the nut or what is around, not the bolt"),
            Map.entry("cut", "cut it"),
            Map.entry("press", "press it out"),
            Map.entry("cut-both-sides", "cut it on both sides"),
            Map.entry("weld-nut-on", "weld a nut on"),
            Map.entry("drill", "drill it out"));

    /**
     * One attempt.
     *
     * @param takes its minutes, its chance, and the minutes gone by then
     * @param loses what it may break or scraps, and while what it pays; may be empty
     */
    public record Tried(String name, String takes, List<String> loses) {
        public Tried {
            loses = List.copyOf(loses);
        }
    }

    /**
     * What is not tried.
     *
     * @param reasons one or more, what cannot be put aside first
     */
    public record Not(String name, List<String> reasons) {
        public Not {
            reasons = List.copyOf(reasons);
        }
    }

    public RowReport {
        tries = List.copyOf(tries);
        cautions = List.copyOf(cautions);
        banned = List.copyOf(banned);
        idle = List.copyOf(idle);
        ending = List.copyOf(ending);
    }

    public static RowReport of(Row row) {
        List<Tried> tries = new ArrayList<>();
        for (Try one : row.tries()) {
            tries.add(tried(one, row.isCertain()));
        }
        return new RowReport(
                tries, RowText.average(row), RowCautions.of(row), not(row, true), not(row, false), RowText.ending(row));
    }

    private static Tried tried(Try one, boolean certain) {
        Attempt attempt = one.attempt();
        List<String> loses = new ArrayList<>();
        if (attempt.breakChance().signum() > 0 && attempt.breakPrice().signum() > 0) {
            loses.add("may do damage, " + RowText.inHundred(attempt.breakChance()) + ", for "
                    + RowText.money(attempt.breakPrice()));
        }
        if (attempt.scraps().signum() > 0) {
            loses.add("scraps something for " + RowText.money(attempt.scraps()));
        }
        if (!certain) {
            loses.add("pays while giving up costs more than " + RowText.money(one.worth()));
        }
        boolean sure = attempt.chance().compareTo(java.math.BigDecimal.ONE) == 0;
        String takes = RowText.minutes(attempt.minutes().decimal()) + ", "
                + (sure ? "sure to work" : "works " + RowText.inHundred(attempt.chance())) + "; by then "
                + RowText.minutes(one.elapsed().decimal());
        return new Tried(name(attempt), takes, loses);
    }

    private static List<Not> not(Row row, boolean banned) {
        List<Not> out = new ArrayList<>();
        for (LeftOut one : row.leftOut()) {
            if (one.banned() == banned) {
                out.add(new Not(name(one.attempt()), one.reasons()));
            }
        }
        return out;
    }

    private static String name(Attempt attempt) {
        return NAMES.getOrDefault(attempt.id(), attempt.id().replace('-', ' '));
    }
}
