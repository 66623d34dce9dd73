package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.oracle.Draft.JointDraft;
import putback.plan.oracle.Draft.PartDraft;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Minutes;
import putback.quantity.Torque;
import putback.sheet.Access;
import putback.sheet.Condition;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Holding;
import putback.sheet.JointEntry;
import putback.sheet.JointKind;
import putback.sheet.Lift;
import putback.sheet.PartEntry;
import putback.sheet.Setups;
import putback.sheet.Sheet;
import putback.sheet.Station;
import putback.sheet.StoredEnergy;
import putback.sheet.Tether;
import putback.sheet.TetherKind;
import putback.sheet.Tightening;
import putback.sheet.Times;
import putback.sheet.Timing;
import putback.sheet.UnitEntry;
import putback.sheet.Where;
import putback.sheet.WithNew;
import putback.sheet.Wording;

/** Writes a draft out as a sheet, with fasteners, tools, heights and words. */
final class Authoring {
    private static final List<String> FOLLOW_UPS = List.of("angles", "bleed", "pedal", "zero");
    private static final double[] HEXES = {10, 13, 15, 18, 21};
    private static final List<Station> STATIONS = List.of(
            Station.WHEEL_WELL,
            Station.WHEEL_WELL,
            Station.WHEEL_WELL,
            Station.UNDERNEATH,
            Station.UNDERNEATH,
            Station.ENGINE_BAY,
            Station.CABIN);

    /** Brought by those joints only that are tightened after it. */
    private static final String LATE = "toe";

    private final Draft draft;
    private long seed;

    Authoring(Draft draft) {
        this.draft = draft;
    }

    Sheet sheet(long number, List<UnitEntry> units) {
        seed = number;
        List<PartEntry> parts = draft.parts.subList(1, draft.parts.size()).stream()
                .map(this::part)
                .toList();
        List<JointEntry> joints = draft.joints.stream().map(this::joint).toList();
        return new Sheet(
                "random-" + Long.toUnsignedString(seed),
                "Random corner",
                Lift.NOT_SAID,
                draft.sided,
                parts,
                joints,
                units,
                followUps(),
                Times.DEFAULT,
                List.of(),
                setups());
    }

    private Setups setups() {
        return draft.chance(0.5)
                ? Setups.DEFAULT
                : new Setups(draft.minutes(2), draft.minutes(1), draft.minutes(1), draft.minutes(0.5));
    }

    private List<FollowUp> followUps() {
        List<FollowUp> followUps = new ArrayList<>();
        for (String id : FOLLOW_UPS) {
            Height height = draft.any(List.of(Height.ANY, Height.RAISED, Height.ON_WHEELS));
            List<String> follows = id.equals("pedal") ? List.of("bleed") : List.of();
            Minutes minutes = draft.minutes(id.equals("angles") ? 20 : 3);
            followUps.add(new FollowUp(id, "Follow-up " + id, minutes, draft.chance(0.3), height, follows, null));
        }
        followUps.add(new FollowUp(LATE, "Set toe", new Minutes(4_000_000), false, Height.ANY, List.of(), null));
        return followUps;
    }

    private PartEntry part(PartDraft part) {
        Tether tether = part.tether ? new Tether(draft.any(List.of(TetherKind.values())), null, null) : null;
        StoredEnergy other = draft.chance(0.05) ? StoredEnergy.GAS : StoredEnergy.NONE;
        StoredEnergy energy = part.spring ? StoredEnergy.SPRING : other;
        List<String> prepare = draft.chance(0.1) ? List.of("compare with the old one") : List.of();
        Where where = part.shared ? Where.ONCE : Where.EACH_SIDE;
        boolean pair = draft.chance(0.1);
        return new PartEntry(
                part.id,
                where,
                "Name of " + part.id,
                draft.minutes(0.5),
                null,
                List.of(),
                pair,
                false,
                prepare,
                part.aside,
                tether,
                energy,
                null);
    }

