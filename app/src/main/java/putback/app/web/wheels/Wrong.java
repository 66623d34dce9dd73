package putback.app.web.wheels;

import java.util.List;
import putback.store.sheets.Fault;

/**
 * Something wrong with what was typed.
 *
 * @param field name of the field that it is about; empty where it is about all of it
 * @param at the field as a person calls it; empty likewise
 * @param said what is wrong, and what would be right
 */
public record Wrong(String field, String at, String said) {
    /** In a file that a form wrote: said at the field, which needs no naming by the file's keys. */
    static Wrong atField(Fault fault, TypedFile written) {
        String field = written.field(fault.line());
        String message = fault.message();
        int named = message.indexOf(": ");
        boolean byKey = named > 0 && message.substring(0, named).matches("[a-z][a-z0-9.-]*( of [a-z0-9. -]+)?");
        return new Wrong(field, said(field), byKey && !field.isEmpty() ? message.substring(named + 2) : message);
    }

    /** In a file that was pasted. */
    static Wrong inFile(Fault fault, String field) {
        return new Wrong(field, "line " + fault.line() + ", column " + fault.column(), fault.message());
    }

    /** What is wrong with a field; empty where nothing is. */
    static String at(List<Wrong> all, String field) {
        for (Wrong one : all) {
            if (one.field.equals(field)) {
                return one.said;
            }
        }
        return "";
    }

    private static String said(String field) {
        String words = field.replaceAll("\\.(by|per|from|to|whole)$", "")
                .replaceAll("\\.sweep\\.[12]\\.", " steered, ")
                .replaceAll("^turn\\.", "what can be turned, ")
                .replaceAll("^wanted\\.", "wanted ");
        return words.replace('.', ' ').replace('-', ' ');
    }
}
