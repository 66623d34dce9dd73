package putback.app.web.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import putback.app.papers.HouseStyle;
import putback.app.papers.Reading;
import putback.app.text.OwingText;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.job.Stage;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Owing;
import putback.ledger.PlanPromise;
import putback.ledger.Promised;
import putback.ledger.Struck;
import putback.plan.Plan;
import putback.plan.steps.Step;
import putback.quantity.Torque;
import putback.sheet.Joint;
import putback.store.books.Books;
import putback.store.books.Events;
import putback.store.books.Move;

/** What the ledgers say of jobs. */
public final class Ledgers {
    private static final Set<Stage> BEFORE = Set.of(Stage.ASKED, Stage.LOOKED_OVER, Stage.PRICED, Stage.AGREED);

    private final Events events;

    public Ledgers(Books books) {
        events = new Events(books);
    }

    /** What is still owed, in words; what is carried with a reason is not among it. */
    List<String> owes(JobFile file, @Nullable Plan plan) {
        List<Event> done = events.all(file.job().id());
        if (plan == null
                || (done.isEmpty() && BEFORE.contains(file.job().stage()))
                || file.job().stage().ended()) {
            return List.of();
        }
        Promised promised = PlanPromise.of(plan);
        List<String> owes = new ArrayList<>();
        Owing.of(promised, done).owes().forEach(debt -> owes.add(OwingText.line(debt, promised)));
        return owes;
    }

    /** What stays open on purpose, by whom and why. */
    List<String> carried(JobFile file, Plan plan) {
        Promised promised = PlanPromise.of(plan);
        List<String> carried = new ArrayList<>();
        for (Owing.Carried one : Owing.of(promised, events.all(file.job().id())).carried()) {
            carried.add(OwingText.line(one.debt(), promised) + "; carried by "
                    + (one.by().isEmpty() ? "nobody named" : one.by()) + ": " + one.reason());
        }
        return carried;
    }

    /** What broke and has no new one on record, and what stands still until somebody decides, with who said so and when; empty without a plan and after the end. */
    List<String> broke(JobFile file, @Nullable Plan plan, HouseStyle style) {
        if (plan == null || file.job().stage().ended()) {
            return List.of();
        }
        List<Event> done = events.all(file.job().id());
        Promised promised = PlanPromise.of(plan);
        List<String> lines = new ArrayList<>();
        Broke.lines(promised, done, style).forEach(one -> lines.add("Broke: " + one));
        Stopped.lines(promised, done, style).forEach(one -> lines.add("Stands still: " + one));
        return lines;
    }

    /** The same for a job whose plan is not known yet. */
    public List<String> broke(JobFile file, Shelf shelf, HouseStyle style) {
        return broke(file, plan(file, shelf), style);
    }

    private static @Nullable Plan plan(JobFile file, Shelf shelf) {
        Question question = file.question();
        return question != null && Answer.to(question, shelf) instanceof Answer.Planned planned ? planned.plan() : null;
    }

    /** Why the car is not to be driven: what stays open on purpose, and once it is together whatever else keeps it. */
    public List<String> notDriven(JobFile file, Shelf shelf) {
        Plan plan = plan(file, shelf);
        return plan == null ? List.of() : notDriven(file, plan);
    }

    List<String> notDriven(JobFile file, Plan plan) {
        Stage stage = file.job().stage();
        List<String> because = new ArrayList<>(carried(file, plan));
        if (stage == Stage.TOGETHER || stage == Stage.HANDED_OVER) {
            because.addAll(
                    Owing.of(PlanPromise.of(plan), events.all(file.job().id())).stands());
        }
        return because;
    }

    /** Names of what broke on the way and was replaced by another new one. */
    List<String> renewedAgain(JobFile file, Plan plan) {
        Set<String> broken = new LinkedHashSet<>();
        Set<String> again = new LinkedHashSet<>();
        for (Event event : Struck.remaining(events.all(file.job().id()))) {
            String what = event.part() == null ? event.joint() : event.part();
            if (what != null && event.did() == Did.BREAK) {
                broken.add(what);
            } else if (event.did() == Did.RENEW || event.did() == Did.REPLACE_FASTENER) {
                if (what != null && broken.contains(what)) {
                    again.add(what);
                }
            }
        }
        Promised promised = PlanPromise.of(plan);
        List<String> names = new ArrayList<>();
        again.forEach(what -> names.add(promised.name(what)));
        return names;
    }

    /** Whether anything has come apart. */
    boolean started(JobFile file) {
        for (Event event : events.all(file.job().id())) {
            if (event.did() == Did.UNDO || event.did() == Did.BREAK_LOOSE) {
                return true;
            }
        }
        return false;
    }

    /** What was read at tightenings, with who looked a second time. */
    List<Reading> readings(JobFile file, HouseStyle style) {
        List<Event> done = events.all(file.job().id());
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < done.size(); i++) {
            Event event = done.get(i);
            String joint = event.joint();
            if (event.did() == Did.TIGHTEN && joint != null) {
                Double read = event.torqueNm();
                readings.add(new Reading(
                        joint,
                        read == null ? null : new Torque(read),
                        event.by(),
                        event.at() == null ? "" : JobView.when(Books.text(event.at()), style),
                        secondBy(done.subList(i + 1, done.size()), joint),
                        event.wrench() == null ? "" : event.wrench(),
                        note(event)));
            }
        }
        return readings;
    }

    /** Why there is no reading, or where the figure was looked up. */
    private static String note(Event tightened) {
        String untorqued = tightened.untorqued();
        String reason = tightened.reason();
        return untorqued != null ? untorqued : reason != null ? reason : "";
    }

    /** Who worked on it: all who did something at the car, in the order in which they came; empty as long as nobody has. */
    String mechanic(JobFile file) {
        Set<String> names = new LinkedHashSet<>();
        for (Event event : events.all(file.job().id())) {
            if (!event.by().isBlank() && event.did() != Did.NOTE && event.did() != Did.CARRY) {
                names.add(event.by());
            }
        }
        if (names.isEmpty()) {
            for (Move move : file.moves()) {
                if (move.stage() == Stage.UNDER_WAY && !move.by().equals("somebody")) {
                    names.add(move.by());
                }
            }
        }
        return String.join(", ", names);
    }

    private static String secondBy(List<Event> after, String joint) {
        Set<String> names = new TreeSet<>();
        for (Event event : after) {
            if (event.did() == Did.SECOND_LOOK && joint.equals(event.joint())) {
                names.add(event.by());
            }
        }
        return String.join(", ", names);
    }

    /** Whether the plan takes a wheel off. */
    static boolean wheelComesOff(Plan plan) {
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            if (joint != null && holdsWheel(joint)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a fixing holds a wheel on. */
    static boolean holdsWheel(Joint joint) {
        return joint.id().contains("wheel-nut") || joint.id().contains("wheel-bolt");
    }
}
