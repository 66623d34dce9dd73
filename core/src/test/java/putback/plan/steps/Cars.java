package putback.plan.steps;

import putback.sheet.Assembly;
import putback.sheet.Height;
import putback.sheet.JointKind;
import putback.sheet.Station;
import putback.sheet.StoredEnergy;
import putback.sheet.TetherKind;

/** Hand-made cars. */
public final class Cars {
    private Cars() {}

    /** A strut corner: the wheel behind its cap, the top nuts behind theirs and tightened on wheels. */
    public static Assembly strut() {
        return strutSheet().assembly();
    }

    public static ASheet strutSheet() {
        ASheet sheet = ASheet.bothSides().lift("the sill seam", "not on the beam");
        sheet.part("wheel").handling("0.5");
        sheet.part("centre-cap").handling("0.1");
        sheet.part("caliper").handling("0.4");
        sheet.part("disc").handling("0.4").pair().soldAsAxleSet().price("80.00").companions("pads");
        sheet.part("pads").handling("0.2").soldAsAxleSet().price("30.00");
        sheet.part("carrier").handling("0.8");
        sheet.part("strut")
                .handling("0.7")
                .price("92.00")
                .pair()
                .companions("top-mount")
                .stores(StoredEnergy.GAS)
                .prepare("rod drawn out to its full length");
        sheet.part("spring").handling("0.4").price("55.00").pair().stores(StoredEnergy.SPRING);
        sheet.part("top-mount").handling("0.2").price("25.00");
        sheet.part("strut-cap").handling("0.1");
        sheet.part("link").handling("0.2").price("18.00");
        sheet.part("bar").shared().stores(StoredEnergy.TWISTED_BAR);
        sheet.part("arm").handling("0.6").price("75.00");
        sheet.part("hose").tether(TetherKind.HOSE);
        sheet.part("wire").tether(TetherKind.WIRE);
        sheet.joint("cap-clip", JointKind.CLIP, "centre-cap", "wheel")
                .height(Height.ANY)
                .minutes("0.1", "0.1");
        sheet.joint("wheel-nuts", JointKind.NUT, "wheel", "carrier")
                .count(5)
                .hex(19)
                .torque(110)
                .critical()
                .breakLoose()
                .reachOnWheels("centre-cap")
                .tighten(Height.ON_WHEELS)
                .minutes("1.0", "1.5");
        sheet.joint("caliper-bolts", JointKind.BOLT, "caliper", "carrier")
                .count(2)
                .hex(17)
                .torque(105)
                .critical()
                .once()
                .behind("wheel")
                .letsGo("caliper", "strap")
                .brings("pedal");
        sheet.joint("pads-in-caliper", JointKind.SEAT, "pads", "caliper").after("caliper-bolts");
        sheet.joint("disc-screw", JointKind.SCREW, "disc", "carrier")
                .tool("T30 bit")
                .behind("wheel", "caliper")
                .beforeClosing("wipe the hub face");
        sheet.joint("hose-union", JointKind.UNION, "hose", "caliper")
                .hex(11)
                .torque(17)
                .critical()
                .behind("wheel")
                .brings("bleed", "pedal");
        sheet.joint("hose-bracket", JointKind.BOLT, "hose", "body").hex(10).behind("wheel");
        sheet.joint("hose-clip", JointKind.CLIP, "hose", "strut").behind("wheel");
        sheet.joint("wire-plug", JointKind.PLUG, "wire", "carrier").behind("wheel");
        sheet.joint("wire-clip", JointKind.CLIP, "wire", "body").behind("wheel");
        sheet.joint("link-to-strut", JointKind.NUT, "link", "strut")
                .hex(16)
                .holdKey(6)
                .torque(50)
                .critical()
                .behind("wheel");
        sheet.joint("link-to-bar", JointKind.NUT, "link", "bar")
                .hex(16)
                .holdKey(6)
                .torque(50)
                .behind("wheel");
        sheet.joint("bar-bush", JointKind.BOLT, "bar", "body").hex(13);
        sheet.joint("strut-to-carrier", JointKind.BOLT_NUT, "strut", "carrier")
                .count(2)
                .hex(18)
                .holdHex(18)
                .torque(98)
                .critical()
                .behind("wheel")
                .aheadOf("top-nuts")
                .letsGo("carrier", "strap")
                .mark("scribe strut to carrier")
                .look("lowest coil", "gaiter")
                .brings("angles")
                .withNew("strut", 17, 55)
                .beforeOpening("steering straight ahead");
        sheet.joint("ball-joint", JointKind.TAPER, "carrier", "arm")
                .hex(18)
                .torque(60)
                .critical()
                .pivot()
                .behind("wheel")
                .letsGo("carrier", "strap")
                .beforeClosing("clean taper, dry");
        sheet.joint("arm-front", JointKind.BOLT, "arm", "body")
                .hex(18)
                .torqueThenAngle(60, 90)
                .critical()
                .at(Station.UNDERNEATH)
                .behind("wheel")
                .tighten(Height.RIDE_HEIGHT);
        sheet.joint("arm-rear", JointKind.BOLT_NUT, "arm", "body")
                .hex(18)
                .holdHex(18)
                .torque(90)
                .at(Station.UNDERNEATH)
                .tighten(Height.RIDE_HEIGHT);
        sheet.joint("strut-cap-clip", JointKind.CLIP, "strut-cap", "body")
                .at(Station.ENGINE_BAY)
                .height(Height.ANY);
        sheet.joint("top-nuts", JointKind.NUT, "top-mount", "body")
                .count(3)
                .hex(13)
                .torque(25)
                .critical()
                .at(Station.ENGINE_BAY)
                .height(Height.ANY)
                .behind("strut-cap")
                .tighten(Height.ON_WHEELS)
                .staysShut("rod-nut")
                .letsGo("strut", "strap");
        sheet.joint("rod-nut", JointKind.NUT, "strut", "top-mount")
                .hex(19)
                .holdKey(6)
                .torque(60)
                .critical()
                .at(Station.BENCH)
                .letsGo("spring", "spring compressor")
                .once();
        sheet.joint("spring-seat", JointKind.SEAT, "spring", "strut")
                .at(Station.BENCH)
                .after("rod-nut");
        sheet.joint("spring-top", JointKind.SEAT, "spring", "top-mount")
                .at(Station.BENCH)
                .after("rod-nut");
        sheet.unit("complete-strut", "168.00", "strut", "spring", "top-mount");
        sheet.followUp("bleed", "12", true, Height.RAISED);
        sheet.followUp("pedal", "0.5", true, Height.RAISED, "bleed");
        sheet.followUp("angles", "35", false, Height.ON_WHEELS);
        return sheet;
    }

