package putback.app.text;

/** What is said wherever penetrant is put on the night before. */
public final class SoakWords {
    /** Common practice, no source. */
    public static final String CAUTION =
            "Keep it off discs, pads, tyres and rubber, and where it may run onto them leave it out; clean off what goes"
                    + " together dry before it is tightened, and let it dry before there is a flame (common practice, no"
                    + " source).";

    private SoakWords() {}
}
