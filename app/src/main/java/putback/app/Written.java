package putback.app;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Remembers why something could not be written. */
final class Written extends FilterOutputStream {
    private String why = "";

    Written(OutputStream to) {
        super(to);
    }

    /** Empty as long as all went well. */
    String why() {
        return why;
    }

    /** Whether the reader went away, as {@code head} does when it has seen enough. */
    boolean hungUp() {
        return why.contains("roken pipe");
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            out.write(bytes, from, length);
        } catch (IOException failure) {
            why = String.valueOf(failure.getMessage());
            throw failure;
        }
    }
}
