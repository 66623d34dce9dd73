package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Tether;
import putback.sheet.TetherKind;

/** What the flexible parts still tied to something that hangs must not be asked to bear: all of them, on both sides. */
final class TetherCautions {
    private final Job job;

    TetherCautions(Job job) {
        this.job = job;
    }

    /** One line for each kind; a shaft has its own. */
    List<String> of(List<Part> hanging, BitSet open) {
        List<String> lines = new ArrayList<>();
        for (TetherKind kind : TetherKind.values()) {
            List<Part> tied = tied(hanging, kind, open);
            if (tied.isEmpty()) {
                continue;
            }
            switch (kind) {
                case HOSE ->
                    lines.add("Never let it hang on " + any(tied) + ": a hose tears inside where nobody sees it.");
                case WIRE, CABLE -> lines.add("No pull on " + any(tied) + ": it breaks inside.");
                case SHAFT -> shafts(tied, lines);
            }
        }
        return lines;
    }

    private static void shafts(List<Part> tied, List<String> lines) {
        for (Part shaft : tied) {
            lines.add("Keep " + Words.the(shaft) + " straight and pushed home: its joint pulls apart" + plunge(shaft)
                    + ".");
        }
    }

    private static String plunge(Part shaft) {
        Tether tether = shaft.entry().tether();
        return tether == null || tether.plunge() == null
                ? ""
                : " after " + tether.plunge().text();
    }

    private List<Part> tied(List<Part> hanging, TetherKind kind, BitSet open) {
        BitSet tied = new BitSet();
        for (Part part : hanging) {
            for (int joint : job.network.jointsOf(part.index())) {
                for (int other : job.network.joins(joint)) {
                    Tether tether = job.part(other).entry().tether();
                    if (tether != null && tether.kind() == kind && !open.get(joint)) {
                        tied.set(other);
                    }
                }
            }
        }
        return job.parts(tied);
    }

    /** {@code the hose, left or right, or the pipe}: the same part of both sides in one. */
    private static String any(List<Part> tethers) {
        List<String> names = new ArrayList<>();
        BitSet said = new BitSet();
        for (Part tether : tethers) {
            if (said.get(tether.index())) {
                continue;
            }
            String name = Words.the(tether);
            for (Part other : tethers) {
                if (other.index() != tether.index()
                        && other.entry().id().equals(tether.entry().id())) {
                    said.set(other.index());
                    name = name + " or "
                            + (other.side() == Side.NONE
                                    ? Words.the(other)
                                    : other.side().word());
                }
            }
            names.add(name);
        }
        return String.join(", or ", names);
    }
}
