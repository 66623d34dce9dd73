package putback.plan.steps;

/** What is done in a step. */
public enum Act {
    HEIGHT("height"),
    BREAK_LOOSE("break-loose"),
    MARK("mark"),
    SUPPORT("support"),
    UNDO("undo"),
    TAKE_OFF("take-off"),
    ASIDE("aside"),
    RENEW("renew"),
    CLEAN("clean"),
    OFFER_UP("offer-up"),
    START("start"),
    RUN_DOWN("run-down"),
    TIGHTEN("tighten"),
    RELEASE("release"),
    SECOND_LOOK("second-look"),
    FOLLOW_UP("follow-up"),
    LET_DOWN("let-down"),
    JACK_UP("jack-up"),
    PREPARE("prepare"),
    LOOK("look"),
    CHECK("check");

    private final String word;

    Act(String word) {
        this.word = word;
    }

    /** The word of the file format. */
    public String word() {
        return word;
    }
}
