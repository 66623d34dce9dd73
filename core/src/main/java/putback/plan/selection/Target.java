package putback.plan.selection;

import putback.sheet.Part;
import putback.sheet.Side;
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

        @Override
        public String plainName() {
            return part.entry().name();
        }

        @Override
        public Side side() {
            return part.side();
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

        @Override
        public String plainName() {
            return unit.entry().name();
        }

        @Override
        public Side side() {
            return unit.side();
        }
    }

    /** With its side, such as {@code left.strut}. */
    String id();

    /** As a person says it, such as {@code Strut, left}. */
    String name();

    /** Without its side, such as {@code Strut}. */
    String plainName();

    /** Where it is; none for what exists once. */
    Side side();
}
