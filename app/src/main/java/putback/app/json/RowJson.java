package putback.app.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import putback.app.text.RowCautions;
import putback.labour.seized.LeftOut;
import putback.labour.seized.Row;
import putback.labour.seized.Try;

/** What to try on a fastener that will not move, for other programs. */
public final class RowJson {
    private static final int PLACES = 6;

    private RowJson() {}

    /** One object, ASCII. */
    public static String of(Row row) {
        JsonWriter json = new JsonWriter(1000);
        List<String> order = new ArrayList<>();
        for (Try one : row.tries()) {
            order.add(one.attempt().id());
        }
        json.beginObject().key("order").strings(order);
        json.key("expectedMinutes").value(rounded(row.expectedMinutes()));
        json.key("expectedCost").value(money(row.expectedCost()));
        json.key("p90Minutes").value(row.p90Minutes().decimal());
        json.key("certain").value(row.isCertain());
        json.key("leftChance").value(rounded(row.leftChance()));
        tries(json, row.tries());
        leftOut(json, row.leftOut());
        json.key("cautions").strings(RowCautions.of(row));
        return json.endObject().toString();
    }

    private static void tries(JsonWriter json, List<Try> tries) {
        json.key("tries").beginArray();
        for (Try one : tries) {
            json.beginObject().key("resort").value(one.attempt().id());
            json.key("minutes").value(one.attempt().minutes().decimal());
            json.key("elapsedMinutes").value(one.elapsed().decimal());
            json.key("chance").value(rounded(one.attempt().chance()));
            json.key("reached").value(rounded(one.reached()));
            json.key("cost").value(money(one.cost()));
            json.key("worth").value(money(one.worth())).endObject();
        }
        json.endArray();
    }

    private static void leftOut(JsonWriter json, List<LeftOut> leftOut) {
        json.key("leftOut").beginArray();
        for (LeftOut one : leftOut) {
            json.beginObject().key("resort").value(one.attempt().id());
            json.key("because").value(one.because());
            json.key("reasons").strings(one.reasons());
            json.key("banned").value(one.banned()).endObject();
        }
        json.endArray();
    }

    private static String money(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    private static BigDecimal rounded(BigDecimal value) {
        BigDecimal shown = value.setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return shown.scale() < 0 ? shown.setScale(0) : shown;
    }
}
