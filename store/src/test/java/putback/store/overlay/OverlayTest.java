package putback.store.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.store.sheets.Piece;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

class OverlayTest {
    private static Overlay read(String yaml) {
        OverlayRead read = Overlay.read("test", yaml);
        assertThat(read).isInstanceOf(OverlayRead.Sound.class);
        return ((OverlayRead.Sound) read).overlay();
    }

    private static Assembly assembly(Overlay overlay) {
        Read read = SheetReader.text("test", overlay.write());
        assertThat(read).as(overlay.write()).isInstanceOf(Read.Sheet.class);
        return ((Read.Sheet) read).assembly();
    }

    private static Joint joint(Overlay overlay, String id) {
        return assembly(overlay).joints().stream()
                .filter(joint -> joint.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatItDoesNotKnow_isKept() {
        String text = """
                sheet: "grey-van"
                title: The grey van
                base: front-strut
                our-own: {a: [1, {b: c}]}
                joints:
                  left.strut-to-hub: {torque: 98 N.m, paint: "yellow: and #2"}
                """;
        assertThat(read(text)
                        .with("joints", "wheel-nuts", "hex", Piece.Text.of("17 mm"))
                        .write())
                .isEqualTo("""
                        sheet: grey-van
                        title: The grey van
                        base: front-strut
                        joints:
                          left.strut-to-hub:
                            torque: 98 N.m
                            paint: "yellow: and #2"
                          wheel-nuts:
                            hex: 17 mm
                        our-own: {a: [1, {b: c}]}
                        """);
    }

    @Test
    void namesThatYamlWouldBend_comeBackAsTyped() {
        for (String name : List.of(
                "a: b",
                "#1",
                "it's",
                "say \"so\"",
                "ends with :",
                "- dash",
                "ябло́ко",
                "車",
                "no",
                "null",
                "true",
                "007",
                "{x}",
                "a, b",
                "*x",
                "&x",
                "!x",
                "%x",
                "@x",
                "`x`",
                "~",
                "back\\slash",
                "?",
                "| pipe",
                "> fold",
                "😀")) {
            Overlay overlay = Overlay.on("car-1", name, List.of("front-strut"));
            assertThat(read(overlay.write()).title()).isEqualTo(name);
            assertThat(assembly(overlay).sheet().title()).isEqualTo(name);
        }
    }

    @Test
    void aNameOverTwoLines_isReadAsOneLine() {
        Overlay overlay = Overlay.on("car-1", "two\nlines", List.of("front-strut"));
        assertThat(read(overlay.write())).isEqualTo(overlay);
        assertThat(assembly(overlay).sheet().title()).isEqualTo("two lines");
    }

    @Test
    void figuresOfTheCard_reachTheJointOnTheirSide() {
        Overlay overlay = Overlay.on("car-1", "Car", List.of("front-strut"))
                .with("joints", "left.strut-to-hub", "torque", Piece.Text.of("98 N·m"))
                .with("joints", "left.strut-to-hub", "source", Piece.Text.of("maker's manual"));
        assertThat(joint(overlay, "left.strut-to-hub").fastener().source()).isEqualTo("maker's manual");
        assertThat(joint(overlay, "right.strut-to-hub").fastener().source()).startsWith("example");
    }

    @Test
    void aLaterTorque_doesNotInheritTheSourceOfTheOne() {
        Overlay first = Overlay.on("car-1", "Car", List.of("front-strut"))
                .with("joints", "strut-to-hub", "torque", Piece.Text.of("98 N·m"))
                .with("joints", "strut-to-hub", "source", Piece.Text.of("maker's manual"));
        Overlay over =
                Overlay.on("x", "x", List.of()).with("joints", "strut-to-hub", "torque", Piece.Text.of("95 N·m"));
        assertThat(first.laid(over.top()).joint("strut-to-hub").get("source")).isNull();
    }

    @Test
    void bare_keepsTheLayout_andDropsTheFigures() {
        Overlay overlay = read("""
                sheet: x
                joints:
                  a: {torque: 9 N.m, name: Other}
                  b: {hex: 9 mm}
                  c: null
                  d: {joins: [wheel, hub], kind: bolt, torque: 5 N.m}
                """);
        assertThat(overlay.bare().write()).isEqualTo("""
                sheet: x
                joints:
                  a:
                    name: Other
                  c: null
                  d:
                    joins: [wheel, hub]
                    kind: bolt
                    torque: 5 N.m
                """);
        assertThat(overlay.absent("joints")).containsExactly("c");
        assertThat(overlay.added()).containsExactly("d");
    }

    @Test
    void whatIsNoYaml_isRefusedWithItsPlace() {
        assertThat(Overlay.read("upload.yaml", "sheet: x\n\tbad"))
                .isInstanceOfSatisfying(
                        OverlayRead.Faulty.class,
                        faulty -> assertThat(faulty.faults().get(0).toString()).startsWith("upload.yaml:2:1: a tab"));
    }
}
