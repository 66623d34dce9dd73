package putback.labour.price;

import java.math.BigDecimal;
import putback.labour.seized.Row;
import putback.labour.seized.Try;
import putback.labour.time.Seizure;
import putback.sheet.Joint;

/**
 * An opened joint whose fasteners may be seized, each by itself.
 *
 * @param chance that a certain one of its fasteners is, 0 to 1
 * @param row what is tried on it then
 * @param soaked the same after a night with penetrant
 */
record Stuck(Joint joint, double chance, Row row, Row soaked) {
    int count() {
        return joint.fastener().count();
    }

    Seizure seizure() {
        return Seizure.of(chance, row, joint.entry().spread());
    }

    /** Minutes on average that the night saves, over all its fasteners. */
    double soakingSaves() {
        return count() * (mean(row) - mean(soaked));
    }

    private double mean(Row one) {
        return new putback.labour.time.StepTime(
                        joint.id(),
                        new putback.labour.time.Lognormal(0, 0),
                        Seizure.of(chance, one, joint.entry().spread()))
                .mean();
    }

    /** Chance that at least one of its fasteners is seized and beats every resort. */
    double beatsAll() {
        return 1 - Math.pow(1 - chance * row.leftChance().doubleValue(), count());
    }

    /** Chance that a certain fastener is seized and has to be replaced. */
    double spoiledEach() {
        double going = 1;
        double spoiled = 0;
        for (Try one : row.tries()) {
            double harm = harm(one);
            spoiled += going * harm;
            going *= (1 - harm) * (1 - one.attempt().chance().doubleValue());
        }
        return chance * spoiled;
    }

    private static double harm(Try one) {
        return one.attempt().scraps().signum() > 0
                ? 1
                : one.attempt().breakPrice().signum() > 0
                        ? one.attempt().breakChance().doubleValue()
                        : 0;
    }

    /** The dearest piece that a resort of the row may cost. */
    BigDecimal dearest() {
        BigDecimal dearest = BigDecimal.ZERO;
        for (Try one : row.tries()) {
            BigDecimal breaks =
                    one.attempt().breakChance().signum() > 0 ? one.attempt().breakPrice() : BigDecimal.ZERO;
            dearest = dearest.max(one.attempt().scraps()).max(breaks);
        }
        return dearest;
    }

    /** What breaks and is scrapped on average, over all its fasteners, in the garage's currency. */
    double damage() {
        double damage = 0;
        for (Try one : row.tries()) {
            BigDecimal each = one.attempt()
                    .breakChance()
                    .multiply(one.attempt().breakPrice())
                    .add(one.attempt().scraps());
            damage += one.reached().doubleValue() * each.doubleValue();
        }
        return count() * chance * damage;
    }
}
