package putback.store.overlay;

import java.util.ArrayList;
import java.util.List;
import putback.store.sheets.KeptTexts;
import putback.store.sheets.SheetReader;

/** Makes a sheet that another garage can read: what it is built on there is at hand everywhere. */
public final class Handing {
    private static final int DEEPEST = 8;

    private Handing() {}

    /** The same car described over stock sheets alone; a kept sheet below it is written into it. */
    public static Overlay over(Overlay own, KeptTexts kept) {
        return over(own, kept, DEEPEST);
    }

    private static Overlay over(Overlay own, KeptTexts kept, int deeper) {
        List<String> bases = new ArrayList<>();
        List<Overlay> below = new ArrayList<>();
        for (String base : own.bases()) {
            String text = SheetReader.stockIds().contains(base) ? null : kept.text(base);
            if (text != null && deeper > 0 && Overlay.read(base, text) instanceof OverlayRead.Sound sound) {
                Overlay whole = over(sound.overlay(), kept, deeper - 1);
                bases.addAll(whole.bases());
                below.add(whole);
            } else {
                bases.add(base);
            }
        }
        if (below.isEmpty()) {
            return own;
        }
        Overlay all = Overlay.on("sheet", own.title(), bases);
        for (Overlay one : below) {
            all = all.laid(one.top().without("base"));
        }
        return all.laid(own.top().without("base"));
    }
}
