package putback.plan.steps;

import java.util.List;
import putback.quantity.Torque;
import putback.sheet.Fastener;
import putback.sheet.Tightening;

/** In how many passes a fixing is tightened. */
final class Stages {
    private static final int CROSSWISE = 4;
    private static final int IN_TURNS = 3;

    private Stages() {}

    static List<String> of(Fastener fastener) {
        Tightening asked = fastener.tightening();
        String pattern = fastener.count() >= CROSSWISE ? " crosswise" : fastener.count() == IN_TURNS ? " in turns" : "";
        if (asked instanceof Tightening.Snug) {
            return List.of();
        }
        if (asked instanceof Tightening.TorqueThenAngle both) {
            String torque = both.torque().text() + pattern;
            String angle = both.angle().text() + " further" + pattern;
            return List.of(torque, angle);
        }
        if (pattern.isEmpty()) {
            return List.of();
        }
        String half = "";
        String full = "";
        if (asked instanceof Tightening.ToTorque one) {
            half = ": " + new Torque(one.torque().newtonMetres() / 2).text();
            full = ": " + one.torque().text();
        }
        return List.of("half the torque" + pattern + half, "full torque" + pattern + full, "once more round");
    }
}
