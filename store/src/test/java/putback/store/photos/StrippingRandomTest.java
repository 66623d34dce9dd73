package putback.store.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Damaged pictures: never an exception, and never a place in what is kept. */
class StrippingRandomTest {
    private static final int EACH = 2000;

    @Test
    void damagedPictures_areRefusedOrTellNothing() {
        List<byte[]> pictures = List.of(Pictures.jpeg(), Pictures.png(), Pictures.webp());
        int kept = 0;
        for (int seed = 0; seed < EACH * pictures.size(); seed++) {
            byte[] file = damaged(pictures.get(seed % pictures.size()), new Random(seed));
            Stripped stripped = strip(file, seed);
            if (stripped instanceof Stripped.Picture picture) {
                kept++;
                assertThat(Pictures.tell(picture.file())).as("seed " + seed).isFalse();
                assertThat(strip(picture.file(), seed)).as("seed " + seed).isInstanceOf(Stripped.Picture.class);
            } else {
                assertThat(((Stripped.Refused) stripped).said())
                        .as("seed " + seed)
                        .endsWith(".");
            }
        }
        assertThat(kept).as("some damage does not matter").isGreaterThan(EACH / 10);
    }

    private static Stripped strip(byte[] file, int seed) {
        try {
            return Stripping.strip(file);
        } catch (RuntimeException fault) {
            throw new AssertionError("seed " + seed, fault);
        }
    }

    private static byte[] damaged(byte[] whole, Random random) {
        byte[] file = whole.clone();
        int times = 1 + random.nextInt(4);
        for (int i = 0; i < times && file.length > 16; i++) {
            int at = random.nextInt(file.length);
            switch (random.nextInt(6)) {
                case 0 -> file[at] ^= (byte) (1 << random.nextInt(8));
                case 1 -> file[at] = (byte) random.nextInt(256);
                case 2 -> file[at] = (byte) 0xff;
                case 3 -> file = without(file, at, Math.min(file.length, at + 1 + random.nextInt(40)));
                case 4 -> file = with(file, at, random);
                default -> file = random.nextInt(4) == 0 ? Arrays.copyOf(file, at) : file;
            }
        }
        return file;
    }

    private static byte[] without(byte[] file, int from, int to) {
        return Pictures.join(Arrays.copyOf(file, from), Arrays.copyOfRange(file, to, file.length));
    }

    private static byte[] with(byte[] file, int at, Random random) {
        byte[] more = new byte[1 + random.nextInt(20)];
        random.nextBytes(more);
        return Pictures.join(Pictures.join(Arrays.copyOf(file, at), more), Arrays.copyOfRange(file, at, file.length));
    }
}
