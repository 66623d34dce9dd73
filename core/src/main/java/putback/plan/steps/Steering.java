package putback.plan.steps;

import java.util.List;
import java.util.Locale;
import putback.sheet.Assembly;
import putback.sheet.Part;

/** Whether the wheels that a sheet is about steer: by its steering parts, else by what it calls itself. */
enum Steering {
    STEERED("with the wheels at both locks, at full droop and loaded"),
    NOT_STEERED("with the wheels at full droop and loaded"),
    NOT_SAID("with the wheels at full droop and loaded, and at both locks where they steer");

    private static final List<String> STEERS =
            List.of("track-rod", "tie-rod", "steering", "rack", "drag-link", "inner-rod");
    private static final List<String> NEVER_STEERS = List.of("beam", "trailing-arm");

    /** What is said of the drive says nothing of the axle. */
    private static final List<String> DRIVEN =
            List.of(" front-drive", " rear-drive", " front-wheel", " rear-wheel", " front wheel", " rear wheel");

    private final String swung;

    Steering(String swung) {
        this.swung = swung;
    }

    /** How the wheels are moved to see whether a line is free. */
    String swung() {
        return swung;
    }

    static Steering of(Assembly assembly) {
        if (names(assembly, STEERS)) {
            return STEERED;
        }
        String called = " "
                + (assembly.sheet().title() + " " + assembly.sheet().id().replace('-', ' ')).toLowerCase(Locale.ROOT);
        for (String driven : DRIVEN) {
            called = called.replace(driven, "");
        }
        int front = called.indexOf(" front");
        int rear = called.indexOf(" rear");
        if (rear >= 0 && (front < 0 || rear < front) || names(assembly, NEVER_STEERS)) {
            return NOT_STEERED;
        }
        return front >= 0 ? STEERED : NOT_SAID;
    }

    private static boolean names(Assembly assembly, List<String> words) {
        for (Part part : assembly.parts()) {
            for (String word : words) {
                String id = part.entry().id();
                if (Words.endsWith(id, word) || id.startsWith(word) && id.charAt(word.length()) == '-') {
                    return true;
                }
            }
        }
        return false;
    }
}
