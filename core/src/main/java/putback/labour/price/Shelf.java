package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import putback.labour.learnt.ShelfRule;
import putback.quantity.Parsed;

/** Which fasteners to have before starting: those that a seizure may cost, where lacking one is dearer than having it. */
final class Shelf {
    private Shelf() {}

    /** Likeliest first, of equal ones in the order of the sheet. */
    static List<Spare> of(List<Stuck> stuck, BigDecimal ratePerHour) {
        List<Spare> shelf = new ArrayList<>();
        double lacking = ratePerHour.doubleValue() * Assumed.WAITING_MINUTES / 60;
        for (Stuck one : stuck) {
            double price = one.dearest().doubleValue();
            double each = one.spoiledEach();
            if (each > 0 && ShelfRule.of(lacking, price * Assumed.LYING) instanceof Parsed.Value<ShelfRule> rule) {
                double[] chances = new double[one.count()];
                Arrays.fill(chances, each);
                int count = rule.value().count(chances);
                if (count > 0) {
                    double any = 1 - Math.pow(1 - each, one.count());
                    shelf.add(new Spare(one.joint().id(), one.joint().name(), any, count, one.dearest()));
                }
            }
        }
        shelf.sort(Comparator.comparingDouble(Spare::chance).reversed());
        return List.copyOf(shelf);
    }
}
