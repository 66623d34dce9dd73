package putback.app.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Estimate;
import putback.labour.price.EstimateEntry;
import putback.labour.price.PlaceProfile;

/** What a place asks of an estimate; every field is there, and null where nobody knows. */
final class PlaceJson {
    private PlaceJson() {}

    static void write(JsonWriter json, PlaceProfile place, Estimate estimate) {
        BigDecimal upTo = place.approvedUpTo(estimate);
        Boolean written = place.writtenConsent();
        json.key("place").beginObject().key("id").value(place.id());
        json.key("name").value(known(place.name()));
        json.key("currency").value(known(place.currency()));
        json.key("before").value(known(place.before()));
        json.key("writtenConsent");
        if (written == null) {
            json.value((String) null);
        } else {
            json.value(written);
        }
        json.key("carries").strings(words(place.carries()));
        json.key("missing").strings(words(place.missing(estimate)));
        json.key("overPercent").value(plain(place.overrun().percent()));
        json.key("overAmount").value(plain(place.overrun().amount()));
        json.key("approvedUpTo").value(plain(upTo));
        json.key("beyond").value(known(place.beyond()));
        json.key("oldParts").value(known(place.oldParts()));
        json.key("warranty").value(known(place.warranty()));
        json.key("source").value(known(place.source()));
        json.key("caution").value(PlaceProfile.CAUTION).endObject();
    }

    private static @Nullable String known(String text) {
        return text.isEmpty() ? null : text;
    }

    private static @Nullable String plain(@Nullable BigDecimal amount) {
        return amount == null ? null : amount.toPlainString();
    }

    private static List<String> words(List<EstimateEntry> entries) {
        List<String> words = new ArrayList<>();
        for (EstimateEntry one : entries) {
            words.add(one.word());
        }
        return words;
    }
}
