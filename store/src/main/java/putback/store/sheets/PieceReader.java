package putback.store.sheets;

import java.nio.charset.StandardCharsets;

/** Reads a sheet's text as data and judges nothing but whether it is YAML; {@link SheetReader} judges the rest. */
public final class PieceReader {
    private PieceReader() {}

    /**
     * The map at its top.
     *
     * @param name what stands before line and column in a fault
     */
    public static PieceRead read(String name, String text) {
        Faults faults = new Faults();
        String decoded = SourceText.decoded(text.getBytes(StandardCharsets.UTF_8), name, Form.SHEET, faults);
        String printable = decoded == null ? null : SourceText.printable(decoded, name, Form.SHEET, faults);
        Node.Entries top = printable == null ? null : Composer.compose(name, printable, faults);
        return top == null || !faults.isEmpty()
                ? new PieceRead.Faulty(faults.sorted())
                : new PieceRead.Sound(Piece.of(top));
    }
}
