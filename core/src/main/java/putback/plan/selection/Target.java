package putback.plan.selection;

import putback.sheet.Part;
import putback.sheet.Unit;

/** One thing to renew. */
public sealed interface Target {
    /** A part by itself: every joint that joins it is opened. */
    record OfPart(Part part) implements Target {
        @Override
        public String id() {
            return part.id();
        }

        @Override
        public String name() {
            return part.name();
        }
    }

    /** Parts in one piece: every joint between them and the rest is opened, and none inside. */
    record OfUnit(Unit unit) implements Target {
        @Override
        public String id() {
            return unit.id();
        }

        @Override
        public String name() {
            return unit.name();
        }
    }

    /** With its side, such as {@code left.strut}. */
    String id();

    /** As a person says it, such as {@code Strut, left}. */
    String name();
}
