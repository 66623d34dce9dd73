package putback.app.asking;

import putback.labour.price.Beliefs;
import putback.labour.price.PlaceProfile;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrades;
import putback.sheet.Assembly;

/**
 * Of what car, on what terms and by how many a job is priced.
 *
 * @param beliefs how rusty it is, and what the garage has seen
 * @param hands how many people work on it, 1 to 9
 * @param seed for what is drawn
 * @param place whose law the estimate has to answer
 */
public record PriceQuestion(Assembly assembly, Terms terms, Beliefs beliefs, int hands, long seed, PlaceProfile place) {
    public RustGrades rust() {
        return beliefs.rust();
    }
}
