package putback.store.sheets;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import putback.store.sheets.Node.Entries;

/** Opens a file of one form. */
final class Documents {
    private Documents() {}

    /** The map at its top; null, with the fault told, when there is none. */
    static @Nullable Entries top(String name, Form form, Faults faults) {
        Place start = Place.startOf(name.isEmpty() ? "file" : name);
        if (name.isEmpty()) {
            faults.add(start, "no file is named; give the path of a " + form.thing());
            return null;
        }
        try {
            String text = SourceText.ofFile(Path.of(name), name, form, faults);
            String printable = text == null ? null : SourceText.printable(text, name, form, faults);
            return printable == null ? null : Composer.compose(name, printable, form, faults);
        } catch (InvalidPathException impossible) {
            faults.add(start, "no file can be called that; give the path of a " + form.thing());
            return null;
        }
    }

    /** The same of a text that was typed, under the name that messages give it. */
    static @Nullable Entries typed(String text, String name, Form form, Faults faults) {
        if (text.length() > form.mostBytes()) {
            faults.add(Place.startOf(name), "it is larger than " + form.mebibytes() + " MiB");
            return null;
        }
        String printable = SourceText.printable(text.replace("\r\n", "\n"), name, form, faults);
        return printable == null ? null : Composer.compose(name, printable, form, faults);
    }
}
