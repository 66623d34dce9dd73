package putback.plan.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Minutes;
import putback.quantity.Torque;
import putback.sheet.Access;
import putback.sheet.Condition;
import putback.sheet.Fastener;
import putback.sheet.Height;
import putback.sheet.Holding;
import putback.sheet.JointEntry;
import putback.sheet.JointKind;
import putback.sheet.LetsGo;
import putback.sheet.Naming;
import putback.sheet.Station;
import putback.sheet.Tightening;
import putback.sheet.Timing;
import putback.sheet.Where;
import putback.sheet.WithNew;
import putback.sheet.Wording;

/** A joint entry with the defaults of the format. */
public final class AJoint {
    private final String id;
    private Where where;
    private final JointKind kind;
    private final List<String> joins;
    private int count = 1;
    private @Nullable String thread;
    private @Nullable Length hex;
    private Holding hold = Holding.NOTHING;
    private Tightening tightening = Tightening.UNKNOWN;
    private @Nullable String source;
    private boolean critical;
    private Height tighten = Height.RAISED;
    private boolean once;
    private List<List<String>> behind = new ArrayList<>();
    private @Nullable Access reach;
    private List<String> after = List.of();
    private List<String> aheadOf = List.of();
    private final List<LetsGo> letsGo = new ArrayList<>();
    private List<String> spoils = List.of();
    private boolean loose;
    private Timing timing = Timing.PLAIN;
    private boolean pivot;
    private Wording wording = Wording.SILENT;
    private final List<WithNew> withNew = new ArrayList<>();
    private List<String> brings = List.of();
    private @Nullable String tool;
    private Station station = Station.WHEEL_WELL;
    private Height height = Height.RAISED;
    private Minutes open = Minutes.of("1.1");
    private Minutes close = Minutes.of("1.3");

    AJoint(String id, Where where, JointKind kind, String... joins) {
        this.id = id;
        this.where = where;
        this.kind = kind;
        this.joins = List.of(joins);
    }

    public AJoint once() {
        once = true;
        return this;
    }

    public AJoint count(int fasteners) {
        count = fasteners;
        return this;
    }

    public AJoint hex(double millimetres) {
        hex = new Length(millimetres);
        return this;
    }

    public AJoint thread(String designation) {
        thread = designation;
        return this;
    }

    public AJoint holdHex(double millimetres) {
        hold = new Holding.ByHex(new Length(millimetres));
        return this;
    }

    public AJoint holdKey(double millimetres) {
        hold = new Holding.ByKey(new Length(millimetres));
        return this;
    }

    public AJoint torque(double newtonMetres) {
        tightening = new Tightening.ToTorque(new Torque(newtonMetres));
        source = "garage's own record";
        return this;
    }

    public AJoint torqueThenAngle(double newtonMetres, double degrees) {
        tightening = new Tightening.TorqueThenAngle(new Torque(newtonMetres), new Angle(degrees));
        return this;
    }

    public AJoint critical() {
        critical = true;
        return this;
    }

    public AJoint tighten(Height where) {
        tighten = where;
        return this;
    }

    public AJoint behind(String... parts) {
        for (String part : parts) {
            behind.add(List.of(part));
        }
        return this;
    }

    public AJoint behindOneOf(String... parts) {
        behind.add(List.of(parts));
        return this;
    }

    public AJoint reachOnWheels(String... parts) {
        reach = new Access(List.of(parts).stream().map(List::of).toList());
        return this;
    }

    public AJoint after(String... joints) {
        after = List.of(joints);
        return this;
    }

    public AJoint aheadOf(String... joints) {
        aheadOf = List.of(joints);
        return this;
    }

    public AJoint letsGo(String part, String aid) {
        letsGo.add(new LetsGo(part, aid, false));
        return this;
    }

    public AJoint letsDown(String part, String aid) {
        letsGo.add(new LetsGo(part, aid, true));
        return this;
    }

    public AJoint spoils(String... parts) {
        spoils = List.of(parts);
        return this;
    }

    public AJoint breakLoose() {
        loose = true;
        return this;
    }

    public AJoint loosenBefore(String... joints) {
        timing = new Timing(List.of(joints), timing.tightenAfter());
        return this;
    }

    public AJoint tightenAfter(String... followUps) {
        timing = new Timing(timing.loosenBefore(), List.of(followUps));
        return this;
    }

    public AJoint pivot() {
        pivot = true;
        return this;
    }

    public AJoint says(UnaryOperator<Wording> change) {
        wording = change.apply(wording);
        return this;
    }

    public AJoint beforeOpening(String... items) {
        return says(w -> new Wording(List.of(items), w.marks(), w.look(), w.staysShut(), w.beforeClosing()));
    }

    public AJoint mark(String... items) {
        return says(w -> new Wording(w.beforeOpening(), List.of(items), w.look(), w.staysShut(), w.beforeClosing()));
    }

    public AJoint look(String... items) {
        return says(w -> new Wording(w.beforeOpening(), w.marks(), List.of(items), w.staysShut(), w.beforeClosing()));
    }

    public AJoint staysShut(String... items) {
        return says(w -> new Wording(w.beforeOpening(), w.marks(), w.look(), List.of(items), w.beforeClosing()));
    }

    public AJoint beforeClosing(String... items) {
        return says(w -> new Wording(w.beforeOpening(), w.marks(), w.look(), w.staysShut(), List.of(items)));
    }

    /** The fastener as it is now, changed for a new part. */
    public AJoint withNew(String part, double hexMillimetres, double newtonMetres) {
        AJoint changed = new AJoint(id, where, kind, joins.toArray(String[]::new));
        changed.count = count;
        changed.hold = hold;
        changed.critical = critical;
        changed.tighten = tighten;
        changed.once = once;
        withNew.add(new WithNew(
                part, changed.hex(hexMillimetres).torque(newtonMetres).fastener()));
        return this;
    }

    public AJoint brings(String... followUps) {
        brings = List.of(followUps);
        return this;
    }

    public AJoint tool(String name) {
        tool = name;
        return this;
    }

    public AJoint at(Station where) {
        station = where;
        return this;
    }

    public AJoint height(Height how) {
        height = how;
        return this;
    }

    public AJoint minutes(String opening, String closing) {
        open = Minutes.of(opening);
        close = Minutes.of(closing);
        return this;
    }

    private Fastener fastener() {
        return new Fastener(
                count,
                thread,
                null,
                hex,
                hold,
                tightening,
                source,
                Condition.DRY,
                critical,
                tighten,
                once,
                false,
                null,
                null);
    }

    JointEntry entry() {
        return new JointEntry(
                id,
                where,
                Naming.fromId(id),
                joins,
                kind,
                fastener(),
                new Access(behind),
                reach,
                after,
                aheadOf,
                letsGo,
                spoils,
                loose,
                timing,
                pivot,
                wording,
                withNew,
                brings,
                tool,
                station,
                height,
                open,
                close,
                0.25,
                List.of(),
                null);
    }
}
