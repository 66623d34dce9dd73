package putback.sheet;

/** Something that a sheet names with a word of its own. */
public interface Worded {
    /** As it is written in a sheet. */
    String word();
}
