package putback.plan.steps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import putback.plan.selection.Wanted;
import putback.plan.selection.WantedNames;
import putback.quantity.Minutes;
import putback.sheet.Assembled;
import putback.sheet.Assembly;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.JointKind;
import putback.sheet.Lift;
import putback.sheet.Naming;
import putback.sheet.Setups;
import putback.sheet.Sheet;
import putback.sheet.Side;
import putback.sheet.Times;
import putback.sheet.UnitEntry;
import putback.sheet.Where;

/** A small sheet written in a test. */
public final class ASheet {
    private final boolean sided;
    private final Where where;
    private final List<APart> parts = new ArrayList<>();
    private final List<AJoint> joints = new ArrayList<>();
    private final List<UnitEntry> units = new ArrayList<>();
    private final List<FollowUp> followUps = new ArrayList<>();
    private Lift lift = Lift.NOT_SAID;

    private ASheet(boolean sided) {
        this.sided = sided;
        this.where = sided ? Where.EACH_SIDE : Where.ONCE;
    }

    public static ASheet oneSide() {
        return new ASheet(false);
    }

    public static ASheet bothSides() {
        return new ASheet(true);
    }

    public APart part(String id) {
        APart part = new APart(id, where);
        parts.add(part);
        return part;
    }

    public AJoint joint(String id, JointKind kind, String... joins) {
        AJoint joint = new AJoint(id, where, kind, joins);
        joints.add(joint);
        return joint;
    }

    public ASheet unit(String id, String price, String... parts) {
        units.add(new UnitEntry(
                id,
                where,
                Naming.fromId(id),
                List.of(parts),
                new BigDecimal(price),
                false,
                false,
                List.of(),
                List.of()));
        return this;
    }

    public ASheet followUp(String id, String minutes, boolean critical, Height height, String... follows) {
        followUps.add(
                new FollowUp(id, Naming.fromId(id), Minutes.of(minutes), critical, height, List.of(follows), null));
        return this;
    }

    public ASheet lift(String points, String note) {
        lift = new Lift(points, note);
        return this;
    }

    public Assembly assembly() {
        Sheet sheet = new Sheet(
                "test",
                "Test",
                lift,
                sided,
                parts.stream().map(APart::entry).toList(),
                joints.stream().map(AJoint::entry).toList(),
                units,
                followUps,
                Times.DEFAULT,
                List.of(),
                Setups.DEFAULT);
        Assembled assembled = Assembly.of(sheet);
        if (assembled instanceof Assembled.Sound sound) {
            return sound.assembly();
        }
        throw new IllegalArgumentException(assembled.toString());
    }

    public static Wanted wanted(Assembly assembly, String... names) {
        WantedNames.Understood understood =
                WantedNames.understand(assembly, List.of(names), Set.of(Side.LEFT, Side.RIGHT));
        if (understood instanceof WantedNames.Understood.Clear clear) {
            return clear.wanted();
        }
        throw new IllegalArgumentException(understood.toString());
    }
}
