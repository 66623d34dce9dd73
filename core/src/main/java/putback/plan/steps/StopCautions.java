package putback.plan.steps;

import java.util.List;

/**
 * Which cautions are of the kind after which nobody gets a second try: a car that falls, a spring, gas, an airbag, high
 * voltage, a brake that closes by itself. Their step is not to be ticked before the caution is.
 */
public final class StopCautions {
    private static final List<String> STARTS = List.of(
            "Lifting: ",
            "Chock ",
            "Rated stands ",
            "Never under a jack only",
            "Set a second support ",
            "Second support ",
            "Nobody and nothing under it",
            "Stands stay where they are",
            "The jack holds the part, not the car",
            "The car stays on its stands",
            "Spring under load",
            "Face out of ",
            "Hooks opposite ",
            "Wind it off evenly",
            "Gas under pressure",
            "Bar under twist",
            "Do not pull this torque",
            "Fingers out of the caliper",
            "Airbag: ",
            "High voltage: ");

    private StopCautions() {}

    /** Whether this one has to be ticked before its step is done. */
    public static boolean stops(String caution) {
        for (String start : STARTS) {
            if (caution.startsWith(start)) {
                return true;
            }
        }
        return false;
    }
}
