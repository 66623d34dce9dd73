package putback.plan.steps;

import putback.sheet.Joint;
import putback.sheet.Part;

/** How aids are put on and taken off, in words. */
final class AidText {
    static final String STRAP = "strap";

    private AidText() {}

    static String on(Part part, String aid, Joint before) {
        String then = " before opening " + Words.of(before) + ".";
        if (Job.isCompressor(aid)) {
            return "Put the " + aid + " on " + Words.the(part)
                    + " and wind it in until the spring is loose in its seats" + then;
        }
        return Job.isJack(aid)
                ? "Set " + Words.an(aid) + " under " + Words.the(part) + " and take its weight" + then
                : "Secure " + Words.the(part) + " with " + Words.an(aid) + then;
    }

    static String onNew(Part part, String aid, Joint before) {
        return "Put the " + aid + " on the new " + Words.low(part.name()) + " and wind it in "
                + (before.entry().kind().threaded()
                        ? "until the thread comes through far enough for "
                        : "until there is room for ")
                + Words.of(before) + ".";
    }

    static String off(Part part, String aid) {
        if (Job.isCompressor(aid)) {
            return "Wind the " + aid + " off " + Words.the(part) + " evenly and take it away.";
        }
        return Job.isJack(aid)
                ? "Take the " + aid + " away from under " + Words.the(part) + "."
                : "Take the " + aid + " off " + Words.the(part) + ".";
    }
}
