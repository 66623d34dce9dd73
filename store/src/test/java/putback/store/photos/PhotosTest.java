package putback.store.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;
import putback.store.database.StoreFailure;

class PhotosTest {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private Database database;
    private Books books;
    private PhotoFiles files;
    private Photos photos;
    private Job job;

    @BeforeEach
    void open() {
        database = SqliteDatabase.open(folder.resolve("garage.db"));
        books = new Books(database, "g1", NOON);
        files = new PhotoFiles(folder.resolve("photos"));
        photos = new Photos(books, files);
        Car asked = new Car("", "", "WH 12", "", "Tamsel", "Dory", "2014", "km", "", "", 0);
        Car car = ((Saved.Done<Car>) books.write(change -> new Cars(books).save(change, asked))).value();
        Arrival arrival = new Arrival("knocks", "", "", "", Heights.NONE, "");
        job = books.write(change -> new Jobs(books).open(change, car.id(), arrival, "", "Mara"));
    }

    @AfterEach
    void close() {
        database.close();
    }

    private Photo kept(byte[] picture) {
        Added added = photos.add(job.id(), picture, "left ball joint", "Teo");
        assertThat(added).isInstanceOf(Added.Kept.class);
        return ((Added.Kept) added).photo();
    }

    private List<Path> onDisk() throws IOException {
        Path all = folder.resolve("photos");
        if (!Files.exists(all)) {
            return List.of();
        }
        try (Stream<Path> found = Files.walk(all)) {
            return found.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void aPhoto_isKeptUnderItsHash_andReadAgain() {
        Photo photo = kept(Pictures.jpeg());
        assertThat(photos.of(job.id())).containsExactly(photo);
        assertThat(photos.find(photo.id())).contains(photo);
        byte[] file = photos.file(photo).orElseThrow();
        assertThat(Hash.of(file)).isEqualTo(photo.hash());
        assertThat(file).hasSize(photo.bytes());
        assertThat(photo.type()).isEqualTo("image/jpeg");
        assertThat(Pictures.tell(file)).isFalse();
        assertThat(folder.resolve("photos")
                        .resolve(photo.hash().substring(0, 2))
                        .resolve(photo.hash().substring(2)))
                .exists();
    }

    @Test
    void theSamePhotoTwice_isOneFileAndTwoRows() throws IOException {
        Photo one = kept(Pictures.png());
        Photo other = kept(Pictures.png());
        assertThat(other.hash()).isEqualTo(one.hash());
        assertThat(photos.of(job.id())).hasSize(2);
        assertThat(onDisk()).hasSize(1);
    }

    @Test
    void aFileThatWasAltered_isToldAndMendedByTheSamePhoto() throws IOException {
        Photo photo = kept(Pictures.jpeg());
        Files.write(files.path(photo.hash()), new byte[] {1, 2, 3});
        assertThat(files.wrong(photo.hash())).contains("is not what was kept");
        kept(Pictures.jpeg());
        assertThat(files.wrong(photo.hash())).isEmpty();
    }

    @Test
    void whatIsRefused_leavesNothing() throws IOException {
        Added added = photos.add(job.id(), Pictures.ascii("no photo"), "", "Teo");
        assertThat(added).isInstanceOf(Added.Refused.class);
        assertThat(photos.of(job.id())).isEmpty();
        assertThat(onDisk()).isEmpty();
    }

    @Test
    void aJobOfAnotherGarage_takesNoPhotoAndShowsNone() {
        Photo photo = kept(Pictures.webp());
        Photos others = new Photos(new Books(database, "g2", NOON), files);
        assertThat(others.find(photo.id())).isEmpty();
        assertThat(others.add(job.id(), Pictures.webp(), "", "Teo")).isInstanceOf(Added.Refused.class);
    }

    @Test
    void noNameButAHash_leadsToAFile() {
        for (String name : List.of("", "../garage.db", "a".repeat(63), "A".repeat(64), "../" + "a".repeat(61))) {
            assertThat(files.read(name)).isEmpty();
            assertThat(files.wrong(name)).isNotEmpty();
            assertThatThrownBy(() -> files.path(name)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aFolderThatCannotBeMade_isToldInWords() throws IOException {
        Path file = Files.writeString(folder.resolve("in the way"), "a file");
        assertThatThrownBy(() -> new PhotoFiles(file).keep(Pictures.drawn("png")))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("the photo cannot be kept");
    }
}