    private JointEntry joint(JointDraft joint) {
        boolean onWheelsTight = !joint.bench && draft.chance(0.08);
        JointKind kind = draft.any(List.of(JointKind.values()));
        Fastener fastener = fastener(onWheelsTight, !joint.bench);
        return new JointEntry(
                joint.id,
                draft.sided ? joint.where : Where.ONCE,
                "Name of " + joint.id,
                joint.joins.stream().map(part -> draft.parts.get(part).id).toList(),
                kind,
                fastener,
                new Access(joint.behind),
                onWheelsTight ? reach(joint) : null,
                joint.after,
                joint.aheadOf,
                joint.letsGo,
                joint.spoils,
                !joint.bench && joint.behind.isEmpty() && draft.chance(0.15),
                timing(joint),
                draft.chance(0.12),
                wording(),
                withNew(joint, fastener),
                brings(joint),
                draft.chance(0.2) ? draft.any(List.of("hand", "hand", "pry bar", "puller")) : null,
                joint.bench ? Station.BENCH : draft.any(STATIONS),
                height(joint),
                draft.minutes(1.5),
                draft.minutes(1.5),
                0.25,
                List.of(),
                null);
    }

    private Timing timing(JointDraft joint) {
        boolean held = !joint.bench && joint.behind.isEmpty() && joint.id.hashCode() % 2 == 0;
        return new Timing(held ? joint.after : List.of(), isLate(joint) ? List.of(LATE) : List.of());
    }

    /** One in a sheet: of two, one might be behind the other and both wait for ever. */
    private boolean isLate(JointDraft joint) {
        JointDraft one = draft.joints.get((int) (seed * 13 % draft.joints.size()));
        return joint == one && !joint.bench && (draft.once(joint) || joint.where != Where.EACH_SIDE);
    }

    private Height height(JointDraft joint) {
        double kind = draft.random.nextDouble();
        return joint.bench || kind < 0.2 ? Height.ANY : kind < 0.3 ? Height.ON_WHEELS : Height.RAISED;
    }

    private Access reach(JointDraft joint) {
        return draft.chance(0.4) && !joint.behind.isEmpty() ? new Access(List.of(joint.behind.get(0))) : Access.FREE;
    }

    private Fastener fastener(boolean onWheelsTight, boolean onTheCar) {
        Length hex = draft.chance(0.75) ? new Length(HEXES[draft.random.nextInt(HEXES.length)]) : null;
        Height loaded = onWheelsTight ? Height.ON_WHEELS : Height.RIDE_HEIGHT;
        Height tighten = onTheCar && (onWheelsTight || draft.chance(0.1)) ? loaded : Height.RAISED;
        return fastener(hex, tighten);
    }

    private Fastener fastener(@Nullable Length hex, Height tighten) {
        int count = 1 + draft.random.nextInt(5);
        Holding hold = draft.chance(0.2) ? new Holding.ByHex(new Length(17)) : Holding.NOTHING;
        boolean critical = draft.chance(0.2);
        boolean singleUse = draft.chance(0.15);
        return new Fastener(
                count,
                null,
                null,
                hex,
                hold,
                tightening(),
                null,
                Condition.DRY,
                critical,
                tighten,
                singleUse,
                draft.chance(0.05),
                null,
                null);
    }

    private Tightening tightening() {
        Torque torque = new Torque(20 + draft.random.nextInt(100));
        return switch (draft.random.nextInt(4)) {
            case 0 -> Tightening.UNKNOWN;
            case 1 -> Tightening.SNUG;
            case 2 -> new Tightening.TorqueThenAngle(torque, new Angle(90));
            default -> new Tightening.ToTorque(torque);
        };
    }

    private List<WithNew> withNew(JointDraft joint, Fastener old) {
        int part = draft.any(joint.joins);
        if (part == Draft.BODY || !draft.chance(0.1)) {
            return List.of();
        }
        Fastener changed = new Fastener(
                old.count(),
                old.thread(),
                old.propertyClass(),
                new Length(16),
                old.hold(),
                tightening(),
                "leaflet",
                old.condition(),
                old.critical(),
                old.tighten(),
                old.singleUse(),
                old.leftHanded(),
                null,
                null);
        return List.of(new WithNew(draft.parts.get(part).id, changed));
    }

    private List<String> brings(JointDraft joint) {
        List<String> brings = new ArrayList<>(draft.chance(0.15) ? List.of(draft.any(FOLLOW_UPS)) : List.of());
        if (isLate(joint)) {
            brings.add(LATE);
        }
        return brings;
    }

    private Wording wording() {
        return new Wording(
                said("set to service mode"),
                said("scribe it"),
                said("look at the gaiter"),
                said("other-nut"),
                said("clean and dry"));
    }

    private List<String> said(String words) {
        return draft.chance(0.1) ? List.of(words) : List.of();
    }
}
