package putback.labour.seized;

import java.math.BigDecimal;
import putback.quantity.Minutes;

/**
 * One place in a row of attempts.
 *
 * @param cost what trying it costs on average, its damage counted
 * @param reached chance that it comes to this, 0 to 1
 * @param elapsed minutes from the first attempt to the end of this one
 * @param worth the attempt pays while doing without costs more than this: its cost over its chance
 */
public record Try(Attempt attempt, BigDecimal cost, BigDecimal reached, Minutes elapsed, BigDecimal worth) {}
