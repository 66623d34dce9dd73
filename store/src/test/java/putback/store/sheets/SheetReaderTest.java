package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static putback.store.sheets.Sheets.joint;
import static putback.store.sheets.Sheets.part;
import static putback.store.sheets.Sheets.sound;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Minutes;
import putback.quantity.Torque;
import putback.sheet.Access;
import putback.sheet.Aside;
import putback.sheet.Assembly;
import putback.sheet.Condition;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Holding;
import putback.sheet.JointEntry;
import putback.sheet.JointKind;
import putback.sheet.LetsGo;
import putback.sheet.Life;
import putback.sheet.Lift;
import putback.sheet.PartEntry;
import putback.sheet.Resort;
import putback.sheet.Setups;
import putback.sheet.Side;
import putback.sheet.Station;
import putback.sheet.StoredEnergy;
import putback.sheet.Tether;
import putback.sheet.TetherKind;
import putback.sheet.Tightening;
import putback.sheet.Times;

class SheetReaderTest {
    @TempDir
    Path folder;

    private Assembly all;

    @BeforeEach
    void read_the_sheet_with_every_key() {
        all = sound(Sheets.read(folder, Sheets.everything()));
    }

    @Test
    void the_head_is_read() {
        assertThat(all.sheet().id()).isEqualTo("front-strut");
        assertThat(all.sheet().title()).isEqualTo("Front strut corner, small front-drive van");
        assertThat(all.sheet().lift()).isEqualTo(new Lift("sill seam behind the front wheel", "not on the beam"));
        assertThat(all.sided()).isTrue();
        assertThat(all.sheet().times()).isEqualTo(new Times(0.25, 0.15));
        assertThat(all.sheet().setups())
                .isEqualTo(new Setups(Minutes.of("3"), Minutes.of("0.5"), Minutes.of("0.3"), Minutes.of("0.15")));
    }

    @Test
    void a_part_is_read_with_all_its_keys() {
        PartEntry strut = part(all, "left.strut").entry();
        assertThat(strut.name()).isEqualTo("Strut");
        assertThat(strut.handling()).isEqualTo(Minutes.of("0.6"));
        assertThat(strut.price()).isEqualTo(new BigDecimal("92.00"));
        assertThat(strut.companions()).containsExactly("top-mount");
        assertThat(strut.pair()).isTrue();
        assertThat(strut.soldAsAxleSet()).isTrue();
        assertThat(strut.prepare()).containsExactly("compare with the old one", "top plate stays on");
        assertThat(strut.storedEnergy()).isEqualTo(StoredEnergy.SPRING);
        assertThat(strut.life()).isEqualTo(new Life(120_000, 3.5));
    }

    @Test
    void what_moves_aside_and_what_is_flexible_is_read() {
        assertThat(part(all, "right.carrier").entry().aside())
                .isEqualTo(new Aside(List.of("strut-to-hub"), Minutes.of("0.5"), "strap"));
        assertThat(part(all, "left.hose").entry().tether())
                .isEqualTo(new Tether(TetherKind.HOSE, new Length(310), null));
    }

    @Test
    void a_joint_is_read_with_all_its_keys() {
        JointEntry joint = joint(all, "left.strut-to-hub").entry();
        assertThat(joint.name()).isEqualTo("Strut to hub carrier");
        assertThat(joint.joins()).containsExactly("strut", "carrier");
        assertThat(joint.kind()).isEqualTo(JointKind.BOLT_NUT);
        assertThat(joint.behind()).isEqualTo(new Access(List.of(List.of("wheel"), List.of("cap", "grille"))));
        assertThat(joint.reachOnWheels()).isNull();
        assertThat(joint.aheadOf()).containsExactly("top-nut");
        assertThat(joint.letsGo()).containsExactly(new LetsGo("carrier", "strap", false));
        assertThat(joint.spoils()).containsExactly("bearing");
        assertThat(joint.wording().beforeOpening()).containsExactly("electric parking brake to service mode");
        assertThat(joint.wording().marks()).containsExactly("scribe strut to carrier");
        assertThat(joint.wording().look()).containsExactly("lowest coil", "gaiter");
        assertThat(joint.wording().staysShut()).containsExactly("rod-nut");
        assertThat(joint.wording().beforeClosing()).containsExactly("clean taper", "dry");
        assertThat(joint.brings()).containsExactly("angles");
        assertThat(joint.tool()).isEqualTo("hand");
        assertThat(joint.station()).isEqualTo(Station.WHEEL_WELL);
        assertThat(joint.height()).isEqualTo(Height.RAISED);
        assertThat(joint.open()).isEqualTo(Minutes.of("1.2"));
        assertThat(joint.close()).isEqualTo(Minutes.of("1.5"));
        assertThat(joint.spread()).isEqualTo(0.25);
        assertThat(joint.resorts()).containsExactly("wire-brush", "penetrant", "heat", "cut");
        assertThat(joint.exposure()).isEqualTo(0.8);
    }