    /** A rear beam on coil springs that is let down on a jack. */
    public static Assembly beam() {
        ASheet sheet = ASheet.bothSides();
        sheet.part("wheel");
        sheet.part("damper").stores(StoredEnergy.GAS).pair();
        sheet.part("spring").stores(StoredEnergy.SPRING);
        sheet.part("beam").shared();
        sheet.part("hose").tether(TetherKind.HOSE);
        sheet.joint("wheel-bolts", JointKind.BOLT, "wheel", "beam")
                .count(4)
                .hex(17)
                .torque(120)
                .critical()
                .breakLoose()
                .tighten(Height.ON_WHEELS)
                .reachOnWheels();
        sheet.joint("damper-top", JointKind.BOLT, "damper", "body")
                .hex(16)
                .torque(70)
                .behind("wheel");
        sheet.joint("damper-bottom", JointKind.BOLT_NUT, "damper", "beam")
                .hex(18)
                .torque(90)
                .behind("wheel")
                .critical()
                .tighten(Height.RIDE_HEIGHT)
                .letsDown("beam", "jack");
        sheet.joint("spring-seat", JointKind.SEAT, "spring", "beam", "body")
                .after("damper-bottom", "other.damper-bottom");
        sheet.joint("beam-bolt", JointKind.BOLT, "beam", "body")
                .hex(21)
                .torque(110)
                .pivot()
                .tighten(Height.RIDE_HEIGHT)
                .at(Station.UNDERNEATH);
        sheet.joint("hose-union", JointKind.UNION, "hose", "beam").hex(11);
        sheet.joint("hose-body", JointKind.UNION, "hose", "body").hex(11);
        return sheet.assembly();
    }
}
