package putback.store.books;

import java.util.List;

/**
 * An estimate as it was put to the owner, or an invoice as it went with the car.
 *
 * @param id empty for one that is not kept yet
 * @param number of this job's, from 1; 0 for the invoice
 * @param renewed what it is about, in words
 * @param likely total that is as often too much as too little; of an invoice the total
 * @param fourInFive total that 4 jobs in 5 stay within; empty for an invoice
 * @param asked up to how much a yes is asked for; of an invoice up to how much there was one, empty for none
 * @param currency as printed; empty where nobody has said
 * @param lacking names of what has no price yet
 */
public record KeptEstimate(
        String id,
        String job,
        int number,
        String at,
        String by,
        String renewed,
        String likely,
        String fourInFive,
        String asked,
        String currency,
        List<String> lacking,
        List<Line> lines) {
    public KeptEstimate {
        lacking = List.copyOf(lacking);
        lines = List.copyOf(lines);
    }

    /** One line of it, amounts and quantities as decimals. */
    public record Line(String text, String quantity, String unit, String amount) {}

    /** Whether the owner would read the same in both. */
    public boolean saysTheSame(KeptEstimate other) {
        return renewed.equals(other.renewed)
                && likely.equals(other.likely)
                && fourInFive.equals(other.fourInFive)
                && asked.equals(other.asked)
                && currency.equals(other.currency)
                && lacking.equals(other.lacking)
                && lines.equals(other.lines);
    }
}
