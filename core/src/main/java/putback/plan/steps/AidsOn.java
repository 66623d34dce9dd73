package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.sheet.Part;

/** The aids that are on the car, and what each still waits for. */
final class AidsOn {
    private final List<On> all = new ArrayList<>();

    /** One aid at one part. */
    static final class On {
        final Part part;
        final String name;
        /** Joints that asked for it when they were opened. */
        final BitSet askers = new BitSet();
        /** Whether it carries a group that hung when it was put on. */
        boolean carriesGroup;
        /** The part that the sheet has it hold aside, and whether that is still aside. */
        boolean holdsAside;
        /** Parts whose handling is paid when it comes off. */
        final BitSet pays = new BitSet();

        private On(Part part, String name) {
            this.part = part;
            this.name = name;
        }
    }

    /** All of them, in the order in which they were put on. */
    List<On> all() {
        return List.copyOf(all);
    }

    @Nullable
    On find(int part, String name) {
        for (On on : all) {
            if (on.part.index() == part && on.name.equals(name)) {
                return on;
            }
        }
        return null;
    }

    /** What holds one of the parts up: anything but a spring compressor. */
    @Nullable
    On holding(BitSet parts) {
        for (On on : all) {
            if (parts.get(on.part.index()) && !Job.isCompressor(on.name)) {
                return on;
            }
        }
        return null;
    }

    On putOn(Part part, String name) {
        On there = find(part.index(), name);
        if (there != null) {
            return there;
        }
        On fresh = new On(part, name);
        all.add(fresh);
        return fresh;
    }

    void takeOff(On aid) {
        all.remove(aid);
    }
}
