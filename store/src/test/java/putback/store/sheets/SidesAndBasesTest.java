package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static putback.store.sheets.Sheets.faults;
import static putback.store.sheets.Sheets.joint;
import static putback.store.sheets.Sheets.jointIds;
import static putback.store.sheets.Sheets.part;
import static putback.store.sheets.Sheets.partIds;
import static putback.store.sheets.Sheets.sound;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.quantity.Minutes;
import putback.quantity.Torque;
import putback.sheet.Assembly;
import putback.sheet.Tightening;

class SidesAndBasesTest {
    private static final String OVER = "sheet: over\ntitle: Over\nbase: sheet\n";

    @TempDir
    Path folder;

    @Test
    void each_side_has_its_parts_and_joints_left_before_right() {
        Assembly sided = sound(Sheets.read(folder, Sheets.SIDED));
        assertThat(partIds(sided)).containsExactly("body", "left.wheel", "right.wheel", "left.hub", "right.hub");
        assertThat(jointIds(sided)).containsExactly("left.nuts", "right.nuts", "left.bolts", "right.bolts");
    }

    @Test
    void a_shared_part_and_a_joint_of_shared_parts_exist_once() {
        Assembly sided = sound(Sheets.read(folder, Sheets.SIDED.replace("hub: {}", "hub: {shared: true}")));
        assertThat(partIds(sided)).containsExactly("body", "left.wheel", "right.wheel", "hub");
        assertThat(jointIds(sided)).containsExactly("left.nuts", "right.nuts", "bolts");
    }

    @Test
    void an_entry_for_one_side_lies_over_the_plain_one() {
        Assembly sided = sound(Sheets.read(
                folder,
                Sheets.SIDED.replace("wheel: {}", "wheel: {price: 10, minutes: 2}\n  left.wheel: {price: 12}")));
        assertThat(part(sided, "left.wheel").entry().price()).isEqualTo(new BigDecimal("12"));
        assertThat(part(sided, "left.wheel").entry().handling()).isEqualTo(Minutes.of("2"));
        assertThat(part(sided, "right.wheel").entry().price()).isEqualTo(new BigDecimal("10"));
    }

    @Test
    void nothing_for_one_side_leaves_the_other() {
        Assembly sided = sound(Sheets.read(
                folder,
                Sheets.SIDED
                        .replace("wheel: {}", "wheel: {}\n  left.wheel: null")
                        .replace("joints:", "joints:\n  left.nuts: null")));
        assertThat(partIds(sided)).containsExactly("body", "right.wheel", "left.hub", "right.hub");
        assertThat(jointIds(sided)).containsExactly("right.nuts", "left.bolts", "right.bolts");
    }

    @Test
    void an_entry_for_one_side_alone_exists_there_only() {
        Assembly sided = sound(Sheets.read(
                folder,
                Sheets.SIDED.replace("wheel: {}", "wheel: {}\n  right.cap: {}").replace("joints:", """
                        joints:
                          right.clips: {joins: [cap, body], kind: clip}\
                        """)));
        assertThat(partIds(sided)).contains("right.cap").doesNotContain("left.cap");
        assertThat(jointIds(sided)).contains("right.clips").doesNotContain("left.clips");
    }

    @Test
    void a_key_for_one_side_is_taken_back_with_nothing() {
        Assembly sided = sound(Sheets.read(
                folder, Sheets.SIDED.replace("wheel: {}", "wheel: {price: 10}\n  left.wheel: {price: null}")));
        assertThat(part(sided, "left.wheel").entry().price()).isNull();
    }

