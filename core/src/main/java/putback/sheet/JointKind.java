package putback.sheet;

import putback.quantity.Minutes;

/** What kind of fixing holds the parts, with the minutes assumed for one fastener where a sheet says nothing. */
public enum JointKind implements Worded {
    BOLT_NUT("bolt-nut", true, "0.8", "1.0"),
    BOLT("bolt", true, "0.5", "0.7"),
    NUT("nut", true, "0.5", "0.7"),
    SCREW("screw", true, "0.25", "0.3"),
    CLIP("clip", false, "0.15", "0.15"),
    PLUG("plug", false, "0.15", "0.1"),
    PIN("pin", false, "0.3", "0.3"),
    TAPER("taper", true, "2.0", "1.2"),
    PRESS("press", false, "6.0", "6.0"),
    CIRCLIP("circlip", false, "0.8", "0.8"),
    UNION("union", true, "0.8", "1.0"),
    HOOK("hook", false, "0.2", "0.3"),
    SEAT("seat", false, "0.2", "0.4");

    private final String word;
    private final boolean threaded;
    private final Minutes open;
    private final Minutes close;

    JointKind(String word, boolean threaded, String open, String close) {
        this.word = word;
        this.threaded = threaded;
        this.open = Minutes.of(open);
        this.close = Minutes.of(close);
    }

    @Override
    public String word() {
        return word;
    }

    /** Whether it is tightened on a thread: bolt-nut, bolt, nut, screw, union, and a taper with its nut. */
    public boolean threaded() {
        return threaded;
    }

    /** Minutes to open one fastener where the sheet gives none. Common practice, no source. */
    public Minutes defaultOpen() {
        return open;
    }

    /** Minutes to close one fastener where the sheet gives none. Common practice, no source. */
    public Minutes defaultClose() {
        return close;
    }
}