    @Test
    void its_fastener_is_read() {
        assertThat(joint(all, "left.strut-to-hub").fastener())
                .isEqualTo(new Fastener(
                        2,
                        "M12x1.25",
                        "10.9",
                        new Length(18),
                        new Holding.ByHex(new Length(18)),
                        new Tightening.ToTorque(new Torque(98)),
                        "garage's own record",
                        Condition.DRY,
                        true,
                        Height.RAISED,
                        false,
                        true,
                        new Torque(92),
                        new Torque(104)));
    }

    @Test
    void what_differs_with_a_new_part_is_the_fastener_overlaid() {
        Fastener fastener =
                joint(all, "left.strut-to-hub").entry().withNew().get(0).fastener();
        assertThat(joint(all, "left.strut-to-hub").entry().withNew().get(0).part())
                .isEqualTo("strut");
        assertThat(fastener.hex()).isEqualTo(new Length(17));
        assertThat(fastener.tightening()).isEqualTo(new Tightening.ToTorque(new Torque(55)));
        assertThat(fastener.source()).isEqualTo("part maker's leaflet");
        assertThat(fastener.thread()).isEqualTo("M12x1.25");
        assertThat(fastener.windowLow())
                .as("the window was said of the old torque")
                .isNull();
    }

    @Test
    void tightening_is_a_torque_or_torque_and_angle_or_snug_or_not_known() {
        assertThat(joint(all, "left.top-nut").fastener().tightening())
                .isEqualTo(new Tightening.TorqueThenAngle(new Torque(60), new Angle(90)));
        assertThat(joint(all, "left.hose-end").fastener().tightening()).isEqualTo(Tightening.SNUG);
        assertThat(joint(all, "left.seat").fastener().tightening()).isEqualTo(Tightening.UNKNOWN);
        assertThat(joint(all, "left.mount-nuts").fastener().tightening())
                .isEqualTo(new Tightening.ToTorque(new Torque(66 * Torque.NEWTON_METRES_PER_POUND_FOOT)));
    }

    @Test
    void units_follow_ups_and_resorts_are_read() {
        assertThat(all.units())
                .extracting(unit -> unit.id())
                .containsExactly("left.complete-strut", "right.complete-strut");
        assertThat(all.units().get(0).entry().price()).isEqualTo(new BigDecimal("168.00"));
        assertThat(all.sheet().followUps())
                .containsExactly(
                        new FollowUp(
                                "angles",
                                "Check wheel angles",
                                Minutes.of("35"),
                                false,
                                Height.ANY,
                                List.of(),
                                "this garage"),
                        new FollowUp(
                                "pedal",
                                "Pump the brake pedal until firm before the car moves",
                                Minutes.of("0.5"),
                                true,
                                Height.RAISED,
                                List.of(),
                                null));
        assertThat(all.sheet().resorts())
                .containsExactly(new Resort(
                        "heat", Minutes.of("6"), 0.6, 0.1, new BigDecimal("12.00"), null, List.of("stuck", "spins")));
    }

    @Test
    void what_is_not_said_has_the_default_of_the_format() {
        Assembly small = sound(Sheets.read(folder, Sheets.SMALL.replace("kind: nut", "kind: nut, count: 5")));
        PartEntry wheel = part(small, "wheel").entry();
        assertThat(wheel.name()).isEqualTo("Wheel");
        assertThat(wheel.handling()).isEqualTo(Minutes.of("0.3"));
        assertThat(wheel.price()).isNull();
        JointEntry nuts = joint(small, "nuts").entry();
        assertThat(nuts.open()).isEqualTo(JointKind.NUT.defaultOpen().times(5));
        assertThat(nuts.close()).isEqualTo(JointKind.NUT.defaultClose().times(5));
        assertThat(nuts.spread()).isEqualTo(Times.DEFAULT.spread());
        assertThat(nuts.station()).isEqualTo(Station.WHEEL_WELL);
        assertThat(nuts.height()).isEqualTo(Height.RAISED);
        assertThat(nuts.exposure()).isNull();
        assertThat(nuts.fastener())
                .isEqualTo(new Fastener(
                        5,
                        null,
                        null,
                        null,
                        Holding.NOTHING,
                        Tightening.UNKNOWN,
                        null,
                        Condition.DRY,
                        false,
                        Height.RAISED,
                        false,
                        false,
                        null,
                        null));
        assertThat(small.sided()).isFalse();
        assertThat(part(small, "wheel").side()).isEqualTo(Side.NONE);
    }