    @Test
    void sides_without_sides_and_on_shared_parts_are_faults() {
        assertThat(faults(Sheets.read(folder, Sheets.SMALL.replace("wheel: {}", "wheel: {}\n  left.wheel: {}"))))
                .containsExactly("sheet.yaml:5:3: the sheet has no sides; write wheel, or sides: both at the top");
        assertThat(faults(Sheets.read(
                        folder, Sheets.SIDED.replace("hub: {}", "hub: {shared: true}\n  left.hub: {price: 3}"))))
                .containsExactly("sheet.yaml:7:3: hub is shared: it exists once and cannot differ by side");
        assertThat(faults(Sheets.read(folder, Sheets.SIDED.replace("hub: {}", "hub: {}\n  left.cap: null"))))
                .containsExactly("sheet.yaml:7:3: left.cap removes what nothing describes; remove the line");
    }

    @Test
    void an_overlay_adds_changes_and_removes_by_id_and_key_by_key() {
        Assembly over = over(Sheets.SMALL.replace("wheel: {}", "wheel: {price: 10, minutes: 2}\n  cap: {}"), """
                parts:
                  cap: null
                  wheel: {price: 11.50}
                  disc: {}
                joints:
                  screw: {joins: [disc, hub], kind: screw}
                """);
        assertThat(over.sheet().id()).isEqualTo("over");
        assertThat(over.sheet().title()).isEqualTo("Over");
        assertThat(partIds(over)).containsExactly("body", "wheel", "hub", "disc");
        assertThat(jointIds(over)).containsExactly("nuts", "bolts", "screw");
        assertThat(part(over, "wheel").entry().price()).isEqualTo(new BigDecimal("11.50"));
        assertThat(part(over, "wheel").entry().handling()).isEqualTo(Minutes.of("2"));
    }

    @Test
    void an_overlay_may_differ_by_side_from_its_base() {
        Assembly over = over(Sheets.SIDED, "parts: {left.wheel: {price: 9}, right.wheel: {minutes: 1}}\n");
        assertThat(part(over, "left.wheel").entry().price()).isEqualTo(new BigDecimal("9"));
        assertThat(part(over, "right.wheel").entry().handling()).isEqualTo(Minutes.of("1"));
    }

    @Test
    void overlays_of_one_side_lie_over_each_other() {
        Assembly over = over(
                Sheets.SIDED.replace("hub: {}", "hub: {}\n  left.hub: {price: 1, minutes: 4}"),
                "parts: {left.hub: {price: null, pair: true}}\n");
        assertThat(part(over, "left.hub").entry().price()).isNull();
        assertThat(part(over, "left.hub").entry().handling()).isEqualTo(Minutes.of("4"));
        assertThat(part(over, "left.hub").entry().pair()).isTrue();
    }

    @Test
    void an_overlay_takes_back_what_its_base_has_on_one_side_only() {
        Assembly over = over(
                Sheets.SIDED.replace("hub: {}", "hub: {}\n  left.cap: {}").replace("joints:", """
                        joints:
                          left.clips: {joins: [cap, body], kind: clip}\
                        """),
                "parts: {left.cap: null}\njoints: {left.clips: null}\n");
        assertThat(partIds(over)).doesNotContain("left.cap");
        assertThat(jointIds(over)).containsExactly("left.nuts", "right.nuts", "left.bolts", "right.bolts");
    }

    @Test
    void what_is_not_known_of_this_car_takes_the_torque_back() {
        Assembly over = over(
                Sheets.SMALL.replace(
                        "kind: nut", "kind: nut, torque: 98 N·m, source: a book, window: [90 N·m, 99 N·m]"),
                "joints: {nuts: {torque: null}}\n");
        assertThat(joint(over, "nuts").fastener().tightening()).isEqualTo(Tightening.UNKNOWN);
        assertThat(joint(over, "nuts").fastener().source()).isNull();
    }

