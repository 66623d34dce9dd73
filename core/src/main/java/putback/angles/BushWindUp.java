package putback.angles;

import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Parsed;

/**
 * How far a rubber bush is wound up on its own wheels when its bolt was tightened at another height.
 *
 * @param atRide how far the arm points up at ride height, down negative
 * @param whenTightened the same when the bolt was tightened
 */
public record BushWindUp(Angle atRide, Angle whenTightened) {
    private static final double HARDLY_ANY_DEG = 2;

    /**
     * From heights of the arm's outer end above its pivot, in a plane square to the pivot.
     *
     * @param arm from pivot to outer end, above 0
     * @param ride height of the outer end above the pivot at ride height, less than the arm's length either way
     * @param tightened the same when the bolt was tightened
     * @return refused when the arm cannot reach one of the heights. Source: by definition, asin(height / arm)
     */
    public static Parsed<BushWindUp> of(Length arm, Length ride, Length tightened) {
        if (!(arm.millimetres() > 0)) {
            return new Parsed.Refused<>("an arm of " + arm.text() + " has no length; it has to be more than zero");
        }
        for (Length height : new Length[] {ride, tightened}) {
            if (!(Math.abs(height.millimetres()) < arm.millimetres())) {
                return new Parsed.Refused<>("an arm of " + arm.text() + " cannot have its outer end " + height.text()
                        + " above or below its pivot; measure the height from the middle of the pivot bolt");
            }
        }
        return new Parsed.Value<>(new BushWindUp(angle(arm, ride), angle(arm, tightened)));
    }

    private static Angle angle(Length arm, Length height) {
        return new Angle(Math.toDegrees(Math.asin(height.millimetres() / arm.millimetres())));
    }

    /** Twist left in the rubber at ride height; positive when the arm was hanging lower. */
    public Angle windUp() {
        return new Angle(atRide.degrees() - whenTightened.degrees());
    }

    /** Whether it is so little that it hardly matters: within two degrees either way. */
    public boolean isHardlyAny() {
        return Math.abs(windUp().degrees()) <= HARDLY_ANY_DEG;
    }
}
