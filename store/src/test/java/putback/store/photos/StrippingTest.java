package putback.store.photos;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class StrippingTest {
    private static byte[] kept(byte[] file) {
        assertThat(Stripping.strip(file)).isInstanceOf(Stripped.Picture.class);
        return ((Stripped.Picture) Stripping.strip(file)).file();
    }

    private static String refused(byte[] file) {
        assertThat(Stripping.strip(file)).isInstanceOf(Stripped.Refused.class);
        return ((Stripped.Refused) Stripping.strip(file)).said();
    }

    static Stream<Arguments> pictures() {
        return Stream.of(
                Arguments.of("JPEG", Pictures.jpeg()),
                Arguments.of("PNG", Pictures.png()),
                Arguments.of("WebP", Pictures.webp()));
    }

    private static Metadata metadata(byte[] file) throws Exception {
        return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void thePlaceGoes_andWhichWayIsUpStays(String kind, byte[] file) throws Exception {
        assertThat(metadata(file)
                        .getFirstDirectoryOfType(GpsDirectory.class)
                        .getGeoLocation()
                        .getLatitude())
                .as("the picture that comes does tell")
                .isBetween(48.8, 48.9);
        byte[] kept = kept(file);
        assertThat(Pictures.tell(kept)).as(kind).isFalse();
        Metadata left = metadata(kept);
        assertThat(left.getDirectoriesOfType(GpsDirectory.class)).isEmpty();
        assertThat(left.getFirstDirectoryOfType(ExifIFD0Directory.class).getInteger(ExifIFD0Directory.TAG_ORIENTATION))
                .isEqualTo(6);
        assertThat(kept(kept)).as("nothing is left to strip").isEqualTo(kept);
    }

    @Test
    void pixels_areNotTouched() throws IOException {
        assertSamePixels(Pictures.drawn("jpg"), kept(Pictures.jpeg()));
        assertSamePixels(Pictures.drawn("png"), kept(Pictures.png()));
    }

    private static void assertSamePixels(byte[] one, byte[] other) throws IOException {
        BufferedImage before = ImageIO.read(new ByteArrayInputStream(one));
        BufferedImage after = ImageIO.read(new ByteArrayInputStream(other));
        int[] pixels = before.getRGB(0, 0, before.getWidth(), before.getHeight(), null, 0, before.getWidth());
        assertThat(after.getRGB(0, 0, after.getWidth(), after.getHeight(), null, 0, after.getWidth()))
                .isEqualTo(pixels);
    }

    @Test
    void anUprightPicture_hasNoExifAtAll() throws Exception {
        assertThat(metadata(kept(Pictures.drawn("jpg"))).getDirectoriesOfType(ExifIFD0Directory.class))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void aPictureThatIsCutOff_isRefusedWhereverItEnds(String kind, byte[] file) {
        int whole = kept(file).length;
        for (int length = 0; length < Math.min(whole, file.length) - 60; length += 7) {
            assertThat(refused(Arrays.copyOf(file, length)))
                    .as(kind + " of " + length + " bytes")
                    .matches("(?s)(This|The) .*\\.");
        }
    }

    @Test
    void whatIsNoPhoto_isRefusedInWords() {
        assertThat(refused(new byte[0])).isEqualTo("The photo is empty. Maybe take it again.");
        assertThat(refused(Pictures.ascii("<svg onload=alert(1)>"))).contains("no photo that is known here");
        assertThat(refused(Pictures.ascii("GIF89a"))).contains("JPEG, PNG and WebP are taken");
        assertThat(refused(Pictures.ascii("\0\0\0\30ftypheic\0\0\0\0mif1heic"))).contains("HEIC", "most compatible");
        assertThat(refused(new byte[Stripping.MOST_BYTES + 1])).contains("21 MB", "limit is 20 MB");
    }

    @Test
    void aSegmentThatClaimsToBeATable_cannotCarryAPlace() {
        byte[] file = Pictures.jpeg();
        for (int marker : new int[] {0xdb, 0xc4, 0xda, 0xc0, 0xdd, 0xe0, 0xe2, 0xee}) {
            file[3] = (byte) marker;
            assertThat(Stripping.strip(file) instanceof Stripped.Picture picture && Pictures.tell(picture.file()))
                    .as("marker %x", marker)
                    .isFalse();
        }
    }
}
