package putback.store.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import putback.sheet.Assembly;
import putback.sheet.JointEntry;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

class AbsenceTest {
    private static Assembly stock(String sheet) {
        return ((Read.Sheet) SheetReader.stock(sheet)).assembly();
    }

    @TestFactory
    Stream<DynamicTest> anyOneFixingNotOnThisCar_leavesASheetThatIsReadOrSaysWhy() {
        return SheetReader.stockIds().stream().flatMap(sheet -> ids(sheet).stream()
                .map(id -> DynamicTest.dynamicTest(sheet + " without " + id, () -> check(sheet, id))));
    }

    private static Set<String> ids(String sheet) {
        Set<String> ids = new TreeSet<>();
        for (JointEntry joint : stock(sheet).sheet().joints()) {
            ids.add(joint.id());
        }
        return ids;
    }

    private static void check(String sheet, String id) {
        Overlay overlay = Absence.of(Overlay.on("car-1", "Car", List.of(sheet)), stock(sheet), id);
        Read read = SheetReader.text("car-1", overlay.write());
        if (read instanceof Read.Faulty faulty) {
            assertThat(faulty.faults())
                    .allSatisfy(fault -> assertThat(fault.message()).doesNotContain(id + " is removed here"));
        } else {
            assertThat(((Read.Sheet) read).assembly().joints())
                    .noneMatch(joint -> joint.entry().id().equals(id));
        }
    }

    @Test
    void aPartThatNothingElseHolds_goesWithIt() {
        Overlay overlay = Absence.of(
                Overlay.on("car-1", "Car", List.of("front-brake")), stock("front-brake"), "wheel-trim-clips");
        Read read = SheetReader.text("car-1", overlay.write());
        assertThat(read).as(overlay.write()).isInstanceOf(Read.Sheet.class);
        assertThat(((Read.Sheet) read).assembly().parts())
                .noneMatch(part -> part.entry().id().equals("wheel-trim"));
    }

    @Test
    void onOneSideOnly_theOtherKeepsIt() {
        Overlay overlay = Absence.of(
                Overlay.on("car-1", "Car", List.of("front-strut")), stock("front-strut"), "left.centre-cap-clips");
        assertThat(overlay.absent("joints")).containsExactly("left.centre-cap-clips");
    }

    @Test
    void aKeptSheet_isFoundAsABase_andWrittenInWhenHandedOn() {
        Overlay model = Overlay.on("dory", "Dory", List.of("front-strut"))
                .with("joints", "wheel-nuts", "hex", putback.store.sheets.Piece.Text.of("17 mm"));
        Overlay car = Overlay.on("car-1", "Car", List.of("dory"));
        assertThat(SheetReader.text("car-1", car.write())).isInstanceOf(Read.Faulty.class);
        assertThat(SheetReader.text("car-1", car.write(), id -> id.equals("dory") ? model.write() : null))
                .isInstanceOf(Read.Sheet.class);
        Overlay handed = Handing.over(car, id -> model.write());
        assertThat(handed.bases()).containsExactly("front-strut");
        Read.Sheet read = (Read.Sheet) SheetReader.text("handed", handed.write());
        assertThat(read.assembly().joints().stream()
                        .filter(joint -> joint.id().equals("left.wheel-nuts"))
                        .map(joint -> joint.fastener().hex().millimetres()))
                .containsExactly(17.0);
    }

    @Test
    void aKeptSheetBuiltOnItself_isRefused() {
        String text = "sheet: dory\ntitle: Dory\nbase: dory\n";
        assertThat(SheetReader.text("dory", text, id -> text))
                .isInstanceOfSatisfying(Read.Faulty.class, faulty -> assertThat(faulty.toString())
                        .contains("is built on itself"));
    }

    @Test
    void anId_isMadeOfAName_andNeverTwice() {
        assertThat(NewId.of("Hintere Stütze, links", "fixing", List.of())).isEqualTo("hintere-stutze-links");
        assertThat(NewId.of("車", "fixing", List.of("fixing"))).isEqualTo("fixing-2");
    }
}
