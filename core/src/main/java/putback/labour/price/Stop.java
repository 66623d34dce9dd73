package putback.labour.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/**
 * Where to stop and call: before the time that one job in twenty exceeds, or earlier, where the ceiling is reached.
 *
 * @param figure its total is never above the ceiling
 * @param byCeiling whether the ceiling comes first
 */
public record Stop(Figure figure, boolean byCeiling) {
    /**
     * @param late what one job in twenty exceeds
     * @param ceiling agreed with the customer; null when nothing was said
     * @param minutesToCeiling about as many as are within it
     * @param at the figure of so many minutes, rounded as on the estimate
     */
    static Stop of(Figure late, @Nullable BigDecimal ceiling, double minutesToCeiling, LongFunction<Figure> at) {
        if (ceiling == null || late.total().compareTo(ceiling) <= 0) {
            return new Stop(late, false);
        }
        long minutes = Math.max(0, Math.min(late.minutes(), (long) Math.floor(minutesToCeiling) + 1));
        Figure figure = at.apply(minutes);
        while (figure.minutes() > 0 && figure.total().compareTo(ceiling) > 0) {
            figure = at.apply(figure.minutes() - 1);
        }
        BigDecimal most = figure.total().min(ceiling.setScale(2, RoundingMode.DOWN));
        Figure within = new Figure(figure.chance(), figure.minutes(), most);
        return new Stop(within, true);
    }
}
