package putback.sheet;

import java.util.ArrayList;
import java.util.List;
import putback.quantity.Minutes;

/** Stands a sheet up on one car: makes both sides and turns every written id into an index. */
final class Assembler {
    private final Sheet sheet;
    private final Resolver resolver;
    private final List<Placed<PartEntry>> parts = new ArrayList<>();
    private final List<Placed<JointEntry>> joints = new ArrayList<>();

    private record Placed<T>(T entry, String key, Side side, String id) {}

    Assembler(Sheet sheet) {
        this.sheet = sheet;
        this.resolver = new Resolver(sheet.sided());
    }

    Assembled assemble() {
        resolver.partIds().put(Sheet.BODY, 0);
        for (PartEntry entry : sheet.parts()) {
            for (Side side : sides(entry.where())) {
                parts.add(new Placed<>(entry, key(entry.where(), entry.id()), side, side.prefix() + entry.id()));
                resolver.partIds().put(side.prefix() + entry.id(), parts.size());
            }
        }
        for (JointEntry entry : sheet.joints()) {
            for (Side side : sides(whereJoined(entry))) {
                resolver.jointIds().put(side.prefix() + entry.id(), joints.size());
                joints.add(new Placed<>(entry, key(entry.where(), entry.id()), side, side.prefix() + entry.id()));
            }
        }
        Assembly assembly = new Assembly(sheet, resolvedParts(), resolvedJoints(), resolvedUnits());
        new FollowUpCheck(sheet, resolver).check();
        if (!resolver.isSound()) {
            return new Assembled.Faulty(resolver.faults());
        }
        List<SheetFault> onWheels = OnWheels.faults(assembly);
        return onWheels.isEmpty() ? new Assembled.Sound(assembly) : new Assembled.Faulty(onWheels);
    }

    /** The key of an entry in its section: with its side where it is described for that side. */
    static String key(Where where, String id) {
        return where == Where.LEFT ? "left." + id : where == Where.RIGHT ? "right." + id : id;
    }

    private static List<Side> sides(Where where) {
        return switch (where) {
            case ONCE -> List.of(Side.NONE);
            case EACH_SIDE -> List.of(Side.LEFT, Side.RIGHT);
            case LEFT -> List.of(Side.LEFT);
            case RIGHT -> List.of(Side.RIGHT);
        };
    }

    /** A joint of shared parts only, or of parts named with their side, exists once. */
    private Where whereJoined(JointEntry entry) {
        if (entry.where() != Where.EACH_SIDE) {
            return entry.where();
        }
        for (String id : entry.joins()) {
            if (!resolver.partIds().existsOnce(id) && !References.carriesSide(id)) {
                return Where.EACH_SIDE;
            }
        }
        return Where.ONCE;
    }

    private boolean allOnce(List<String> ids) {
        for (String id : ids) {
            if (!resolver.partIds().existsOnce(id)) {
                return false;
            }
        }
        return true;
    }

    private List<Part> resolvedParts() {
        List<Part> resolved = new ArrayList<>();
        resolved.add(new Part(0, Sheet.BODY, Side.NONE, bodyEntry(), List.of()));
        for (Placed<PartEntry> placed : parts) {
            Trail trail = Trail.of("parts", placed.key());
            Aside aside = placed.entry().aside();
            List<Integer> opens = aside == null
                    ? List.of()
                    : resolver.joints(
                            aside.open(), placed.side(), trail.then("aside").then("open"));
            checkPartsOrUnits(placed.entry().companions(), placed.side(), trail.then("companions"));
            resolved.add(new Part(resolved.size(), placed.id(), placed.side(), placed.entry(), opens));
        }
        return resolved;
    }

    private void checkPartsOrUnits(List<String> ids, Side side, Trail trail) {
        for (int i = 0; i < ids.size(); i++) {
            if (!isUnit(ids.get(i))) {
                resolver.parts(ids.get(i), side, trail.then(i));
            }
        }
    }

    private boolean isUnit(String id) {
        for (UnitEntry unit : sheet.units()) {
            if (unit.id().equals(id)) {
                return true;
            }
        }
        return false;
    }

    private static PartEntry bodyEntry() {
        return new PartEntry(
                Sheet.BODY,
                Where.ONCE,
                "Body",
                Minutes.ZERO,
                null,
                List.of(),
                false,
                false,
                List.of(),
                null,
                null,
                StoredEnergy.NONE,
                null);
    }

    private List<Joint> resolvedJoints() {
        List<Joint> resolved = new ArrayList<>();
        for (Placed<JointEntry> placed : joints) {
            resolved.add(resolve(resolved.size(), placed));
        }
        return resolved;
    }

    private Joint resolve(int index, Placed<JointEntry> placed) {
        JointEntry entry = placed.entry();
        Side side = placed.side();
        Trail trail = Trail.of("joints", placed.key());
        List<List<Integer>> behind = resolver.clauses(entry.behind(), side, trail.then("behind"));
        Access reach = entry.reachOnWheels();
        for (WithNew withNew : entry.withNew()) {
            if (!isUnit(withNew.part())) {
                resolver.parts(withNew.part(), side, trail.then("with-new").then(withNew.part()));
            }
        }
        return new Joint(
                index,
                placed.id(),
                side,
                entry,
                resolver.joined(entry.joins(), side, trail.then("joins")),
                behind,
                reach == null ? behind : resolver.clauses(reach, side, trail.then("reach-on-wheels")),
                resolver.otherJoints(index, entry.after(), side, trail.then("after")),
                resolver.otherJoints(index, entry.aheadOf(), side, trail.then("ahead-of")),
                resolver.otherJoints(index, entry.timing().loosenBefore(), side, trail.then("loosen-before")),
                lettings(entry.letsGo(), side, trail.then("lets-go")),
                resolver.allParts(entry.spoils(), side, trail.then("spoils")));
    }

    private List<Letting> lettings(List<LetsGo> written, Side side, Trail trail) {
        List<Letting> lettings = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            LetsGo one = written.get(i);
            for (int part : resolver.parts(one.part(), side, trail.then(i).then("part"))) {
                lettings.add(new Letting(part, one.aid(), one.letDown()));
            }
        }
        return lettings;
    }

    private List<Unit> resolvedUnits() {
        List<Unit> units = new ArrayList<>();
        for (UnitEntry entry : sheet.units()) {
            Where where = entry.where() == Where.EACH_SIDE && allOnce(entry.parts()) ? Where.ONCE : entry.where();
            Trail trail = Trail.of("units", key(entry.where(), entry.id()));
            for (Side side : sides(where)) {
                List<Integer> parts = resolver.allParts(entry.parts(), side, trail.then("parts"));
                checkPartsOrUnits(entry.companions(), side, trail.then("companions"));
                units.add(new Unit(units.size(), side.prefix() + entry.id(), side, entry, parts));
            }
        }
        return units;
    }
}
