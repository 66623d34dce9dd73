package putback.store.photos;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * Takes out of a picture all that is not picture: where and when it was taken, by which camera, comments, previews. Only parts known to be
 * needed for showing it are let through, and the pixels are not touched. Which way is up is kept.
 */
public final class Stripping {
    /** The longest file that is taken, in bytes. */
    public static final int MOST_BYTES = 20_000_000;

    private static final int UPRIGHT = 1;
    private static final int LAST_ORIENTATION = 8;

    private Stripping() {}

    /** Strips a picture, whatever the bytes are. */
    public static Stripped strip(byte[] file) {
        if (file.length == 0) {
            return new Stripped.Refused("The photo is empty. Maybe take it again.");
        }
        if (file.length > MOST_BYTES) {
            return new Stripped.Refused("The photo is " + (file.length + 999_999) / 1_000_000
                    + " MB long, but the limit is " + MOST_BYTES / 1_000_000 + " MB. Maybe send a smaller one.");
        }
        PictureType type = PictureType.of(file);
        if (type == null) {
            return new Stripped.Refused("This is no photo that is known here. JPEG, PNG and WebP are taken.");
        }
        if (type == PictureType.HEIC) {
            return new Stripped.Refused("This photo is of the kind HEIC or AVIF, out of which the place cannot be taken"
                    + " here. Maybe have the phone save photos as JPEG; many call that \"most compatible\".");
        }
        return strip(type, file);
    }

    private static Stripped strip(PictureType type, byte[] file) {
        try {
            int orientation = orientation(file);
            byte[] kept =
                    switch (type) {
                        case JPEG -> new JpegStripping(file).run(orientation);
                        case PNG -> new PngStripping(file).run(orientation);
                        default -> new WebpStripping(file).run(orientation);
                    };
            return stillTells(kept)
                    ? new Stripped.Refused("The place could not be taken out of this photo, so it is not kept.")
                    : new Stripped.Picture(type, kept);
        } catch (Malformed fault) {
            return new Stripped.Refused("This " + type + " cannot be kept: " + fault.getMessage() + ".");
        }
    }

    private static int orientation(byte[] file) {
        Metadata metadata = metadata(file);
        if (metadata != null) {
            for (ExifIFD0Directory directory : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
                Integer value = directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
                if (value != null && value > UPRIGHT && value <= LAST_ORIENTATION) {
                    return value;
                }
            }
        }
        return UPRIGHT;
    }

    /** Asks a reader that knows nothing of how it was stripped. */
    private static boolean stillTells(byte[] kept) {
        Metadata metadata = metadata(kept);
        if (metadata == null) {
            return true;
        }
        for (Directory directory : metadata.getDirectories()) {
            if (directory instanceof GpsDirectory || directory instanceof XmpDirectory) {
                return true;
            }
        }
        return false;
    }

    /** Null where it cannot be read. That library throws whatever it stumbles on. */
    private static @Nullable Metadata metadata(byte[] file) {
        try {
            return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file), file.length);
        } catch (ImageProcessingException | IOException | RuntimeException unreadable) {
            return null;
        }
    }
}
