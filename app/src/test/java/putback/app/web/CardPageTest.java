package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.CarSheets;
import putback.store.books.Cars;
import putback.store.books.Saved;
import putback.store.database.SqliteDatabase;
import putback.store.overlay.Overlay;

@Tag("browser")
class CardPageTest {
    private static final String TORQUE = "[name='torque.strut-to-hub']";

    @TempDir
    private static Path folder;

    @RegisterExtension
    private static final Screens SCREENS = new Screens(() -> SqliteDatabase.open(folder.resolve("garage.db")));

    private static String car(String plate) {
        Books books = SCREENS.books();
        return books.write(change -> {
            Car car = new Car("", "", plate, "", "Tamsel", "Dory", "2014", "km", "", "", 0);
            String id = ((Saved.Done<Car>) new Cars(books).save(change, car))
                    .value()
                    .id();
            String text = Overlay.on("car-" + id, plate, List.of("front-strut")).write();
            new CarSheets(books).add(change, id, 0, text, "Mara", "answers about a new car");
            return id;
        });
    }

    private static String sheet(String car) {
        return new CarSheets(SCREENS.books()).current(car).orElseThrow().text();
    }

    private static String address(String car) {
        return SCREENS.address() + "car/" + car + "/card?renew=complete-strut&side=both";
    }

