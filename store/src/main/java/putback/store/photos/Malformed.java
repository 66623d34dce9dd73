package putback.store.photos;

/** A picture is not what its start says. The message ends a sentence that starts with what it is. */
final class Malformed extends Exception {
    private static final long serialVersionUID = 1;

    Malformed(String said) {
        super(said);
    }

    static Malformed cutOff() {
        return new Malformed("it ends too early. Maybe it was not sent whole; send it again");
    }
}
