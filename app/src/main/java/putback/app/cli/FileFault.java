package putback.app.cli;

import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Why a file could not be written, as a person says it. */
final class FileFault {
    private FileFault() {}

    static String said(Exception fault) {
        if (fault instanceof NoSuchFileException) {
            return "there is no such folder";
        }
        if (fault instanceof AccessDeniedException) {
            return "it may not be written to";
        }
        String message = fault.getMessage();
        int colon = message == null ? -1 : message.lastIndexOf(": ");
        return message == null ? "no reason was given" : colon < 0 ? message : message.substring(colon + 2);
    }
}