    @Test
    void a_new_torque_does_not_inherit_the_source_and_window_of_the_old_one() {
        String base = Sheets.SMALL.replace(
                "kind: nut", "kind: nut, torque: 98 N·m, source: a book, window: [90 N·m, 99 N·m]");
        Assembly over = over(base, "joints: {nuts: {torque: 120 N·m}}\n");
        assertThat(joint(over, "nuts").fastener().tightening()).isEqualTo(new Tightening.ToTorque(new Torque(120)));
        assertThat(joint(over, "nuts").fastener().source()).isNull();
        assertThat(joint(over, "nuts").fastener().windowLow()).isNull();
        Assembly said = over(base, "joints: {nuts: {torque: 120 N·m, source: another book}}\n");
        assertThat(joint(said, "nuts").fastener().source()).isEqualTo("another book");
    }

    @Test
    void of_several_bases_the_later_lies_over_the_earlier() {
        Sheets.write(folder, "one.yaml", Sheets.SMALL.replace("wheel: {}", "wheel: {price: 1}"));
        Sheets.write(folder, "two.yaml", "sheet: two\ntitle: Two\nparts: {wheel: {price: 2}, cap: {}}\njoints: {}\n");
        Read read = Sheets.read(folder, "sheet: over\ntitle: Over\nbase: [one, two.yaml]\n");
        assertThat(part(sound(read), "wheel").entry().price()).isEqualTo(new BigDecimal("2"));
        assertThat(partIds(sound(read))).containsExactly("body", "wheel", "hub", "cap");
    }

