package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StockTest {
    private static final Path FOLDER = Path.of("src", "main", "resources", "putback", "sheets");

    @TempDir
    Path folder;

    @Test
    void the_list_names_every_sheet_of_the_folder_and_no_other() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> there = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.substring(0, name.length() - ".yaml".length()))
                    .toList();
            assertThat(SheetReader.stockIds()).containsExactlyInAnyOrderElementsOf(there);
        }
    }

    @Test
    void every_stock_sheet_is_sound_and_called_by_its_id() {
        for (String id : SheetReader.stockIds()) {
            assertThat(Sheets.sound(SheetReader.stock(id)).sheet().id()).isEqualTo(id);
            assertThat(SheetReader.open(id)).isEqualTo(SheetReader.stock(id));
        }
    }

    @Test
    void an_unknown_id_is_told_with_the_nearest_one() {
        String id = SheetReader.stockIds().get(0);
        Read read = SheetReader.open(id + "t");
        assertThat(((Read.Faulty) read).faults().get(0).message())
                .isEqualTo("no stock sheet is called \"" + id + "t\", and there is no such file; maybe " + id);
    }

    @Test
    void a_sheet_of_the_same_name_may_be_built_on_a_stock_sheet() {
        String id = SheetReader.stockIds().get(0);
        Path own = Sheets.write(folder, id + ".yaml", "sheet: " + id + "\ntitle: Ours\nbase: " + id + "\n");
        assertThat(Sheets.sound(SheetReader.read(own)).sheet().title()).isEqualTo("Ours");
    }

    @Test
    void a_fault_in_a_stock_sheet_would_name_its_resource() {
        String id = SheetReader.stockIds().get(0);
        Path own = Sheets.write(folder, "own.yaml", "sheet: own\ntitle: Ours\nbase: " + id + "\nparts: {gone: null}\n");
        assertThat(Sheets.faults(SheetReader.read(own)))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("own.yaml:4:9: gone has");
        assertThat(new Origin.OfStock(id).name()).isEqualTo("putback/sheets/" + id + ".yaml");
    }
}
