package putback.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Parts that nothing joins: to a plan they are off from the start, and in the way of nothing. */
public final class LoneParts {
    private LoneParts() {}

    /** Sentences for a person, each beginning with the part; what is the same on both sides is said once. */
    public static List<String> of(Assembly assembly) {
        BitSet joined = new BitSet();
        for (Joint joint : assembly.joints()) {
            joint.joins().forEach(joined::set);
        }
        Set<String> doubts = new LinkedHashSet<>();
        for (Part part : assembly.parts()) {
            if (!part.isBody() && !joined.get(part.index())) {
                doubts.add("part " + part.entry().id()
                        + ": it is in no joint, so a plan takes it as off from the start; write the joint that holds it,"
                        + " or take it out.");
            }
        }
        return new ArrayList<>(doubts);
    }
}
