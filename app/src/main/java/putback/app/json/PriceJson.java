package putback.app.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import putback.app.asking.PriceQuestion;
import putback.app.text.JamWords;
import putback.labour.price.Amounts;
import putback.labour.price.Estimate;
import putback.labour.price.Evidence;
import putback.labour.price.Figure;
import putback.labour.price.Job;
import putback.labour.price.Line;
import putback.labour.price.Spare;
import putback.labour.price.Terms;
import putback.labour.share.Shares;
import putback.labour.time.DrawnTimes;
import putback.labour.time.Share;
import putback.plan.PartNeed;

/** What a job takes and costs, for other programs. */
public final class PriceJson {
    private static final int MINUTES = 2;
    private static final int CHANCE = 4;

    private final Estimate estimate;
    private final @Nullable DrawnTimes standing;
    private final PriceQuestion asked;
    private final JsonWriter json = new JsonWriter(4000);

    private PriceJson(Estimate estimate, @Nullable DrawnTimes standing, PriceQuestion asked) {
        this.asked = asked;
        this.standing = standing;
        this.estimate = estimate;
    }

    /**
     * One object, ASCII.
     *
     * @param standing how long the car stands with several hands; null for one pair
     */
    public static String of(Estimate estimate, @Nullable DrawnTimes standing, PriceQuestion asked) {
        return new PriceJson(estimate, standing, asked).write();
    }

    private String write() {
        json.beginObject();
        terms();
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
        unpriced();
        json.key("labour").value(sum(Line.Kind.LABOUR));
        json.key("parts").value(sum(Line.Kind.PARTS));
        json.key("tax").value(sum(Line.Kind.TAX));
        json.key("total").value(estimate.invoice().total().toPlainString());
        chance("chanceOverCeiling", estimate.chanceOverCeiling());
        figures();
        json.key("expectedDamage")
                .value(rounded(estimate.expectedDamage(), MINUTES).toPlainString());
        chance("chanceBeatsAllResorts", estimate.chanceBeatsAll());
        json.key("beatenCountedAs").value(JamWords.COUNTED_AS);
        json.key("notes").strings(estimate.notes());
        learnt();
        PlaceJson.write(json, asked.place(), estimate);
        return json.endObject().toString();
    }

    private void terms() {
        Terms terms = asked.terms();
        BigDecimal ceiling = terms.ceiling();
        json.key("sheet").value(asked.assembly().sheet().id());
        json.key("terms").beginObject();
        json.key("ratePerHour").value(plain(terms.ratePerHour()));
        json.key("taxPercent").value(plain(terms.taxPercent()));
        json.key("taxOn").value(terms.taxEachLine() ? "line" : "sum");
        json.key("markupPercent").value(plain(terms.markupPercent()));
        json.key("sundries").value(plain(terms.sundries()));
        json.key("subcontracted").value(plain(terms.subcontracted()));
        json.key("ceiling").value(ceiling == null ? null : plain(ceiling));
        json.key("rust").value(asked.rust().usual().number());
        json.key("rustOf").beginObject();
        asked.rust().closer().forEach((name, grade) -> json.key(name).value(grade.number()));
        json.endObject();
        json.key("hands").value(asked.hands());
        json.key("seed").value(BigDecimal.valueOf(asked.seed()));
        json.endObject();
    }

    private static String plain(BigDecimal amount) {
        return amount.toPlainString();
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
        BigDecimal rest = BigDecimal.ONE;
        for (Share one : estimate.risk()) {
            if (Estimate.isJoint(one)) {
                BigDecimal share = rounded(one.share(), CHANCE);
                rest = rest.subtract(share);
                json.beginObject().key("joint").value(one.id());
                json.key("share").value(share).endObject();
            }
        }
        if (!estimate.risk().isEmpty()) {
            json.beginObject().key("joint").value((String) null);
            json.key("share").value(rest).endObject();
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
            json.key("alone").value(shares.alone().get(i).decimal());
            json.key("errorMinutes").value(shares.error().get(i).decimal());
            amounts(i);
            json.endObject();
        }
        json.endArray();
        json.key("sharesOf").value("least minutes.work of each group of jobs");
        json.key("sharesExact").value(shares == null || shares.exact());
    }

    private void amounts(int job) {
        Amounts amounts = estimate.amounts();
        if (amounts != null) {
            json.key("amount").value(plain(amounts.each().get(job)));
            json.key("amountAlone").value(plain(amounts.alone().get(job)));
        }
    }

    private void unpriced() {
        json.key("unpriced").beginArray();
        for (PartNeed need : estimate.unpriced()) {
            json.beginObject().key("part").value(need.id());
            json.key("name").value(need.name());
            json.key("count").value(need.count());
            json.key("reason").value(need.reason()).endObject();
        }
        json.endArray();
    }

    private void learnt() {
        json.key("learnt").beginArray();
        for (Evidence one : estimate.evidence()) {
            int places = one.what().isTime() ? MINUTES : CHANCE;
            json.beginObject().key("of").value(one.id());
            json.key("what").value(one.what().word());
            json.key("assumed").value(rounded(one.assumed(), places));
            json.key("used").value(rounded(one.used(), places));
            json.key("own").value(one.seen());
            json.key("assumedCountsLike").value(rounded(one.believed(), 0)).endObject();
        }
        json.endArray();
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
        figure("stopAndCall", estimate.stopAndCall().figure());
        json.key("stopAndCallBy").value(estimate.stopAndCall().byCeiling() ? "ceiling" : "time");
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