    @Test
    void aTorque_isJudgedWhileItIsTyped_inBothUnits() {
        String car = car("WH 1");
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(address(car));
            page.fill(TORQUE, "98");
            page.waitForSelector("tr:has(" + TORQUE + ") .beside:has-text('72 lbf·ft')");
            page.fill(TORQUE, "1200");
            page.waitForSelector("tr:has(" + TORQUE + ") .doubt");
            assertThat(page.textContent("tr:has(" + TORQUE + ") .beside")).contains("more than it stands");
            Screens.picture(page, "card-doubt-1280", true);
        }
    }

    @Test
    void whatIsKept_isThere_unknownStaysVisible_andAnEmptySourceIsTheOneAbove() {
        String car = car("WH 2");
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(address(car));
            page.fill("[name='torque.wheel-nuts']", "?");
            page.fill("[name='torque.hose-bracket']", "24");
            page.fill("[name='source.hose-bracket']", "owner's handbook");
            page.fill(TORQUE, "90+60");
            page.fill("[name='hold.strut-to-hub']", "k6");
            page.uncheck("[name='once.strut-to-hub']");
            page.click("button[value=card]");
            assertThat(page.getAttribute("[name='torque.wheel-nuts']", "placeholder"))
                    .isEqualTo("not known");
            assertThat(page.inputValue(TORQUE)).isEqualTo("90 N·m + 60 deg");
            assertThat(page.inputValue("[name='hold.strut-to-hub']")).isEqualTo("6 mm key");
            assertThat(page.inputValue("[name='source.strut-to-hub']")).isEqualTo("owner's handbook");
            assertThat(page.isChecked("[name='once.strut-to-hub']")).isFalse();
            assertThat(sheet(car)).contains("torque: null", "torque: {torque: 90 N·m, angle: 60 deg}", "once: false");
        }
    }

    @Test
    void whatCannotBe_isSaidAtItsField_andNothingTypedIsLost() {
        String car = car("WH 3");
        try (BrowserContext context = SCREENS.context(390, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(address(car));
            page.fill(TORQUE, "12 mm");
            page.fill("[name='hex.wheel-nuts']", "17");
            page.click("button[value=card]:visible");
            page.waitForSelector(".wrong");
            assertThat(page.textContent(".wrong")).contains("\"12 mm\" is a length, not a torque");
            assertThat(page.getAttribute(TORQUE, "aria-invalid")).isEqualTo("true");
            assertThat(page.inputValue(TORQUE)).isEqualTo("12 mm");
            assertThat(page.inputValue("[name='hex.wheel-nuts']")).isEqualTo("17");
            assertThat(sheet(car)).doesNotContain("17 mm");
            Screens.picture(page, "card-fault-390", true);
        }
    }

    @Test
    void whoComesSecond_isToldSo_andBothFiguresCanBeKept() {
        String car = car("WH 4");
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page first = context.newPage();
            Page second = context.newPage();
            first.navigate(address(car));
            second.navigate(address(car));
            first.fill("[name='hex.strut-to-hub']", "21");
            first.click("button[value=card]");
            second.fill(TORQUE, "97");
            second.click("button[value=card]");
            assertThat(second.textContent(".refusal")).contains("kept number 2 of this car’s sheet meanwhile");
            assertThat(second.inputValue(TORQUE)).isEqualTo("97");
            assertThat(second.inputValue("[name='hex.strut-to-hub']")).isEqualTo("21 mm");
            second.click("button[value=card]");
            assertThat(sheet(car)).contains("hex: 21 mm", "torque: 97 N·m");
            assertThat(new CarSheets(SCREENS.books()).history(car)).hasSize(3);
        }
    }

    @Test
    void leftAndRight_mayDiffer_andBeAlikeAgain() {
        String car = car("WH 5");
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(address(car));
            page.click("tr:has(" + TORQUE + ") summary");
            page.click("button[name=tell-apart][value=strut-to-hub]");
            page.fill("[name='torque.left.strut-to-hub']", "92");
            page.click("button[value=card]");
            assertThat(sheet(car)).contains("left.strut-to-hub:\n    torque: 92 N·m");
            assertThat(page.inputValue("[name='torque.left.strut-to-hub']")).isEqualTo("92 N·m");
            page.click("tr:has([name='torque.left.strut-to-hub']) summary");
            page.click("button[name=same][value='left.strut-to-hub']");
            assertThat(sheet(car)).doesNotContain("left.");
            assertThat(page.isVisible(TORQUE)).isTrue();
        }
    }

    @Test
    void aFixingCanBeMissing_orAnotherBeThere() {
        String car = car("WH 6");
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(address(car));
            page.click("tr:has([name='torque.hose-bracket']) summary");
            page.click("button[name=absent][value=hose-bracket]");
            assertThat(page.isVisible("[name='torque.hose-bracket']")).isFalse();
            assertThat(page.textContent("main")).contains("Not on this car: hose bracket");
            page.click(".another summary");
            page.fill("[name='new-name']", "Height-sensor bolt: \"front\"");
            page.selectOption("[name='new-from']", "strut");
            page.selectOption("[name='new-to']", "carrier");
            page.click("[name=another]");
            assertThat(page.isVisible("[name='torque.height-sensor-bolt-front']"))
                    .isTrue();
            page.click("tr:has-text('Cap over the top mount') summary");
            page.click("button[name=absent][value=mount-cap-clip]");
            assertThat(sheet(car)).contains("mount-cap: null");
            page.click(".another summary");
            page.click("[name=another]");
            assertThat(page.textContent(".warnings")).contains("Give the other fixing a name.");
        }
    }

    @Test
    void whatIsRenewed_cannotBeMissing() {
        String car = car("WH 11");
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "car/" + car + "/card?renew=mount-cap&side=left");
            page.click("tr:has-text('Cap over the top mount') summary");
            page.click("button[name=absent][value=mount-cap-clip]");
            assertThat(page.textContent(".refusal")).contains("Nothing is kept yet");
            assertThat(sheet(car)).doesNotContain("mount-cap");
        }
    }

    @Test
    void aSheet_isKeptForItsModel_handedOn_andCheckedWhenTaken() {
        String car = car("WH 7");
        String other = car("WH 8");
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(address(car));
            page.fill(TORQUE, "93");
            page.click("button[value=card]");
            APIResponse file = page.request().get(SCREENS.address() + "car/" + car + "/sheet.yaml");
            assertThat(file.text()).startsWith("sheet: tamsel-dory\n").contains("93 N·m");
            page.click("summary:has-text('all cars of this model')");
            page.fill("[name=title]", "Tamsel Dory from 2014");
            page.click("text=Keep it for the model");
            assertThat(page.textContent("h1")).isEqualTo("Tamsel Dory from 2014");
            page.navigate(SCREENS.address() + "new-car");
            assertThat(page.textContent(".nearest")).contains("Tamsel Dory from 2014, kept by this garage");
            page.navigate(address(other));
            take(page, "their.yaml", file.text());
            assertThat(page.inputValue(TORQUE)).isEqualTo("93 N·m");
            take(page, "bad.yaml", "sheet: x\ntitle: X\nbase: front-strut\njoints:\n  rod-nut: {torqe: 5 N.m}\n");
            assertThat(page.textContent("main"))
                    .contains("bad.yaml:5:13: torqe is not a key of joint rod-nut; maybe torque");
            page.navigate(address(other));
            page.click("summary:has-text('As it was before')");
            page.click("button[name=number][value='1']");
            assertThat(page.inputValue(TORQUE)).isEmpty();
        }
    }

    private static void take(Page page, String name, String text) {
        page.click("summary:has-text('from a file')");
        page.setInputFiles(
                "[name=file]", new FilePayload(name, "application/yaml", text.getBytes(StandardCharsets.UTF_8)));
        page.click("text=Check it and take it");
    }

    @Test
    void theCard_isAPaperToo() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            String card = address(car("WH 9")).replace("/card?", "/card.pdf?");
            assertThat(new String(page.request().get(card).body(), StandardCharsets.ISO_8859_1))
                    .startsWith("%PDF-");
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1280", "DARK,1280", "LIGHT,390", "DARK,390", "LIGHT,320"})
    void theCard_fits_andBreaksNoRuleOfAccess(ColorScheme scheme, int width) {
        String car = car("WH 10 " + scheme + width);
        try (BrowserContext context = SCREENS.context(width, scheme)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "car/" + car + "/card");
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            page.navigate(address(car));
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(width);
            Screens.picture(page, "card-" + width + "-" + scheme, true);
        }
    }
}
