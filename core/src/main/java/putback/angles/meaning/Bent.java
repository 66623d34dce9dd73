package putback.angles.meaning;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Wanted;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Place;

/**
 * Which part may be bent or out of its place, from inclination and included angle of a front wheel. The included angle
 * is fixed by the carrier, and by the strut where there is one; the inclination by where the pivots are. Only ranges that
 * are wanted decide what is off.
 */
public final class Bent {
    private static final String RULE = "textbook rule; a maker's text of 2007 uses the included angle so";
    private static final String PRACTICE = "common practice, no source";

    private Bent() {}

    public static List<Pointer> of(CarAngles angles, List<Wanted> wanted) {
        List<Pointer> pointers = new ArrayList<>();
        for (Place place : new Place[] {Place.FRONT_LEFT, Place.FRONT_RIGHT}) {
            Standing sai = Standing.of(place.word() + ".sai", angles, wanted);
            Standing included = Standing.of(place.word() + ".included", angles, wanted);
            if (sai != null && included != null) {
                axis(pointers, place, sai, included);
            }
            caster(pointers, place, Standing.of(place.word() + ".caster", angles, wanted), sai);
        }
        rear(pointers, Standing.of("rear.thrust", angles, wanted));
        return pointers;
    }

    private static void axis(List<Pointer> pointers, Place place, Standing sai, Standing included) {
        if (sai.isOff() && !included.isOff()) {
            pointers.add(new Pointer(
                    said(place) + ": inclination (SAI) " + off(sai) + ", included angle as wanted",
                    sai == Standing.BELOW
                            ? "the lower pivot inboard or the upper one outboard of its place: lower arm, subframe,"
                                    + " top mount"
                            : "the upper pivot inboard or the lower one outboard of its place: top mount, strut tower,"
                                    + " subframe",
                    "carrier and strut still stand to each other as they should",
                    RULE));
        } else if (!sai.isOff() && included.isOff()) {
            pointers.add(new Pointer(
                    said(place) + ": inclination (SAI) as wanted, included angle " + off(included),
                    "the hub carrier, its stub axle, the strut, or the bolted joint between them",
                    "the pivots are where they should be, but the wheel does not stand to them as it should",
                    RULE));
        } else if (sai.isOff()) {
            pointers.add(new Pointer(
                    said(place) + ": inclination (SAI) " + off(sai) + ", included angle " + off(included),
                    "a pivot out of its place and the carrier or strut as well",
                    "one of them alone would leave the other angle as wanted",
                    RULE));
        }
    }

    private static void caster(List<Pointer> pointers, Place place, @Nullable Standing caster, @Nullable Standing sai) {
        if (caster != null && caster.isOff() && sai != null && !sai.isOff()) {
            pointers.add(new Pointer(
                    said(place) + ": caster " + off(caster) + ", inclination (SAI) as wanted",
                    caster == Standing.BELOW
                            ? "the lower pivot rearward or the upper one forward of its place; ride height at the rear"
                            : "the lower pivot forward or the upper one rearward of its place; ride height at the rear",
                    "the axis leans wrongly seen from the side alone, and a low or high rear leans the whole car",
                    PRACTICE));
        }
    }

    private static void rear(List<Pointer> pointers, @Nullable Standing thrust) {
        if (thrust != null && thrust.isOff()) {
            pointers.add(new Pointer(
                    "Thrust angle " + (thrust == Standing.ABOVE ? "to the right" : "to the left"),
                    "the rear axle turned on its mounts, or a rear link or arm bent or wrongly set",
                    "both rear wheels together steer the car that way",
                    PRACTICE));
        }
    }

    private static String off(Standing standing) {
        return standing == Standing.BELOW ? "less than wanted" : "more than wanted";
    }

    private static String said(Place place) {
        return Character.toUpperCase(place.said().charAt(0)) + place.said().substring(1);
    }
}
