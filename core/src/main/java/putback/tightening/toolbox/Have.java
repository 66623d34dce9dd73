package putback.tightening.toolbox;

import org.jspecify.annotations.Nullable;

/**
 * Whether the toolbox has what a plan asks for.
 *
 * @param state of the three
 * @param remark what would do instead, or what is known of the one that is there; empty for nothing
 */
public record Have(State state, String remark) {
    /** There, not there but something else would do, not there. */
    public enum State {
        THERE("yes"),
        INSTEAD("instead"),
        MISSING("no");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    private static final String WORST_FLARE = "an open spanner rounds a union: borrow one first";

    /** For a tool as a plan names it: {@code 18 mm socket}, {@code trim lever}. */
    public static Have tool(Toolbox toolbox, String name) {
        Tool sized = Tool.named(name);
        if (sized == null) {
            return kept(toolbox.kept(name) == null ? toolbox.aid(name) : toolbox.kept(name), 1);
        }
        if (toolbox.owned(sized.form(), sized.size()) != null) {
            return new Have(State.THERE, "");
        }
        String instead = Substitutes.of(toolbox, sized);
        if (instead != null) {
            return new Have(State.INSTEAD, instead);
        }
        return new Have(State.MISSING, sized.form() == ToolForm.FLARE_SPANNER ? WORST_FLARE : "");
    }

    /**
     * For an aid.
     *
     * @param atOnce how many are on the car at one time
     */
    public static Have aid(Toolbox toolbox, String name, int atOnce) {
        Kept aid = toolbox.aid(name);
        return kept(aid == null ? toolbox.kept(name) : aid, atOnce);
    }

    private static Have kept(@Nullable Kept one, int atOnce) {
        if (one == null) {
            return new Have(State.MISSING, "");
        }
        if (one.count() < atOnce && one.name().contains("compressor")) {
            return new Have(State.INSTEAD, "there is only " + one.count() + ": take one off before the next goes on");
        }
        return one.count() < atOnce
                ? new Have(State.MISSING, "there " + (one.count() == 1 ? "is" : "are") + " only " + one.count())
                : new Have(State.THERE, one.remark());
    }
}
