package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Outcome;
import putback.angles.adjusting.Turned;
import putback.angles.meaning.Bent;
import putback.angles.meaning.Pointer;
import putback.angles.meaning.Pull;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.SteerSweep;

/** What has to be said of readings and of what they lead to, a sentence each. */
public final class AngleNotes {
    private AngleNotes() {}

    public static List<String> of(AngleJob job, Turned turned) {
        List<String> notes = new ArrayList<>();
        if (!turned.allTried()) {
            notes.add("Not every way to round to whole marks was tried: maybe there is a better one.");
        }
        CarAngles angles = job.reading().angles();
        for (Place place : Place.values()) {
            sweep(notes, job, place);
            Double caster = angles.of(place, Measure.CASTER);
            if (!job.reading().of(place).sweep().isEmpty() && caster != null && caster < 0) {
                notes.add(capital(place.said()) + ": the caster comes out negative; toe-in is positive on either side,"
                        + " so check the signs of the sweep.");
            }
        }
        if (turned.aboutTheMiddle() && turned.wheelsOffDeg() != null) {
            notes.add("The rear axle was not read, so whether the steering wheel "
                    + (job.adjusters().isEmpty() ? "stands" : "ends up") + " straight is not known"
                    + (job.adjusters().isEmpty() ? "." : "; the front toe is shared about the middle of the car."));
        }
        for (Outcome outcome : turned.outcomes()) {
            if (!outcome.isRead()) {
                notes.add(capital(outcome.wanted().figure().said()) + " is wanted but was not read.");
            }
        }
        stops(notes, job, turned);
        return notes;
    }

    /** What the readings point to, bent parts first. */
    public static List<Pointer> pointers(AngleJob job) {
        CarAngles angles = job.reading().angles();
        List<Pointer> pointers = new ArrayList<>(Bent.of(angles, job.wanted()));
        pointers.addAll(Pull.of(angles, job.wanted()));
        return pointers;
    }

    private static void sweep(List<String> notes, AngleJob job, Place place) {
        SteerSweep sweep = job.reading().of(place).steerSweep();
        if (sweep == null) {
            return;
        }
        if (!sweep.knowsSai()) {
            notes.add(capital(place.said()) + ": " + sweep.doubt() + ".");
        } else if (sweep.isRough()) {
            notes.add(capital(place.said()) + ": the inclination (SAI) is rough: 0.05 deg of error in a camber makes "
                    + AngleFigures.plain(0.05 * sweep.saiGain(), 1) + " deg of it; steer farther.");
        }
    }

    private static void stops(List<String> notes, AngleJob job, Turned turned) {
        boolean outside = false;
        for (Outcome outcome : turned.outcomes()) {
            if (outcome.missDeg() > 0) {
                outside = true;
                notes.add(capital(outcome.wanted().figure().said()) + " stays outside by "
                        + AngleFigures.both(outcome.missDeg())
                        + (moves(job, outcome.wanted().figure()) ? "." : ": no adjuster given moves it."));
            }
        }
        boolean crooked = Boolean.FALSE.equals(turned.straight()) && moves(job, Figure.frontSplit());
        if (crooked) {
            notes.add("The steering wheel cannot be brought straight.");
        }
        for (Turned.Step stop : turned.stops()) {
            if (outside || crooked) {
                notes.add(
                        "What stops it: " + stop.adjuster().id() + ", at its end at " + AngleFigures.plain(stop.by(), 2)
                                + " " + stop.adjuster().per() + ".");
            }
        }
    }

    private static boolean moves(AngleJob job, Figure figure) {
        return job.adjusters().stream().anyMatch(one -> figure.changeBy(one.effects()) != 0);
    }

    static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
