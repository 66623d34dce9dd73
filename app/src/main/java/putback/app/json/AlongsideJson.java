package putback.app.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.alongside.LifeLeft;
import putback.labour.alongside.Neighbour;
import putback.plan.Bond;
import putback.plan.Plan;
import putback.sheet.Life;

/** What could be renewed as well, for other programs. */
public final class AlongsideJson {
    private static final int PLACES = 4;

    private AlongsideJson() {}

    /**
     * One object, ASCII.
     *
     * @param left how far the car has come; null when that is not said
     * @param rate an hour's work; null when it is not said
     */
    public static String of(Plan plan, List<Neighbour> neighbours, @Nullable LifeLeft left, @Nullable BigDecimal rate) {
        JsonWriter json = new JsonWriter(200 + 150 * neighbours.size());
        json.beginObject().key("sheet").value(plan.assembly().sheet().id());
        json.key("renew").strings(plan.wanted().ids());
        json.key("objective").value(plan.objective().decimal());
        json.key("items").beginArray();
        for (Neighbour one : neighbours) {
            BigDecimal price = one.price();
            json.beginObject().key("part").value(one.target().id());
            json.key("name").value(one.target().name());
            json.key("extraMinutes").value(one.extra().decimal());
            json.key("aloneMinutes").value(one.alone().decimal());
            json.key("savedMinutes").value(one.saved().decimal());
            json.key("price").value(price == null ? null : price.toPlainString());
            BigDecimal now = one.priceNow();
            json.key("priceNow").value(now == null ? null : now.toPlainString());
            json.key("sold").value(one.soldAsAxleSet() ? "axle set" : "each");
            Bond bond = one.bond();
            json.key("goesWith").value(bond == null ? null : bond.word());
            json.key("extraTotalMinutes").value(one.extraInAll().decimal());
            json.key("proven").value(one.proven());
            life(json, one, left, rate);
            json.endObject();
        }
        json.endArray();
        return json.key("advice").strings(plan.advice()).endObject().toString();
    }

    private static void life(JsonWriter json, Neighbour one, @Nullable LifeLeft left, @Nullable BigDecimal rate) {
        Life life = one.life();
        if (left == null || life == null) {
            return;
        }
        BigDecimal chance = BigDecimal.valueOf(left.fails(life));
        BigDecimal saved = chance.multiply(one.saved().decimal());
        json.key("failsChance").value(chance.setScale(PLACES, RoundingMode.HALF_UP));
        json.key("expectedSavedMinutes").value(saved.setScale(2, RoundingMode.HALF_UP));
        if (rate != null) {
            json.key("expectedSaving")
                    .value(saved.multiply(rate)
                            .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP)
                            .toPlainString());
        }
    }
}
