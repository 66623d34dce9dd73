package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Part;

/** Sheets for tests, and the reading of them from a folder. */
final class Sheets {
    /** Three parts and two joints, nothing more said than has to be. */
    static final String SMALL = """
            sheet: small
            title: Small
            parts:
              wheel: {}
              hub: {}
            joints:
              nuts: {joins: [wheel, hub], kind: nut}
              bolts: {joins: [hub, body], kind: bolt}
            """;

    /** The same, described for one side. */
    static final String SIDED = SMALL.replace("title: Small", "title: Small\nsides: both");

    private Sheets() {}

    /** A sheet in which every key of the format is used. */
    static String everything() {
        try (InputStream stream = Sheets.class.getResourceAsStream("everything.yaml")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    static Read read(Path folder, String yaml) {
        return SheetReader.read(write(folder, "sheet.yaml", yaml));
    }

    static Path write(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    static Assembly sound(Read read) {
        assertThat(read).isInstanceOf(Read.Sheet.class);
        return ((Read.Sheet) read).assembly();
    }

    /** The faults as they are printed, without the folder. */
    static List<String> faults(Read read) {
        assertThat(read).isInstanceOf(Read.Faulty.class);
        return ((Read.Faulty) read)
                .faults().stream()
                        .map(fault -> fault.toString().substring(fault.file().lastIndexOf('/') + 1))
                        .toList();
    }

    static Joint joint(Assembly assembly, String id) {
        return assembly.joints().stream()
                .filter(joint -> joint.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no joint " + id));
    }

    static Part part(Assembly assembly, String id) {
        return assembly.parts().stream()
                .filter(part -> part.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no part " + id));
    }

    static List<String> partIds(Assembly assembly) {
        return assembly.parts().stream().map(Part::id).toList();
    }

    static List<String> jointIds(Assembly assembly) {
        return assembly.joints().stream().map(Joint::id).toList();
    }
}
