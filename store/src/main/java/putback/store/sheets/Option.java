package putback.store.sheets;

/**
 * One answer to a question about a car.
 *
 * @param label a few words
 * @param picture what is drawn for it: the inside of an SVG of 64 by 48
 * @param says what a sheet says for it; empty where the stock sheet says it already
 */
public record Option(String id, String label, String picture, Piece.Entries says) {}
