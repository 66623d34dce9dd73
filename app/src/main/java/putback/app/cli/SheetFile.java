package putback.app.cli;

import org.jspecify.annotations.Nullable;
import putback.store.sheets.Fault;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** Opens the sheet that a command is given. */
final class SheetFile {
    private SheetFile() {}

    /** The sheet; null when it has faults, which are printed then. */
    static Read.@Nullable Sheet open(String fileOrStockId, Terminal terminal) {
        Read read = SheetReader.open(fileOrStockId);
        if (read instanceof Read.Sheet sheet) {
            return sheet;
        }
        for (Fault fault : ((Read.Faulty) read).faults()) {
            terminal.say(fault.toString());
        }
        return null;
    }
}
