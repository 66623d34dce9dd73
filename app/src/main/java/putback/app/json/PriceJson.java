package putback.app.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Estimate;
import putback.labour.price.Figure;
import putback.labour.price.Job;
import putback.labour.price.Line;
import putback.labour.price.Spare;
import putback.labour.share.Shares;
import putback.labour.time.DrawnTimes;
import putback.labour.time.Share;

/** What a job takes and costs, for other programs. */
public final class PriceJson {
    private static final int MINUTES = 2;
    private static final int CHANCE = 4;

    private final Estimate estimate;
    private final @Nullable DrawnTimes standing;
    private final JsonWriter json = new JsonWriter(4000);

    private PriceJson(Estimate estimate, @Nullable DrawnTimes standing) {
        this.standing = standing;
        this.estimate = estimate;
    }

    /**
     * One object, ASCII.
     *
     * @param standing how long the car stands with several hands; null for one pair
     */
    public static String of(Estimate estimate, @Nullable DrawnTimes standing) {
        return new PriceJson(estimate, standing).write();
    }

    private String write() {
        json.beginObject();
        DrawnTimes drawn = standing;
        if (drawn == null) {
            time("time", estimate.time().mean(), estimate.time()::quantile);
        } else {
            time("time", drawn.mean(), drawn::quantile);
            time("work", estimate.time().mean(), estimate.time()::quantile);
        }
        risk();
        json.key("soak").beginObject();
        json.key("joints").strings(estimate.soak().joints());
        json.key("savesMinutes").value(rounded(estimate.soak().savesMinutes(), MINUTES));
        json.endObject();
        shelf();
        shares();
        lines();
        json.key("labour").value(sum(Line.Kind.LABOUR));
        json.key("parts").value(sum(Line.Kind.PARTS));
        json.key("tax").value(sum(Line.Kind.TAX));
        json.key("total").value(estimate.invoice().total().toPlainString());
        chance("chanceOverCeiling", estimate.chanceOverCeiling());
        figures();
        json.key("expectedDamage")
                .value(rounded(estimate.expectedDamage(), MINUTES).toPlainString());
        chance("chanceBeatsAllResorts", estimate.chanceBeatsAll());
        json.key("notes").strings(estimate.notes());
        return json.endObject().toString();
    }

    private void time(String key, double mean, DoubleUnaryOperator quantile) {
        json.key(key).beginObject();
        json.key("meanMinutes").value(rounded(mean, MINUTES));
        json.key("p50Minutes").value(rounded(quantile.applyAsDouble(0.5), MINUTES));
        json.key("p80Minutes").value(rounded(quantile.applyAsDouble(0.8), MINUTES));
        json.key("p95Minutes").value(rounded(quantile.applyAsDouble(0.95), MINUTES));
        json.endObject();
    }

    private void risk() {
        json.key("risk").beginArray();
        for (Share one : estimate.risk()) {
            if (Estimate.isJoint(one)) {
                json.beginObject().key("joint").value(one.id());
                json.key("share").value(rounded(one.share(), CHANCE)).endObject();
            }
        }
        json.endArray();
        json.key("otherRisk").beginArray();
        for (Share one : estimate.risk()) {
            if (!Estimate.isJoint(one)) {
                json.beginObject().key("what").value(one.id().isEmpty() ? "The whole car" : one.id());
                json.key("share").value(rounded(one.share(), CHANCE)).endObject();
            }
        }
        json.endArray();
    }

    private void shelf() {
        json.key("shelf").beginArray();
        for (Spare one : estimate.shelf()) {
            json.beginObject().key("part").value(one.id());
            json.key("name").value(one.name());
            json.key("chance").value(rounded(one.chance(), CHANCE));
            json.key("count").value(one.count());
            json.key("price").value(one.price().toPlainString()).endObject();
        }
        json.endArray();
    }

    private void shares() {
        Shares shares = estimate.shares();
        json.key("shares").beginArray();
        for (int i = 0; shares != null && i < estimate.jobs().size(); i++) {
            Job job = estimate.jobs().get(i);
            json.beginObject().key("job").strings(job.wanted().ids());
            json.key("minutes").value(shares.minutes().get(i).decimal());
            json.key("alone").value(shares.alone().get(i).decimal()).endObject();
        }
        json.endArray();
        json.key("sharesOf").value("least minutes.work of each group of jobs");
    }

    private void lines() {
        json.key("lines").beginArray();
        for (Line one : estimate.invoice().lines()) {
            json.beginObject().key("text").value(one.text());
            json.key("quantity").value(one.quantity());
            json.key("unit").value(one.unit());
            json.key("amount").value(one.amount().toPlainString()).endObject();
        }
        json.endArray();
    }

    private void figures() {
        json.key("figures").beginObject();
        figure("likely", estimate.likely());
        figure("fourInFive", estimate.fourInFive());
        figure("stopAndCall", estimate.stopAndCall());
        json.key("ceilingMinutes");
        Long within = estimate.minutesToCeiling();
        json.number(within == null ? null : Double.valueOf(within));
        json.endObject();
    }

    private void figure(String key, Figure figure) {
        json.key(key).beginObject();
        json.key("minutes").value(BigDecimal.valueOf(figure.minutes()));
        json.key("total").value(figure.total().toPlainString()).endObject();
    }

    private void chance(String key, @Nullable Double chance) {
        json.key(key);
        if (chance == null) {
            json.number(null);
        } else {
            json.value(rounded(chance, CHANCE));
        }
    }

    private String sum(Line.Kind kind) {
        return estimate.invoice().sum(kind).toPlainString();
    }

    private static BigDecimal rounded(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    }
}
