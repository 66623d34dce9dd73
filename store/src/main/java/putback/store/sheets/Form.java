package putback.store.sheets;

/**
 * What a file is meant to be, for messages and limits.
 *
 * @param thing what a user calls it
 * @param needs the keys at its top
 * @param otherwise what could be named in place of a file that is not there
 * @param mostNodes values it may have, aliases counted with all they stand for
 * @param writtenAs what kind of file holds it
 */
record Form(String thing, String needs, String otherwise, int mostNodes, String writtenAs) {
    private static final String YAML = "a YAML text file";

    static final Form SHEET = new Form(
            "sheet", "sheet, title, parts and joints", " or the id of a stock sheet", Composer.MOST_NODES, YAML);
    static final Form RESORTS = new Form("list of resorts", "rate and resorts", "", 10 * Composer.MOST_NODES, YAML);
    static final Form TOOLBOX = new Form("toolbox", "toolbox, title and wrenches", "", Composer.MOST_NODES, YAML);
    static final Form TRACE = new Form("bounce trace", "rows of time and height", "", 0, "a CSV text file");
    static final Form CORNER =
            new Form("suspension file", "suspension, points and tyre-radius", "", Composer.MOST_NODES, YAML);
    static final Form READINGS = new Form("file of wheel readings", "front or rear", "", Composer.MOST_NODES, YAML);
}