    @Test
    void a_json_file_is_a_sheet_too_even_when_tabs_indent_it() {
        Path json = Sheets.write(folder, "sheet.json", """
                {
                \t"sheet": "small", "title": "Small \\u00b7",
                \t"parts": {"wheel": {"price": 12.50, "shared": false}, "hub": {"minutes": "36 s"}},
                \t"joints": {"nuts": {"joins": ["wheel","hub"],"kind":"nut","count":5,"torque":"98 N\\u00b7m"}}
                }
                """);
        Assembly small = sound(SheetReader.read(json));
        assertThat(small.sheet().title()).isEqualTo("Small ·");
        assertThat(part(small, "wheel").entry().price()).isEqualTo(new BigDecimal("12.50"));
        assertThat(part(small, "hub").entry().handling()).isEqualTo(Minutes.of("0.6"));
        assertThat(joint(small, "nuts").fastener().tightening()).isEqualTo(new Tightening.ToTorque(new Torque(98)));
    }

    @Test
    void scalars_are_what_their_key_asks_for_and_not_what_yaml_would_make_of_them() {
        Assembly small = sound(Sheets.read(
                folder,
                Sheets.SMALL
                        .replace("wheel: {}", "wheel: {name: no, prepare: [017, 1.0, yes]}")
                        .replace("kind: nut", "kind: nut, class: 10.9")));
        assertThat(part(small, "wheel").entry().name()).isEqualTo("no");
        assertThat(part(small, "wheel").entry().prepare()).containsExactly("017", "1.0", "yes");
        assertThat(joint(small, "nuts").fastener().propertyClass()).isEqualTo("10.9");
    }

    @Test
    void a_byte_order_mark_and_windows_line_ends_are_nothing_special() {
        String windows = "\uFEFF" + Sheets.SMALL.replace("\n", "\r\n");
        assertThat(sound(Sheets.read(folder, windows)).parts()).hasSize(3);
    }

    @Test
    void the_body_may_be_listed_and_is_there_once() {
        Assembly small = sound(Sheets.read(folder, Sheets.SMALL.replace("wheel: {}", "body: {}\n  wheel: {}")));
        assertThat(Sheets.partIds(small)).containsExactly("body", "wheel", "hub");
    }

    @Test
    void one_value_may_stand_without_its_list() {
        Assembly small = sound(Sheets.read(
                folder,
                Sheets.SMALL.replace(
                        "kind: bolt}", "kind: bolt, behind: wheel, after: nuts, look: rust, mark: [one, two]}")));
        JointEntry bolts = joint(small, "bolts").entry();
        assertThat(bolts.behind()).isEqualTo(new Access(List.of(List.of("wheel"))));
        assertThat(bolts.after()).containsExactly("nuts");
        assertThat(bolts.wording().look()).containsExactly("rust");
        assertThat(bolts.wording().marks()).containsExactly("one", "two");
    }

    @Test
    void aliases_stand_for_what_they_name() {
        Assembly small = sound(Sheets.read(
                folder,
                Sheets.SMALL.replace("wheel: {}", "wheel: &w {price: 5}").replace("hub: {}", "hub: *w")));
        assertThat(part(small, "hub").entry().price()).isEqualTo(new BigDecimal("5"));
    }

    @Test
    void minutes_may_be_given_in_part_and_in_seconds() {
        Assembly small = sound(Sheets.read(
                folder, Sheets.SMALL.replace("kind: nut}", "kind: nut, minutes: {open: 36 s, spread: 0.5}}")));
        JointEntry nuts = joint(small, "nuts").entry();
        assertThat(nuts.open()).isEqualTo(Minutes.of("0.6"));
        assertThat(nuts.close()).isEqualTo(JointKind.NUT.defaultClose());
        assertThat(nuts.spread()).isEqualTo(0.5);
    }
}
