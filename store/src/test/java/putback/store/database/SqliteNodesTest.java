package putback.store.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs on one file; here both in one, which is the same to the file. */
class SqliteNodesTest {
    @TempDir
    private Path folder;

    @Test
    void whatOneChanges_theOtherNotices_andReads() throws Exception {
        Path file = folder.resolve("garage.db");
        try (Database one = SqliteDatabase.open(file);
                Database other = SqliteDatabase.open(file);
                Heard heard = new Heard(other, Changes.ALL)) {
            one.write(change ->
                    change.handle().execute("insert into setting (garage, name, value) values ('g', 'rates', 'yes')"));
            assertThat(heard.inTime()).isTrue();
            assertThat(other.<Integer>read(handle -> handle.createQuery("select count(*) from setting")
                            .mapTo(Integer.class)
                            .one()))
                    .isEqualTo(1);
        }
    }
}
