package putback.store.books;

/**
 * A part of a job, on its way.
 *
 * @param part id in the sheet
 * @param price as a decimal; empty when not known
 * @param state to order, ordered, arrived, compared (with the old one)
 */
public record PartLine(
        String id,
        String job,
        String part,
        String name,
        int count,
        String price,
        String supplier,
        String state,
        int version) {}
