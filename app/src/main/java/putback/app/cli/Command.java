package putback.app.cli;

/** One command of the program. */
public interface Command {

    /** How it is called. */
    Usage usage();

    /** What else its help says, below the options. */
    String more();

    /**
     * Does it.
     *
     * @return one of {@link Exit}
     */
    int run(Arguments arguments, Terminal terminal) throws UsageFault;
}
