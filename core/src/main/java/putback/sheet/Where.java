package putback.sheet;

/** On which sides an entry of a sheet exists. */
public enum Where {
    /** Once: a shared part, or any entry of a sheet without sides. */
    ONCE,
    /** The same on left and right. */
    EACH_SIDE,
    /** Only, or differently, on the left. */
    LEFT,
    /** Only, or differently, on the right. */
    RIGHT
}
