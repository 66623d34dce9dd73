package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.Cars;
import putback.store.database.SqliteDatabase;

@Tag("browser")
class NewCarPageTest {
    private static final int MOST_KEYS = 120;
    private static final List<String> TORQUES = List.of("27", "95", "64", "98", "31", "102", "58", "118", "52", "61");

    @TempDir
    private static Path folder;

    @RegisterExtension
    private static final Screens SCREENS = new Screens(() -> SqliteDatabase.open(folder.resolve("garage.db")));

    /** Presses keys, and counts those that are no value. */
    private static final class Hands {
        private final Page page;
        private int keys;

        Hands(Page page) {
            this.page = page;
        }

        void press(String key) {
            page.keyboard().press(key);
            keys++;
        }

        void type(String value) {
            page.keyboard().type(value);
        }

        /** Tab until the focus is on something; each counts. */
        void tabTo(String selector) {
            for (int i = 0; i < MOST_KEYS && !isOn(selector); i++) {
                press("Tab");
            }
            assertThat(isOn(selector)).as("the focus comes to " + selector).isTrue();
        }

        private boolean isOn(String selector) {
            return (Boolean) page.evaluate("s => document.activeElement.matches(s)", selector);
        }
    }

    @Test
    void fromANewCar_toAPlanWithTenTorques_takesFewKeysBesideTheValues() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "new-car");
            Hands hands = new Hands(page);
            hands.type("WH 12 34");
            hands.press("Tab");
            hands.type("Tamsel");
            hands.press("Tab");
            hands.type("Dory");
            for (String question : List.of("wheel", "strut-foot", "link")) {
                hands.tabTo("[name='q.0." + question + "']");
                hands.press("ArrowRight");
            }
            hands.tabTo("[name='renew.0'][value=complete-strut]");
            hands.press("Space");
            hands.tabTo("[name='renew.0'][value=complete-arm]");
            hands.press("Space");
            hands.tabTo("[name='renew.0'][value=disc]");
            hands.press("Space");
            hands.press("Enter");
            page.waitForURL("**/card?**");
            typeTorques(page, hands);
            hands.press("Control+Enter");
            page.waitForURL("**/plan?**");
            assertThat(page.textContent("main"))
                    .contains("Strut pinch bolt", "Wheel bolts", "95 N·m", "maker's manual");
            assertThat(hands.keys)
                    .as("keystrokes beside the values, from a new car to its plan: " + hands.keys)
                    .isLessThanOrEqualTo(MOST_KEYS);
        }
        String id = new Cars(SCREENS.books()).search("WH 12 34", 1).get(0).id();
        CarSheet sheet = new CarSheets(SCREENS.books()).current(id).orElseThrow();
        assertThat(sheet.number()).isEqualTo(2);
        assertThat(sheet.text().split("source: maker's manual", -1)).hasSize(TORQUES.size() + 1);
        assertThat(sheet.text()).contains("kind: bolt", "link-to-arm:", "Strut pinch bolt");
    }

    private static void typeTorques(Page page, Hands hands) {
        assertThat((String) page.evaluate("document.activeElement.name")).startsWith("torque.");
        boolean first = true;
        for (String torque : TORQUES) {
            hands.type(torque);
            if (first) {
                hands.press("Enter");
                hands.type("maker's manual");
                hands.press("Shift+Tab");
                first = false;
            }
            hands.press("ArrowDown");
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1280", "DARK,1280", "LIGHT,390", "DARK,390", "LIGHT,320"})
    void theForm_fits_andBreaksNoRuleOfAccess(ColorScheme scheme, int width) {
        try (BrowserContext context = SCREENS.context(width, scheme)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "new-car");
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(width);
            Screens.picture(page, "new-car-" + width + "-" + scheme, true);
        }
    }

    @Test
    void whatIsForgotten_isSaid_andNothingTypedIsLost() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "new-car");
            page.fill("[name=plate]", "WH 99");
            page.check("#sheet-1");
            page.check("[name='q.1.disc'][value=nothing]");
            page.click("main form button");
            assertThat(page.textContent(".refusal")).contains("Tick at least one part");
            assertThat(page.inputValue("[name=plate]")).isEqualTo("WH 99");
            assertThat(page.isChecked("[name='q.1.disc'][value=nothing]")).isTrue();
            page.check("[name='renew.1'][value=pads]");
            page.click("main form button");
            assertThat(page.textContent("h1")).contains("What is on this car?");
        }
    }
}
