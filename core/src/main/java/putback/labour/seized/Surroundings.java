package putback.labour.seized;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.TetherKind;

/**
 * What a sheet knows to be near a joint: hoses, wires, springs and gas among the parts that it joins, that are in its way,
 * or that are fixed to the parts it joins. Airbags, tanks and the rest are in no sheet; the mechanic adds them.
 */
public final class Surroundings {
    private Surroundings() {}

    /** Each once, in the order of {@link Nearby}. */
    public static List<Nearby> of(Assembly assembly, Joint joint) {
        Set<Nearby> near = EnumSet.noneOf(Nearby.class);
        for (int part : joint.joins()) {
            add(near, assembly.parts().get(part));
            if (!assembly.parts().get(part).isBody()) {
                addNeighbours(near, assembly, part);
            }
        }
        for (List<Integer> clause : joint.behind()) {
            for (int part : clause) {
                add(near, assembly.parts().get(part));
            }
        }
        return List.copyOf(near);
    }

    /** What is fixed to the body is spread over the whole car, so the body brings nothing near. */
    private static void addNeighbours(Set<Nearby> near, Assembly assembly, int part) {
        for (Joint other : assembly.joints()) {
            if (other.joins().contains(part)) {
                for (int neighbour : other.joins()) {
                    add(near, assembly.parts().get(neighbour));
                }
            }
        }
    }

    private static void add(Set<Nearby> near, Part part) {
        if (part.entry().tether() != null) {
            TetherKind kind = part.entry().tether().kind();
            switch (kind) {
                case HOSE -> near.add(Nearby.HOSE);
                case WIRE, CABLE -> near.add(Nearby.WIRE);
                case SHAFT -> near.add(Nearby.RUBBER);
            }
        }
        switch (part.entry().storedEnergy()) {
            case SPRING, TWISTED_BAR -> near.add(Nearby.SPRING);
            case GAS -> near.add(Nearby.GAS);
            case NONE -> {}
        }
    }
}