    @Test
    void removing_what_no_base_has_is_a_fault() {
        Sheets.write(folder, "sheet.yaml", Sheets.SMALL);
        Path over = Sheets.write(folder, "over.yaml", OVER + "parts:\n  weel: null\n  hub: {price: null}\n");
        assertThat(faults(SheetReader.read(over)))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("over.yaml:5:3: weel has nothing after it"),
                        second -> assertThat(second).startsWith("over.yaml:6:9: price has nothing after it"));
    }

    @Test
    void a_fault_is_told_in_the_file_where_it_stands() {
        Sheets.write(folder, "sheet.yaml", Sheets.SMALL.replace("hub: {}", "hub: {prize: 3, pair: yes}"));
        Path over = Sheets.write(folder, "over.yaml", OVER + "parts: {wheel: null}\n");
        assertThat(faults(SheetReader.read(over)))
                .satisfiesExactly(
                        removed -> assertThat(removed).startsWith("over.yaml:4:9: wheel is removed here, but nuts"),
                        key -> assertThat(key)
                                .startsWith("sheet.yaml:5:9: prize is not a key of part hub; maybe price"),
                        value -> assertThat(value).startsWith("sheet.yaml:5:25: pair of part hub: \"yes\" is neither"));
    }

    @Test
    void bases_that_cannot_be_had_are_told_where_they_are_named() {
        assertThat(faults(Sheets.read(folder, "sheet: a\ntitle: A\nbase: [gone, ../sheet.yaml, sheet.yaml, {a: b}]\n")))
                .satisfiesExactly(
                        gone -> assertThat(gone).startsWith("sheet.yaml:3:8: no base is called gone"),
                        outside -> assertThat(outside).startsWith("sheet.yaml:3:14: no base is called ../sheet.yaml"),
                        itself -> assertThat(itself)
                                .isEqualTo(
                                        "sheet.yaml:3:29: base sheet.yaml is built on itself: sheet.yaml on sheet.yaml;"
                                                + " remove one of these bases"),
                        map -> assertThat(map).startsWith("sheet.yaml:3:41: base: this is a map"));
    }

    @Test
    void a_circle_of_bases_is_told_with_its_members() {
        Sheets.write(folder, "a.yaml", "sheet: a\ntitle: A\nbase: b\n");
        Sheets.write(folder, "b.yaml", "sheet: b\ntitle: B\nbase: c\n");
        Sheets.write(folder, "c.yaml", "sheet: c\ntitle: C\nbase: a\n");
        assertThat(faults(SheetReader.read(folder.resolve("a.yaml"))))
                .containsExactly(
                        "c.yaml:3:7: base a is built on itself: a.yaml on b.yaml on c.yaml on a.yaml; remove one of"
                                + " these bases");
    }

    @Test
    void bases_on_bases_end_somewhere() {
        for (int i = 1; i <= 12; i++) {
            Sheets.write(folder, "s" + i + ".yaml", "sheet: s" + i + "\ntitle: S\nbase: s" + (i + 1) + "\n");
        }
        assertThat(faults(SheetReader.read(folder.resolve("s1.yaml"))))
                .hasSize(1)
                .first()
                .asString()
                .contains("8th base");
        String many = "sheet: s\ntitle: S\nbase: [" + String.join(", ", java.util.Collections.nCopies(60, "small.yaml"))
                + "]\n";
        Sheets.write(folder, "small.yaml", Sheets.SMALL);
        assertThat(faults(Sheets.read(folder, many))).first().asString().contains("one base too many");
    }

    @Test
    void a_base_that_is_no_sheet_is_told_with_its_own_fault() {
        Sheets.write(folder, "broken.yaml", "sheet: [\n");
        assertThat(faults(Sheets.read(folder, "sheet: a\ntitle: A\nbase: broken\nparts: {x: {prise: 1}}\n")))
                .satisfiesExactly(
                        own -> assertThat(own).startsWith("broken.yaml:2:1: "),
                        named -> assertThat(named).startsWith("sheet.yaml:3:7: base broken cannot be used"),
                        also -> assertThat(also).startsWith("sheet.yaml:4:13: prise is not a key of part x"));
    }

    @Test
    void a_misspelt_joint_part_or_unit_over_a_base_is_told_what_was_meant() {
        assertThat(faults(Sheets.read(
                        folder,
                        "sheet: a\ntitle: A\nbase: front-strut\nparts: {strutt: {price: 3.00}}\njoints:\n"
                                + "  link-to-strutt: {hex: 17 mm}\nunits: {complete-strutt: {price: 4.00}}\n")))
                .containsExactly(
                        "sheet.yaml:4:9: part strutt is in no joint; perhaps you meant strut",
                        "sheet.yaml:6:3: joint link-to-strutt changes nothing that is described; perhaps you meant"
                                + " link-to-strut",
                        "sheet.yaml:7:9: unit complete-strutt changes nothing that is described; perhaps you meant"
                                + " complete-strut");
    }

    @Test
    void what_a_sheet_removes_and_its_base_still_names_is_told_where_it_is_removed() {
        assertThat(faults(Sheets.read(
                        folder,
                        "sheet: a\ntitle: A\nbase: front-strut\nparts:\n  left.link: null\njoints:\n"
                                + "  lock-nut: null\nfollow-ups:\n  gearbox-oil: null\n")))
                .allMatch(fault -> fault.startsWith("sheet.yaml:"))
                .anySatisfy(fault -> assertThat(fault)
                        .startsWith("sheet.yaml:5:3: left.link is removed here, but link-to-strut still names it"
                                + " (putback/sheets/front-strut.yaml:"))
                .anySatisfy(fault ->
                        assertThat(fault).startsWith("sheet.yaml:7:3: lock-nut is removed here, but gaiter-outer-band"))
                .anySatisfy(fault -> assertThat(fault)
                        .startsWith("sheet.yaml:9:3: gearbox-oil is removed here, but shaft-in-gearbox"));
    }

    @Test
    void the_same_text_gives_the_same_assembly_in_the_same_order() {
        List<Assembly> twice = List.of(
                sound(Sheets.read(folder, Sheets.everything())), sound(Sheets.read(folder, Sheets.everything())));
        assertThat(twice.get(0)).isEqualTo(twice.get(1));
        assertThat(twice.get(0)).hasToString(twice.get(1).toString());
    }

    private Assembly over(String base, String overlay) {
        Sheets.write(folder, "sheet.yaml", base);
        return sound(SheetReader.read(Sheets.write(folder, "over.yaml", OVER + overlay)));
    }
}
