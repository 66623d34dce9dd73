package putback.sheet;

/**
 * What differs at a joint once a part is a new one.
 *
 * @param part id as written in the sheet, a part or a unit
 * @param fastener the joint's fastener as the new part asks for it
 */
public record WithNew(String part, Fastener fastener) {}
