package putback.app.cli;

/** The exit codes that scripts rely on. */
public final class Exit {
    public static final int DONE = 0;
    public static final int FAILED = 1;
    public static final int BAD_INPUT = 2;
    public static final int NO_SOUND_ANSWER = 3;
    public static final int OWES = 4;

    private Exit() {}
}
