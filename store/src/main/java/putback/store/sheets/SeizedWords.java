package putback.store.sheets;

import java.util.Map;
import putback.labour.seized.Hazard;
import putback.labour.seized.Nearby;
import putback.labour.seized.Refusal;

/** The words of a file of resorts; apart from those of a sheet, so that reading a sheet does not load them. */
final class SeizedWords {
    static final Map<String, Refusal> REFUSALS = Words.words(Refusal.values());
    static final Map<String, Hazard> HAZARDS = Words.words(Hazard.values());
    static final Map<String, Nearby> NEARBY = Words.words(Nearby.values());

    private SeizedWords() {}
}
