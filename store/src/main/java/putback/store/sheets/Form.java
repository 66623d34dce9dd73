package putback.store.sheets;

/**
 * What a file is meant to be, for messages and limits.
 *
 * @param thing what a user calls it
 * @param needs the keys at its top
 * @param otherwise what could be named in place of a file that is not there
 * @param mostNodes values it may have, aliases counted with all they stand for
 * @param mebibytes how large it may be
 * @param writtenAs what kind of file holds it
 */
record Form(String thing, String needs, String otherwise, int mostNodes, int mebibytes, String writtenAs) {
    private static final String YAML = "a YAML text file";
    private static final String JSON = "a JSON text file";

    static final Form SHEET = new Form(
            "sheet", "sheet, title, parts and joints", " or the id of a stock sheet", Composer.MOST_NODES, 1, YAML);
    static final Form RESORTS = new Form("list of resorts", "rate and resorts", "", 10 * Composer.MOST_NODES, 1, YAML);
    static final Form TOOLBOX = new Form("toolbox", "toolbox, title and wrenches", "", Composer.MOST_NODES, 1, YAML);
    static final Form PLACE =
            new Form("place", "place, name and source", " or the id of a place", Composer.MOST_NODES, 1, YAML);
    static final Form LEARNT =
            new Form("file of what a garage learnt", "joint or resort", "", Composer.MOST_NODES, 16, JSON);
    static final Form PLAN = new Form("plan", "sheet and steps", "", 20 * Composer.MOST_NODES, 16, JSON);
    static final Form EVENTS = new Form("file of events", "do and joint", "", Composer.MOST_NODES, 16, JSON);
    static final Form TRACE = new Form("bounce trace", "rows of time and height", "", 0, 16, "a CSV text file");
    static final Form QUESTIONS = new Form("list of questions", "questions", "", Composer.MOST_NODES, 1, YAML);
    static final Form CORNER =
            new Form("suspension file", "suspension, points and tyre-radius", "", Composer.MOST_NODES, 1, YAML);
    static final Form ANGLES =
            new Form("file of wheel angles", "front, rear and wanted", "", Composer.MOST_NODES, 1, YAML);

    /** The most bytes that are read of it. */
    int mostBytes() {
        return mebibytes << 20;
    }
}
