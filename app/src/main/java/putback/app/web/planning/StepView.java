package putback.app.web.planning;

import java.util.List;

/**
 * A step as the page shows it.
 *
 * @param number from 1
 * @param height whether it changes how the car stands; it is then a ruled line through the list
 * @param place where the mechanic goes for it; empty when that is where the one before was done
 * @param mark how the fixing is left: {@code open}, {@code loose}, {@code started}, {@code tight} or {@code none}
 * @param minutes work and set-up; empty for none
 * @param tools what turns it and what holds the other side; may be empty
 * @param torque in both units, or that it is not known; empty where nothing is tightened
 * @param source where the torque came from; empty where nothing has to be said
 * @param stages passes of a tightening
 * @param wrench what a reading may be, and with which wrench
 * @param why one sentence for each link back to what is renewed; empty when nothing has to be said
 */
public record StepView(
        int number,
        boolean height,
        String place,
        String mark,
        String text,
        String minutes,
        String tools,
        String torque,
        String source,
        List<String> stages,
        List<String> wrench,
        List<String> cautions,
        List<String> why) {
    public StepView {
        stages = List.copyOf(stages);
        wrench = List.copyOf(wrench);
        cautions = List.copyOf(cautions);
        why = List.copyOf(why);
    }
}
