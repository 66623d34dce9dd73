package putback.store.books;

/**
 * What the garage pays for a part of a model.
 *
 * @param model as {@link PartPrices#model} says it
 * @param part id in the sheet without its side, with the name, so that front and rear pads differ; or, of one that is the
 *     garage's own, its name alone
 * @param own whether it is the garage's own, such as a fluid
 * @param count how many were taken
 * @param price of one, as a decimal
 */
public record PartPrice(String model, String part, boolean own, String name, int count, String price, String by) {}
