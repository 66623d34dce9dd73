package putback.job;

import java.util.ArrayList;
import java.util.List;
import putback.quantity.Parsed;

/** Which way a job may go from where it stands. */
public final class Course {
    private static final int NAMED = 3;

    private Course() {}

    /** The stages that may come next as far as their order goes, the usual one first. */
    public static List<Stage> next(Stage from) {
        return switch (from) {
            case ASKED -> List.of(Stage.LOOKED_OVER, Stage.PRICED, Stage.DECLINED);
            case LOOKED_OVER -> List.of(Stage.PRICED, Stage.ASKED, Stage.DECLINED);
            case PRICED -> List.of(Stage.AGREED, Stage.LOOKED_OVER, Stage.DECLINED);
            case AGREED -> List.of(Stage.UNDER_WAY, Stage.PRICED, Stage.DECLINED);
            case UNDER_WAY -> List.of(Stage.TOGETHER, Stage.PRICED);
            case TOGETHER -> List.of(Stage.HANDED_OVER, Stage.UNDER_WAY);
            case HANDED_OVER -> List.of();
            case DECLINED -> List.of(Stage.ASKED);
        };
    }

    /**
     * Moves a job.
     *
     * @return the stage it is at then, or why it cannot be
     */
    public static Parsed<Stage> move(Stage from, Stage to, Standing has) {
        if (from == to) {
            return new Parsed.Value<>(to);
        }
        if (!next(from).contains(to)) {
            List<String> names = new ArrayList<>();
            next(from).forEach(stage -> names.add(stage.words()));
            return new Parsed.Refused<>(
                    "a job that is " + from.words() + " cannot be " + to.words() + " next; it can be "
                            + (names.isEmpty() ? "nothing else: open a new one" : String.join(", ", names)));
        }
        String lacking = lacking(to, has);
        return lacking.isEmpty() ? new Parsed.Value<>(to) : new Parsed.Refused<>(lacking);
    }

    private static String lacking(Stage to, Standing has) {
        return switch (to) {
            case PRICED -> has.scope() ? "" : "nothing is named that is to be renewed; tick it first";
            case AGREED -> has.approved() ? "" : "nobody has said yes; write down who, how and up to how much";
            case UNDER_WAY ->
                !has.approved()
                        ? "nobody has said yes; write down who, how and up to how much"
                        : has.overCeiling()
                                ? "the price is above what was agreed; ask again first"
                                : has.partsMissing().isEmpty()
                                        ? ""
                                        : "not here, or not looked at yet: " + some(has.partsMissing())
                                                + "; see that each is the right part by number and look, before"
                                                + " anything comes apart";
            case HANDED_OVER -> keepsTheCar(has);
            case DECLINED -> has.opened() ? "the car is apart; put it together first" : "";
            default -> "";
        };
    }

    private static String keepsTheCar(Standing has) {
        if (!has.owes().isEmpty()) {
            return "the job still owes: " + some(has.owes()) + "; do it, or carry it with a name and a reason";
        }
        if (!has.unanswered().isEmpty()) {
            return "the car must not be driven with this, and the owner has not answered: " + some(has.unanswered())
                    + "; ask, and write down the answer";
        }
        return has.overCeiling()
                ? "it comes to more than somebody said yes to; ask again and write down the answer, or charge no more"
                        + " than was agreed"
                : "";
    }

    private static String some(List<String> names) {
        String said = String.join("; ", names.subList(0, Math.min(NAMED, names.size())));
        return names.size() > NAMED ? said + " and " + (names.size() - NAMED) + " more" : said;
    }
}
