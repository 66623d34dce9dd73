package putback.app.asking;

import putback.angles.BushWindUp;
import putback.quantity.Length;

/** How far a bush is wound up, as a person asks it. */
public final class BushQuestion {
    private BushQuestion() {}

    /** Answers it, or says what is wrong with the first value that cannot be. */
    public static BushWindUp answer(Given given) throws Unclear {
        Length arm = given.need("arm", "350mm", Length::parse);
        Length ride = given.need("ride", "-15mm", Length::parse);
        Length tightened = given.need("tightened", "-100mm", Length::parse);
        return Given.answer(BushWindUp.of(arm, ride, tightened));
    }
}
