package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static putback.store.sheets.Sheets.faults;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaultTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "price: -1|4:18|price of part wheel: \"-1\" is not possible; it may be from 0 to 10000000",
                "price: abc|4:18|price of part wheel: \"abc\" is not a plain number",
                "price: 1.23456|4:18|finer than money is",
                "minutes: -0.1|4:20|a time cannot be negative",
                "minutes: 5 mm|4:20|\"5 mm\" is a length, not a time",
                "minutes: 1e999|4:20|\"1e999\" has an exponent; write the number out",
                "minutes: .inf|4:20|\".inf\" is not a time",
                "minutes: 999999999|4:20|999999999 minutes are more than any step takes",
                "shared: yes|4:19|\"yes\" is neither true nor false; write true or false, without quotes",
                "shared: \"true\"|4:19|without quotes",
                "shared: [true]|4:11|this is a list; write a single value",
                "name: {a: b}|4:11|this is a map; write a single value",
                "name: ''|4:17|there is nothing here; write a text",
                "name: \"a\\u0007b\"|4:17|control characters",
                "nam: x|4:11|nam is not a key of part wheel; maybe name",
                "sold: pair|4:17|write one of: each, axle set",
                "stored-energy: sprung|4:26|\"sprung\" is not known here; write spring",
                "tether: hose|4:19|write a map with kind, free, plunge",
                "tether: {free: 3 mm}|4:11|tether of part wheel has no kind, which it needs",
                "tether: {kind: hose, free: 0 mm}|4:38|it has to be more than 0",
                "life: {median: 5 kg, shape: 3}|4:26|\"5 kg\" is a mass, not a distance",
                "life: {median: 5 km, shape: 0}|4:39|it has to be more than 0",
                "life: {median: 5 km}|4:11|life of part wheel has no shape, which it needs",
                "aside: {open: [nut]}|4:26|no joint is called nut; maybe nuts",
                "companions: [hubb]|4:24|no part is called hubb; maybe hub",
                "companions: body|4:23|body is the car itself: it may be joined and may be named in nothing else"
            })
    void in_a_part(String keys, String at, String said) {
        told(Sheets.SMALL.replace("wheel: {}", "wheel: {" + keys + "}"), at, said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "count: 0|7:49|it may be from 1 to 100",
                "count: 2.5|7:49|2.5 is not a whole number",
                "thread: 12x1.25|7:50|is not a thread; write it like M12x1.25, M12 or 1/2-20",
                "thread: M1.25x12|7:50|its diameter comes first",
                "class: 11.9|7:49|\"11.9\" is not a strength class",
                "hex: 18|7:47|\"18\" has no unit",
                "hex: 0 mm|7:47|it has to be more than 0",
                "hold: {}|7:42|write either {hex: 18 mm} or {key: 6 mm}",
                "hold: {hex: 1 mm, key: 2 mm}|7:42|write either {hex: 18 mm} or {key: 6 mm}",
                "torque: 12 mm|7:50|\"12 mm\" is a length, not a torque",
                "torque: 0 N·m|7:50|a torque is more than 0; leave it out where it is not known, or write snug",
                "torque: -5 N·m|7:50|a torque is more than 0",
                "torque: [5 N·m]|7:42|this is a list; write a single value",
                "torque: {angle: 90 deg}|7:42|torque of joint nuts has no torque, which it needs",
                "torque: {torque: 5 N·m, angle: 0 deg}|7:73|an angle of tightening is more than 0",
                "torque: {torque: 5 N·m, angl: 9 deg}|7:66|angl is not a key of torque of joint nuts; maybe angle",
                "window: [1 N·m, 2 N·m]|7:42|a window belongs to a torque, and none is given",
                "torque: 5 N·m, window: [6 N·m, 7 N·m]|7:57|the torque 5 N·m (3.7 lbf·ft) is outside it",
                "torque: 5 N·m, window: [7 N·m, 3 N·m]|7:57|the low end comes first; swap the two",
                "torque: 5 N·m, window: [7 N·m]|7:57|write its low and its high end",
                "torque: 5 N·m, window: [3 N·m, 7]|7:73|\"7\" has no unit",
                "condition: wet|7:53|write one of: dry, oiled, locker",
                "tighten: any|7:51|write one of: raised, ride height, on wheels",
                "break-loose: raised|7:55|write one of: on wheels",
                "loosen-before: nuts|7:57|a joint cannot wait for itself; name another joint here",
                "loosen-before: bolt|7:57|no joint is called bolt; maybe bolts",
                "tighten-after: angels|7:57|no follow-up is called angels; describe it under follow-ups",
                "turn: left|7:48|\"left\" is not known here",
                "behind: [[]]|7:51|an empty list can never be met",
                "behind: [hub, [wheel, cup]]|7:64|no part is called cup",
                "behind: {a: b}|7:42|this is a map; write a single value here",
                "behind: [{a: b}, cup]|7:51|this is a map; write a single value here",
                "behind: [{a: b}, cup]|7:59|no part is called cup",
                "reach-on-wheels: cup|7:59|no part is called cup",
                "after: nuts|7:49|a joint cannot wait for itself; name another joint here",
                "after: other.bolts|7:49|there is no other side here, the sheet has no sides; write bolts",
                "lets-go: [hub]|7:52|write a map such as {part: carrier, aid: strap}",
                "lets-go: [{part: hub}]|7:52|lets-go has no aid, which it needs",
                "lets-go: [{part: hub, aid: strap, then: let down}]|7:82|only a jack lets a part down",
                "lets-go: [{part: hup, aid: strap}]|7:59|no part is called hup; maybe hub",
                "with-new: {hup: {hex: 1 mm}}|7:53|no part is called hup; maybe hub",
                "with-new: {hub: 5}|7:58|with-new hub of joint nuts is a single value; write a map",
                "with-new: {hub: {hex: 5}}|7:64|\"5\" has no unit",
                "with-new: {hub: {kind: bolt}}|7:59|kind is not a key of with-new hub of joint nuts",
                "brings: angels|7:50|no follow-up is called angels; describe it under follow-ups",
                "station: under|7:51|write one of: wheel well, engine bay, underneath, cabin, boot, bench",
                "height: ride height|7:50|write one of: raised, on wheels, any",
                "minutes: 5|7:51|write a map with open, close, spread",
                "minutes: {open: -1}|7:58|a time cannot be negative",
                "minutes: {spread: 4}|7:60|it may be from 0 to 3",
                "exposure: 1.5|7:52|it may be from 0 to 1",
                "spoils: body|7:50|body is the car itself",
                "torque:|7:42|torque has nothing after it; leave the key out, or say what it is"
            })
    void in_a_joint(String keys, String at, String said) {
        told(Sheets.SMALL.replace("kind: nut}", "kind: nut, " + keys + "}"), at, said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "sides: maybe|9:8|sides: \"maybe\" is not known here; write one of: none, both",
                "lift: {point: x}|9:8|point is not a key of lift; maybe points",
                "lift: sill|9:7|lift: this is a single value; write a map with points, note",
                "units: {set: {}}|9:9|unit set has no parts, which it needs",
                "units: {set: {parts: []}}|9:15|a unit without parts cannot be renewed",
                "units: {set: {parts: [hup]}}|9:23|no part is called hup; maybe hub",
                "units: {hub: {parts: [wheel]}}|9:9|hub is the id of a part too; a unit needs an id of its own",
                "units: [set]|9:1|units: this is a list; write a map of ids",
                "follow-ups: {Angles: {}}|9:14|\"Angles\" cannot be an id",
                "follow-ups: {a: {follows: [b]}, b: {follows: [a]}}|9:18|wait for each other in a circle: a, b; one has to come first",
                "follow-ups: {a: {minutes: -3}}|9:27|a time cannot be negative",
                "follow-ups: {a: 5}|9:17|a is a single value; write a map such as {minutes: 35}",
                "resorts: {heat: {minutes: 5}}|9:11|resort heat has no chance, which it needs",
                "resorts: {heat: {minutes: 5, chance: 2}}|9:38|it may be from 0 to 1",
                "times: {spread: x}|9:17|\"x\" is not a plain number",
                "setups: {height: -1}|9:18|a time cannot be negative",
                "tiems: {}|9:1|tiems is not a key of the sheet; maybe times",
                "<<: {a: b}|9:1|<< is not a key of the sheet",
                "lift: !!map {}|9:7|tags such as tag:yaml.org,2002:map are not used in a sheet; remove it",
                "[a]: b|9:1|a key is a single word; this is a list",
                "title: Again|9:1|title is written twice; it stands first at line 2, column 1: keep one of them"
            })
    void at_the_top(String line, String at, String said) {
        told(Sheets.SMALL + line + "\n", at, said);
    }

    @Test
    void what_is_required_is_missed_by_name() {
        assertThat(faults(Sheets.read(folder, "parts: {a: {}}\n")))
                .containsExactly(
                        "sheet.yaml:1:1: the sheet has no id; write one at the top, such as sheet: front-strut",
                        "sheet.yaml:1:1: the sheet has no joints, which it needs",
                        "sheet.yaml:1:1: the sheet has no title, which it needs");
        assertThat(faults(Sheets.read(
                        folder, Sheets.SMALL.replace(", kind: nut", "").replace("joins: [hub, body], ", ""))))
                .containsExactly(
                        "sheet.yaml:7:3: joint nuts has no kind, which it needs",
                        "sheet.yaml:8:3: joint bolts has no joins, which it needs");
    }

    @Test
    void a_joint_of_one_part_or_of_the_same_twice_joins_nothing() {
        told(Sheets.SMALL.replace("[wheel, hub]", "[hub]"), "7:10", "a joint holds two or more parts together");
        told(Sheets.SMALL.replace("[wheel, hub]", "[hub, hub]"), "7:23", "hub is joined twice; name each part once");
    }

    @Test
    void ids_are_lower_case_with_hyphens() {
        for (String id : new String[] {
            "Hub", "hub_nut", "hub nut", "-hub", "hub-", "hüb", "left.left.hub", "other.hub", "x".repeat(65)
        }) {
            told(
                    Sheets.SMALL.replace("wheel: {}", "wheel: {}\n  " + id + ": {}"),
                    "5:3",
                    "cannot be an id; use lower case");
        }
    }

    @Test
    void nothing_is_said_of_the_body() {
        told(
                Sheets.SMALL.replace("wheel: {}", "body: {price: 3}\n  wheel: {}"),
                "4:3",
                "body is the car itself and always there");
    }

    @Test
    void all_faults_come_in_one_go_sorted_by_place() {
        assertThat(faults(Sheets.read(
                        folder,
                        Sheets.SMALL
                                .replace("hub: {}", "hub: {price: x, prise: 3}")
                                .replace("[hub, body]", "[hup, body]")
                                .replace("kind: nut", "kind: nutt"))))
                .satisfiesExactly(
                        one -> assertThat(one).startsWith("sheet.yaml:5:16: price of part hub"),
                        two -> assertThat(two).startsWith("sheet.yaml:5:19: prise is not a key"),
                        three -> assertThat(three).startsWith("sheet.yaml:7:37: kind of joint nuts"),
                        four -> assertThat(four).startsWith("sheet.yaml:8:19: no part is called hup; maybe hub"));
    }

    @Test
    void a_joint_wanted_on_wheels_behind_its_own_wheel_is_a_fault() {
        String wheels = Sheets.SMALL.replace("kind: nut", "kind: nut, tighten: on wheels");
        told(
                wheels.replace("kind: bolt", "kind: bolt, behind: wheel, tighten: on wheels"),
                "8:51",
                "the joint is wanted on wheels (tighten: on wheels) but is behind its own wheel; say in reach-on-wheels");
        told(
                wheels.replace("kind: bolt", "kind: bolt, behind: wheel, break-loose: on wheels"),
                "8:51",
                "break-loose: on wheels");
        told(
                wheels.replace("kind: bolt", "kind: bolt, tighten: on wheels, reach-on-wheels: [wheel]"),
                "8:63",
                "behind its own wheel");
    }

    @Test
    void a_joint_that_is_reached_on_wheels_is_sound() {
        String wheels = Sheets.SMALL
                .replace("kind: nut", "kind: nut, tighten: on wheels")
                .replace("hub: {}", "hub: {}\n  cap: {}\n  steering-wheel: {}");
        for (String keys : new String[] {
            "behind: wheel, tighten: on wheels, reach-on-wheels: [cap]",
            "behind: wheel, tighten: on wheels, reach-on-wheels: []",
            "behind: [[wheel, cap]], tighten: on wheels",
            "behind: wheel, tighten: ride height",
            "behind: steering-wheel, tighten: on wheels"
        }) {
            assertThat(Sheets.read(folder, wheels.replace("kind: bolt", "kind: bolt, " + keys)))
                    .as(keys)
                    .isInstanceOf(Read.Sheet.class);
        }
    }

    @Test
    void the_other_side_has_to_have_what_is_named_there() {
        told(
                Sheets.SIDED
                        .replace("kind: bolt", "kind: bolt, after: other.nuts")
                        .replace("joints:", "joints:\n  left.nuts: null"),
                "10:50",
                "joint nuts does not exist on the left");
    }

    @Test
    void a_fault_is_one_harmless_line_whatever_stands_in_the_file() {
        Read read = Sheets.read(
                folder,
                Sheets.SMALL
                        .replace("wheel: {}", "\"we\\u001b[2J\\nel\": {}")
                        .replace("kind: bolt", "kind: \"b\\n\\u202eolt" + "x".repeat(3000) + "\""));
        assertThat(((Read.Faulty) read).faults()).isNotEmpty().allSatisfy(fault -> assertThat(fault.toString())
                .doesNotContain("\n", "\u001b", "\u202e")
                .hasSizeLessThan(600));
    }

    /** That one of the faults is at that place and says so, and that nothing else is found at another line. */
    private void told(String yaml, String at, String said) {
        assertThat(faults(Sheets.read(folder, yaml)))
                .as(yaml)
                .anySatisfy(fault ->
                        assertThat(fault).startsWith("sheet.yaml:" + at + ": ").contains(said))
                .allSatisfy(
                        fault -> assertThat(fault).startsWith("sheet.yaml:" + at.substring(0, at.indexOf(':')) + ":"));
    }
}
