package putback.store.sheets;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Turns bytes into text, and refuses what is not a text file a person would have written. */
final class SourceText {
    private static final char REPLACEMENT = '\uFFFD';

    private SourceText() {}

    /** Null, with the fault told, when there is no such text. */
    static @Nullable String ofFile(Path file, String name, Form form, Faults faults) {
        Place start = Place.startOf(name);
        if (!file.toFile().isFile()) {
            faults.add(
                    start,
                    Files.isDirectory(file)
                            ? "this is a folder; name a " + form.thing() + " in it, such as "
                                    + file.resolve("sheet.yaml")
                            : Files.exists(file)
                                    ? "this is not an ordinary file; save the " + form.thing() + " to a file first"
                                    : "there is no such file; give the path of a " + form.thing() + form.otherwise());
            return null;
        }
        try (InputStream stream = new FileInputStream(file.toFile())) {
            return decoded(stream.readNBytes(form.mostBytes() + 1), name, form, faults);
        } catch (IOException unreadable) {
            faults.add(start, "the file cannot be read; check that it may be read by you");
            return null;
        }
    }

    static @Nullable String decoded(byte[] bytes, String name, Form form, Faults faults) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        String wrong = bytes.length > form.mostBytes()
                ? "the file is larger than " + form.mebibytes() + " MiB, which no " + form.thing()
                        + " is; check that it is the right file"
                : isMark(bytes, 0xFE, 0xFF) || isMark(bytes, 0xFF, 0xFE)
                        ? "the file is UTF-16; save it as UTF-8"
                        : text.indexOf('\0') >= 0
                                ? "the file is not text (it has a zero byte); a " + form.thing() + " is "
                                        + form.writtenAs() + " in UTF-8"
                                : "";
        if (!wrong.isEmpty()) {
            faults.add(Place.startOf(name), wrong);
            return null;
        }
        return text.indexOf(REPLACEMENT) < 0 || isAllText(bytes, name, faults) ? withoutMark(text) : null;
    }

    /** Whether all bytes are UTF-8; asked only when one of them may not be. */
    private static boolean isAllText(byte[] bytes, String name, Faults faults) {
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
        if (result.isError()) {
            String sound = withoutMark(text.flip().toString());
            faults.add(
                    placeAt(name, sound, sound.length()),
                    "this character is not UTF-8; save the file as UTF-8 (it may be in an older encoding)");
        }
        return !result.isError();
    }

    private static boolean isMark(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** The text itself where every character may stand in YAML, JSON's tabs made spaces; else null, with the fault told. */
    static @Nullable String printable(String text, String name, Form form, Faults faults) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean control = (c < ' ' && c != '\n' && c != '\r' && c != '\t') || (c >= 0x7F && c < 0xA0 && c != 0x85);
            if (control || c >= 0xFFFE) {
                faults.add(
                        placeAt(name, text, i),
                        "a control character (U+" + hex(c) + ") has no place in a " + form.thing() + "; remove it");
                return null;
            }
        }
        return text.stripLeading().startsWith("{") ? text.replace('\t', ' ') : text;
    }

    private static String hex(char c) {
        String digits = Integer.toHexString(c).toUpperCase(java.util.Locale.ROOT);
        return "0000".substring(Math.min(4, digits.length())) + digits;
    }

    /** The place of a character, counting lines as YAML does. */
    static Place placeAt(String name, String text, int offset) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < offset; i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && (i + 1 >= text.length() || text.charAt(i + 1) != '\n'))) {
                line++;
                start = i + 1;
            }
        }
        return new Place(name, line, 1 + text.codePointCount(start, offset));
    }
}
