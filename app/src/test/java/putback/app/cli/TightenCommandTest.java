package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TightenCommandTest {
    @Test
    void json_isOneObjectWithTheAgreedKeys() {
        Said said = Said.by("tighten", "--thread", "M12x1.25", "--class", "10.9", "--torque", "98 N·m", "--json");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .contains("\"stressAreaMm2\":92.07", "\"torqueNm\":98,", "\"plausible\":true", "\"looseningNm\":[")
                .contains("\"proofLoadKn\":", "\"clampKn\":", "\"proofUse\":", "\"torqueLbfFt\":72.28", "\"notes\":[")
                .matches("\\p{ASCII}*");
    }

    @Test
    void text_fitsEightyColumns() {
        Said said = Said.by("tighten", "--thread", "M8", "--class", "A2-70", "--use", "0.9", "--hex", "17 mm");
        assertThat(said.out()).contains("clamp load", "load at 0.2 %", "does not go with M8x1.25");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void aHexagonThatOnlyAPipeUnionHas_isDoubtedOnABolt_andOnWheelNuts(@TempDir Path folder) throws IOException {
        String[] words = {"tighten", "--thread", "M12x1.25", "--class", "10.9", "--torque", "98 N·m", "--hex", "13mm"};
        assertThat(Said.by(words).out().replaceAll("\\s+", " "))
                .contains("A hexagon of 13 mm does not go with M12x1.25; met on it: 18 mm, 15 mm");
        Path sheet = Files.writeString(folder.resolve("van.yaml"), """
                sheet: van
                title: A van
                base: front-strut
                joints:
                  wheel-nuts: {hex: 13 mm}
                """);
        assertThat(Said.by("check", sheet.toString()).err())
                .contains("doubtful: joint wheel-nuts: a hexagon of 13 mm does not go with M12x1.5");
    }

    @Test
    void aSettingWithAnAdapter_saysWhereToPull_andWithoutOneItDoesNot() {
        String[] with = {"setting", "--torque", "90 N·m", "--wrench", "400mm", "--adapter", "50mm"};
        assertThat(Said.by(with).out()).contains("Pull where the length of the wrench was measured to");
        assertThat(Said.by(with).out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(Said.by("setting", "--torque", "90 N·m").out()).doesNotContain("Pull where");
    }

    @Test
    void anAngleWithoutStiffness_addsSomethingUnknown() {
        String[] words = {"tighten", "--thread", "M12", "--class", "10.9", "--torque", "60 N·m", "--angle", "90 deg"};
        assertThat(Said.by(words).out()).contains("What the angle adds is not known");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--thread M13x1.3 --class 8.8 --torque 5Nm | M13 is not a size of ISO 261",
                "--thread M12 --class 7.7 --torque 5Nm | is not a property class",
                "--thread M12 --class 8.8 --torque 300K | K is not a unit of torque",
                "--thread M12 --class 8.8 --torque 50Nm --friction -0.1 | is not a coefficient of friction",
                "--thread M12 --class 8.8 --torque 50Nm --friction 0 | is not a coefficient of friction",
                "--thread M12 --class 8.8 --torque 0Nm | more than zero",
                "--thread M12 --class 8.8 --clamp -5kN | more than zero",
                "--thread M12 --class 8.8 | give one of",
                "--thread M12 --class 8.8 --use 0.9 --torque 5Nm | not several",
                "--thread M12 --class 8.8 --use 9 | is not a share",
                "--thread M12 --class 8.8 --use NaN | is not a share",
                "--thread 1/2-20 --class 8.8 --torque 50Nm | SAE grades are for inch threads",
                "--thread M12 --class 8.8 --torque 5Nm --prevailing 6Nm | has to be the larger",
                "--thread M12 --class 8.8 --torque 5Nm --bearing 0mm | no diameter under the head",
                "--class 8.8 --torque 5Nm | --thread is missing"
            })
    void nonsense_isRefusedInWords(String words, String because) {
        Said said = Said.by(("tighten " + words).split(" ", -1));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains(because);
        assertThat(said.out()).isEmpty();
    }

    @Test
    void setting_allowsForTheAdapter() {
        Said said = Said.by("setting", "--torque", "80 N·m", "--wrench", "400mm", "--adapter", "50mm", "--json");
        assertThat(said.out()).contains("\"settingNm\":71.11", "\"factor\":0.888", "\"settingLbfFt\":52.4");
        Said square =
                Said.by("setting", "--torque", "80 N·m", "--wrench", "400mm", "--adapter", "50mm", "--at", "90deg");
        assertThat(square.out()).contains("Set the wrench to 80 N·m");
        Said back = Said.by("setting", "--reading", "80 N·m", "--wrench", "400mm", "--adapter", "50mm");
        assertThat(back.out()).contains("was 90 N·m (66 lbf·ft) at the fastener");
    }

    @Test
    void setting_saysWhatAReadingMayBe() {
        Said said = Said.by("setting", "--torque", "100 N·m", "--deviation", "4");
        assertThat(said.out()).contains("A reading of 94 to 105 N·m");
        Said coarse = Said.by("setting", "--torque", "100 N·m", "--deviation", "15");
        assertThat(coarse.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(coarse.err()).contains("take a finer one");
    }

    @Test
    void anAdapterLongerThanTheWrench_pointingBack_isRefused() {
        Said said =
                Said.by("setting", "--torque", "90 N·m", "--wrench", "0.3 m", "--adapter", "2 m", "--at", "180 deg");
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains("points back to the hand or past it");
    }

    @Test
    void aSheetWithAnImpossibleTorque_isDoubted(@TempDir Path folder) throws IOException {
        Path sheet = folder.resolve("doubt.yaml");
        Files.writeString(sheet, """
                sheet: doubt
                title: One bolt
                parts: {cover: {}}
                joints:
                  bolt: {joins: [cover, body], kind: bolt, thread: M8, class: "8.8", hex: 24 mm, torque: 999999 N·m}
                """);
        Said checked = Said.by("check", sheet.toString());
        assertThat(checked.exit()).isEqualTo(Exit.DONE);
        assertThat(checked.err()).contains("doubtful: joint bolt", "more than it stands", "does not go with M8x1.25");
        assertThat(Said.by("plan", sheet.toString(), "--renew", "cover").out()).contains("more than it stands");
    }

    @Test
    void aHexagonOfNoCar_isDoubtedWhateverTheThread(@TempDir Path folder) throws IOException {
        Path sheet = folder.resolve("hex.yaml");
        Files.writeString(sheet, """
                sheet: hex
                title: One bolt
                parts: {cover: {}}
                joints:
                  bolt: {joins: [cover, body], kind: bolt, hex: 17000 mm}
                """);
        assertThat(Said.by("check", sheet.toString()).err()).contains("17000 mm is met on no car");
    }

    @ParameterizedTest
    @CsvSource({"front-strut", "twist-beam", "front-brake", "demo-van"})
    void theStockSheets_raiseNoDoubt(String sheet) {
        assertThat(Said.by("check", sheet).err()).isEmpty();
    }

    @Test
    void aTorqueAboveTheRule_isNotSaidToBeRight_andABoltThatYieldsSaysSoFirst() {
        Said said = Said.by("tighten", "--thread", "M10", "--class", "8.8", "--torque", "80Nm");
        assertThat(said.out())
                .contains(
                        "- The bolt yields",
                        "is above what it is given as a rule",
                        "not reckoned: the bolt yields first")
                .doesNotContain("can be right", "the clamp load may be");
    }

    @Test
    void aTorqueThatNobodyStated_isNotReadInAnotherUnit() {
        Said said = Said.by("tighten", "--thread", "M12x1.25", "--class", "10.9", "--clamp", "500 kN");
        assertThat(said.out()).doesNotContain("read as");
    }

    @Test
    void anAngle_isInTheLoosening_whereItCanBeReckoned_andTheFirstStageIsNotBlamed() {
        String[] words = {
            "tighten",
            "--thread",
            "M12x1.25",
            "--class",
            "10.9",
            "--torque",
            "10 N·m",
            "--angle",
            "180",
            "--stiffness",
            "100000 N/mm"
        };
        assertThat(Said.by(words).out()).contains("with the angle").doesNotContain("hardly clamps");
    }

    @Test
    void setting_neverLeavesItsOwnWindow() {
        assertThat(Said.by("setting", "--torque", "90 N·m", "--step", "50 N·m").err())
                .contains("no mark of 50 N·m", "take a finer wrench");
        assertThat(Said.by("setting", "--torque", "90 N·m", "--deviation", "4%", "--limit", "92 N·m")
                        .out()
                        .replaceAll("\\s+", " "))
                .startsWith("Set the wrench to 88.3 N·m")
                .contains("does not pass the limit");
    }

    @Test
    void reading_isHeldAgainstTheLimit() {
        String[] words = {
            "setting", "--reading", "80 N·m", "--wrench", "400mm", "--adapter", "50mm", "--limit", "85 N·m"
        };
        assertThat(Said.by(words).out())
                .contains("A reading of 80 N·m (59 lbf·ft) was 90 N·m", "above the limit of 85 N·m");
    }

    @Test
    void aCommaBeforeThreeDigits_isRefused_sinceNobodyCanTell() {
        Said said = Said.by("setting", "--torque", "90 N·m", "--wrench", "1,200 mm", "--adapter", "50mm");
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains("thousands without a comma");
        assertThat(Said.by("setting", "--torque", "0,125 kgf·m").exit()).isEqualTo(Exit.DONE);
    }
}
