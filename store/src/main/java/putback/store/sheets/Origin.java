package putback.store.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where a sheet comes from, which is also where its bases are looked for. */
sealed interface Origin {
    /** What stands before line and column in a fault. */
    String name();

    /** The same for the same sheet, however it was named. */
    String identity();

    /** Null, with the fault told, when it cannot be had. */
    @Nullable
    String text(Faults faults);

    /** The sheet that a base names from here; null when there is none. */
    @Nullable
    Origin base(String written);

    record OfFile(Path path) implements Origin {
        private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json");

        @Override
        public String name() {
            return path.toString();
        }

        @Override
        public String identity() {
            try {
                return path.toRealPath().toString();
            } catch (IOException notThere) {
                return path.toAbsolutePath().normalize().toString();
            }
        }

        @Override
        public @Nullable String text(Faults faults) {
            return SourceText.ofFile(path, name(), Form.SHEET, faults);
        }

        /** A file in the same folder, by its name or by its id; else a stock sheet. A sheet is never its own base. */
        @Override
        public @Nullable Origin base(String written) {
            for (String ending : ENDINGS) {
                if (written.endsWith(ending)) {
                    return neighbour(written);
                }
            }
            if (!Ids.isId(written)) {
                return null;
            }
            OfFile neighbour = neighbour(written + ".yaml");
            boolean other = neighbour != null && !neighbour.identity().equals(identity());
            return other ? neighbour : Stock.has(written) ? new OfStock(written) : neighbour;
        }

        private @Nullable OfFile neighbour(String name) {
            if (name.contains("/") || name.contains("\\")) {
                return null;
            }
            try {
                Path there = path.resolveSibling(name);
                return Files.isRegularFile(there) ? new OfFile(there) : null;
            } catch (InvalidPathException impossible) {
                return null;
            }
        }
    }

    record OfStock(String id) implements Origin {
        @Override
        public String name() {
            return Stock.resource(id);
        }

        @Override
        public String identity() {
            return "stock sheet " + id;
        }

        @Override
        public @Nullable String text(Faults faults) {
            try (InputStream stream = Stock.open(id)) {
                return SourceText.decoded(stream.readNBytes(Form.SHEET.mostBytes() + 1), name(), Form.SHEET, faults);
            } catch (IOException broken) {
                faults.add(Place.startOf(name()), "the stock sheet cannot be read; the program file may be damaged");
                return null;
            }
        }

        @Override
        public @Nullable Origin base(String written) {
            return Stock.has(written) ? new OfStock(written) : null;
        }
    }

    record OfText(String name, String written, KeptTexts kept) implements Origin {
        @Override
        public String identity() {
            return "text " + name;
        }

        @Override
        public @Nullable String text(Faults faults) {
            return SourceText.decoded(written.getBytes(StandardCharsets.UTF_8), name, Form.SHEET, faults);
        }

        @Override
        public @Nullable Origin base(String base) {
            if (Stock.has(base)) {
                return new OfStock(base);
            }
            String text = Ids.isId(base) ? kept.text(base) : null;
            return text == null ? null : new OfText(base, text, kept);
        }
    }
}
