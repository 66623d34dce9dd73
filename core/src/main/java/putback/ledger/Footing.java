package putback.ledger;

import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * How the car stands, as far as the events say.
 *
 * @param set by the last event that changed it; null for none
 * @param stated by the last event of any kind that says how the car stood; null for none
 */
record Footing(@Nullable Height set, @Nullable Height stated) {
    static final Footing NOT_SAID = new Footing(null, null);

    Footing after(Event event) {
        Height said = event.height();
        if (said == null || said == Height.ANY) {
            return this;
        }
        return new Footing(event.did() == Did.HEIGHT ? said : set, said);
    }

    /**
     * At which other height something was done; null where it was the right one, or nobody says. Where the event itself
     * is silent, what was set and what was stated last have both to be wrong.
     */
    @Nullable
    Height otherThan(Height asked, Event event) {
        Height own = event.height();
        if (own != null && own != Height.ANY) {
            return fits(own, asked) ? null : own;
        }
        boolean right = set == null || fits(set, asked) || stated == null || fits(stated, asked);
        return right ? null : stated;
    }

    /** On wheels the car is at ride height too. */
    static boolean fits(@Nullable Height done, Height asked) {
        return asked == Height.ANY || done == asked || asked == Height.RIDE_HEIGHT && done == Height.ON_WHEELS;
    }

    static String where(Height height) {
        return height == Height.RIDE_HEIGHT ? "at ride height" : height.word();
    }
}
