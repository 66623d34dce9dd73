package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.app.web.frame.Garage;
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
import putback.store.photos.PhotoFiles;
import putback.store.photos.Photos;

class PhotoPagesTest {
    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void aPhoto_isTakenInAndShown_andWhatIsNoPictureIsRefused() throws Exception {
        try (Database database = SqliteDatabase.open(folder.resolve("garage.db"))) {
            Books books = new Books(database, "garage", Clock.systemUTC());
            PhotoFiles files = new PhotoFiles(folder.resolve("photos"));
            Job job = job(books);
            try (Server server = Server.start(0, new Garage(null, Clock.systemUTC(), books, files))) {
                String page = server.address() + "/job/" + job.id() + "/photos";
                assertThat(send(page, picture()).statusCode()).isEqualTo(303);
                String photo = new Photos(books, files).of(job.id()).get(0).id();
                HttpResponse<byte[]> shown = get(server.address() + "/photo/" + photo);
                assertThat(shown.headers().firstValue("Content-Type")).hasValue("image/png");
                assertThat(ImageIO.read(new java.io.ByteArrayInputStream(shown.body()))
                                .getWidth())
                        .isEqualTo(1000);
                HttpResponse<String> refused = send(page, "<svg onload=alert(1)>".getBytes(StandardCharsets.UTF_8));
                assertThat(refused.statusCode()).isEqualTo(422);
                assertThat(refused.body()).contains("role=\"alert\"").doesNotContain("<svg onload");
                for (String path : new String[] {"..%2f..%2fgarage.db", "%2e%2e", "nothing", "..%5cgarage.db"}) {
                    assertThat(get(server.address() + "/photo/" + path).statusCode())
                            .as(path)
                            .isBetween(400, 404);
                }
            }
        }
    }

    private static Job job(Books books) {
        Car car = new Car("", "", "WH 1", "", "", "", "", "km", "", "", 0);
        Arrival arrival = new Arrival("knocks", "", "", "", Heights.NONE, "");
        return books.write(change -> {
            Car kept = ((Saved.Done<Car>) new Cars(books).save(change, car)).value();
            return new Jobs(books).open(change, kept.id(), arrival, "", "Mara");
        });
    }

    /** Larger than any form may be. */
    private static byte[] picture() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BufferedImage noise = new BufferedImage(1000, 800, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(1);
        for (int i = 0; i < 800_000; i++) {
            noise.setRGB(i % 1000, i / 1000, random.nextInt(1 << 24));
        }
        ImageIO.write(noise, "png", out);
        assertThat(out.size()).isGreaterThan(2_000_000);
        return out.toByteArray();
    }

    private HttpResponse<byte[]> get(String address) throws Exception {
        return client.send(
                HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private HttpResponse<String> send(String address, byte[] file) throws Exception {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.write("--line\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"../../x.png\"\r\n\r\n"
                .getBytes(StandardCharsets.UTF_8));
        body.write(file);
        body.write("\r\n--line--\r\n".getBytes(StandardCharsets.UTF_8));
        HttpRequest request = HttpRequest.newBuilder(URI.create(address))
                .header("Content-Type", "multipart/form-data; boundary=line")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }
}
