package putback.sheet;

import java.util.List;

/**
 * What is said at a joint's steps.
 *
 * @param beforeOpening done before it is opened
 * @param marks marks to make before it is opened
 * @param look worth a look while it is in sight
 * @param staysShut look-alikes nearby that must not be touched
 * @param beforeClosing done before it is closed
 */
public record Wording(
        List<String> beforeOpening,
        List<String> marks,
        List<String> look,
        List<String> staysShut,
        List<String> beforeClosing) {
    public static final Wording SILENT = new Wording(List.of(), List.of(), List.of(), List.of(), List.of());

    public Wording {
        beforeOpening = List.copyOf(beforeOpening);
        marks = List.copyOf(marks);
        look = List.copyOf(look);
        staysShut = List.copyOf(staysShut);
        beforeClosing = List.copyOf(beforeClosing);
    }
}
