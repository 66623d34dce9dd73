package putback.store.sheets;

/**
 * What a file is meant to be, for messages and limits.
 *
 * @param thing what a user calls it
 * @param needs the keys at its top
 * @param otherwise what could be named in place of a file that is not there
 * @param mostNodes values it may have, aliases counted with all they stand for
 * @param mebibytes how large it may be
 */
record Form(String thing, String needs, String otherwise, int mostNodes, int mebibytes) {
    static final Form SHEET =
            new Form("sheet", "sheet, title, parts and joints", " or the id of a stock sheet", Composer.MOST_NODES, 1);
    static final Form RESORTS = new Form("list of resorts", "rate and resorts", "", 10 * Composer.MOST_NODES, 1);
    static final Form TOOLBOX = new Form("toolbox", "toolbox, title and wrenches", "", Composer.MOST_NODES, 1);
    static final Form PLAN = new Form("plan", "sheet and steps", "", 20 * Composer.MOST_NODES, 16);
    static final Form EVENTS = new Form("file of events", "do and joint", "", Composer.MOST_NODES, 16);

    /** The most bytes that are read of it. */
    int mostBytes() {
        return mebibytes << 20;
    }
}
