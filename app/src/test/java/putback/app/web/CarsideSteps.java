package putback.app.web;

import com.microsoft.playwright.Page;

/** What a hand does at the car: ticks, presses, waits. */
final class CarsideSteps {
    private CarsideSteps() {}

    /** Ticks what stops, then presses the large button; a second look is made by somebody else. */
    static void doStep(Page page) {
        String before = page.getAttribute("#main article", "data-n");
        for (var box : page.querySelectorAll("#main article input[type=checkbox]")) {
            box.check();
        }
        String label = page.textContent("#main article .main-go");
        page.click("#main article .main-go");
        if (label.startsWith("Another person")) {
            page.fill("input[name=who]", "Teo");
            page.click("section .main-go");
        }
        page.waitForFunction(
                "n => document.querySelector('#main article')?.dataset.n !== n && !document.querySelector('input[name=who]')",
                before);
    }

    static boolean isAtTheEnd(Page page) {
        return page.querySelector("#main article") == null;
    }

    static void waitUntilSent(Page page) {
        page.waitForFunction("() => document.getElementById('net').dataset.unsent === '0'");
    }
}
