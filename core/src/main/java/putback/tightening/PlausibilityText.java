package putback.tightening;

import java.util.List;
import putback.quantity.StatedTorque;
import putback.quantity.Torque;
import putback.quantity.TorqueUnit;

/** Says in a sentence how a stated torque compares. */
record PlausibilityText(String what, StatedTorque stated, Torque low, Torque high, List<TorqueUnit> fitting) {
    private String span() {
        return what + " is fully used at " + Torque.spanText(low, high) + " over ordinary friction";
    }

    private String figure() {
        return stated.unit().text(stated.number());
    }

    String tooMuch() {
        return figure() + " is more than it stands: " + span() + readings("; the same figure read as ", " would fit")
                + ". Check the unit, the thread and the class before using it.";
    }

    String tooLittle() {
        return figure() + " hardly clamps it: " + span() + readings("; the same figure read as ", " would fit")
                + ". Check the unit; so little is right only where a nut sets the play of a bearing or the maker says so.";
    }

    String aboveUsual() {
        return figure() + " is above what it is given as a rule: " + span()
                + "; right only where it rubs more than that, as with rust, paint or locker"
                + readings(". The same figure read as ", " would fit")
                + ". Check the thread, the class and the source.";
    }

    String fits() {
        if (fitting.isEmpty()) {
            return figure() + " can be right: " + span() + ".";
        }
        return figure() + " can be right, and so can the same figure read as " + list()
                + ": the figure alone cannot tell which unit was meant; " + span() + ". Look at the source.";
    }

    private String readings(String before, String after) {
        return fitting.isEmpty() ? "" : before + list() + after;
    }

    private String list() {
        StringBuilder listed = new StringBuilder();
        for (TorqueUnit unit : fitting) {
            listed.append(listed.isEmpty() ? "" : " or ").append(unit.word());
            if (unit != TorqueUnit.NEWTON_METRE) {
                double newtonMetres = stated.readAs(unit).newtonMetres();
                listed.append(" (")
                        .append(TorqueUnit.NEWTON_METRE.text(newtonMetres))
                        .append(')');
            }
        }
        return listed.toString();
    }
}
