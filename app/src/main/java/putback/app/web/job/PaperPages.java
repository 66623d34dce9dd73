package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.papers.CarLine;
import putback.app.papers.CustomerLine;
import putback.app.papers.DateOrder;
import putback.app.papers.Finding;
import putback.app.papers.GarageTerms;
import putback.app.papers.Handover;
import putback.app.papers.HouseStyle;
import putback.app.papers.JobHead;
import putback.app.papers.Letterhead;
import putback.app.papers.PaperSize;
import putback.app.papers.Papers;
import putback.app.papers.Quote;
import putback.app.papers.Recheck;
import putback.app.text.Headline;
import putback.app.web.frame.Garage;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.app.web.frame.Visitor;
import putback.job.Stage;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.quantity.Torque;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.Tightening;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Customer;
import putback.store.books.KeptEstimate;
import putback.store.books.KeptEstimates;
import putback.store.books.Settings;

/** A job's papers. */
public final class PaperPages implements PageGroup {
    private static final int RECHECK_KM = 50;
    private static final int RECHECK_DAYS = 7;

    private final Replies replies;
    private final Books books;
    private final Shelf shelf;
    private final Garage garage;
    private final Ledgers ledgers;
    private final JobShown shown;

    public PaperPages(Replies replies, Books books, Shelf shelf, Garage garage, Ledgers ledgers) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
        this.garage = garage;
        this.ledgers = ledgers;
        shown = new JobShown(replies, books, shelf, ledgers);
    }

    @Override
    public void add(RoutesConfig routes) {
        for (String paper : List.of("estimate", "job-card", "labels", "fill-in", "tightening-record", "handover")) {
            routes.get("/job/{id}/" + paper + ".pdf", context -> paper(context, paper));
        }
    }

    private void paper(Context context, String paper) {
        String id = context.pathParam("id");
        JobFile file = JobFile.open(books, id);
        if (file == null) {
            replies.missing(context, "job", id);
            return;
        }
        Map<String, String> settings = new Settings(books).all();
        Quoting quoting = Quoting.of(file, shelf, settings);
        Plan plan = quoting.plan();
        boolean kept = paper.equals("handover") && file.invoice() != null;
        String why = paper.equals("estimate") ? notToBeOffered(file, quoting) : kept ? "" : quoting.fault();
        if (plan == null || !why.isEmpty()) {
            String said = !why.isEmpty()
                    ? why
                    : quoting.fault().isEmpty() ? "Tick what is to be renewed first." : quoting.fault();
            shown.refuse(context, file, "No such paper yet. " + said, Typed.NOTHING);
            return;
        }
        if (paper.equals("estimate")) {
            keep(context, file, quoting, settings);
        }
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"" + file.job().number() + "-" + paper + ".pdf\"");
        context.result(bytes(paper, file, quoting, plan, settings));
    }

    private static String notToBeOffered(JobFile file, Quoting quoting) {
        return file.closed().isEmpty()
                ? quoting.notToBeOffered()
                : "The car is handed over: what was put to the owner stands under The owner’s word, and what was charged"
                        + " on Handover and invoice.";
    }

    /** An estimate that is printed may be put to the owner: it is kept as it was. */
    private void keep(Context context, JobFile file, Quoting quoting, Map<String, String> settings) {
        String who = Visitor.of(context).name();
        KeptEstimate put = quoting.put(file, text(settings, "currency"), who.isEmpty() ? "printed" : who);
        if (put != null) {
            books.write(change -> new KeptEstimates(books).keep(change, put));
        }
    }

    private byte[] bytes(String paper, JobFile file, Quoting quoting, Plan plan, Map<String, String> settings) {
        HouseStyle style = style(settings);
        JobHead head = head(file, settings);
        return switch (paper) {
            case "estimate" ->
                Papers.estimate(
                        new Quote(
                                plan,
                                java.util.Objects.requireNonNull(quoting.estimate()),
                                null,
                                java.util.Objects.requireNonNull(quoting.terms()),
                                grade(file)),
                        law(file, settings),
                        head,
                        style);
            case "job-card" -> Papers.jobCard(plan, garage.tray(plan), head, style);
            case "labels" -> Papers.labels(plan, head, style.paper());
            case "fill-in" -> Papers.fillInCard(plan, head, style);
            case "tightening-record" -> Papers.tighteningRecord(plan, ledgers.readings(file, style), head, style);
            default -> handover(file, quoting, plan, settings);
        };
    }

    /** From the handover on as it was then: lines, currency and day. */
    private byte[] handover(JobFile file, Quoting quoting, Plan plan, Map<String, String> settings) {
        KeptEstimate kept = file.invoice();
        HouseStyle style = style(settings);
        JobHead head = head(file, settings);
        if (kept == null) {
            KeptEstimate now = Charged.now(file, quoting, ledgers.renewedAgain(file, plan), style.currency(), "");
            return Papers.handover(handover(file, plan, settings, now, LocalDate.now(books.clock())), head, style);
        }
        LocalDate day = LocalDate.parse(kept.at().substring(0, "2026-11-02".length()));
        return Papers.handover(
                handover(file, plan, settings, kept, day), head.dated(day), style.inCurrency(kept.currency()));
    }

    private static int grade(JobFile file) {
        String rust = file.job().scope().rust();
        return rust.matches("[0-4](,.*)?") ? rust.charAt(0) - '0' : 0;
    }

    private Handover handover(
            JobFile file, Plan plan, Map<String, String> settings, @Nullable KeptEstimate charged, LocalDate day) {
        List<String> drives = new ArrayList<>();
        file.roadTests()
                .forEach(drive -> drives.add(("before".equals(drive.moment()) ? "Before: " : "After: ")
                        + drive.found()
                        + (drive.conditions().isEmpty() ? "" : " (" + drive.conditions() + ")")));
        return new Handover(
                file.car().called(),
                draft(file, plan),
                List.of(charged == null ? Headline.renewed(plan) : charged.renewed()),
                drives,
                charged == null ? null : Charged.printed(charged),
                charged == null ? List.of() : charged.lacking(),
                findings(file, Places.of(plan)),
                ledgers.carried(file, plan),
                List.of(),
                law(file, settings),
                Ledgers.wheelComesOff(plan) ? recheck(plan, day) : null);
    }

    /** Why it is not the paper to hand over yet; empty when it is. */
    private String draft(JobFile file, Plan plan) {
        Stage stage = file.job().stage();
        if (stage == Stage.HANDED_OVER) {
            return file.invoice() == null
                    ? "No invoice was kept when this car was handed over: its figures are worked out today."
                    : "";
        }
        List<String> owes = ledgers.owes(file, plan);
        if (stage != Stage.TOGETHER) {
            return "The job is \"" + stage.words() + "\": "
                    + (ledgers.started(file) ? "the work is not finished." : "nothing has been done yet.");
        }
        if (!owes.isEmpty()) {
            return "The job still owes: " + String.join("; ", owes) + ".";
        }
        return file.unanswered().isEmpty()
                ? ""
                : "The owner has not answered yet: " + String.join("; ", file.unanswered()) + ".";
    }

    private static List<Finding> findings(JobFile file, Places places) {
        List<Finding> findings = new ArrayList<>();
        for (putback.store.books.Finding found : file.findings()) {
            findings.add(new Finding(
                    kind(found),
                    places.said(found.place(), found.words()),
                    found.urgency(),
                    found.answer().equals("open") ? "" : found.answeredBy(),
                    found.answer().equals("open") ? "" : found.said()));
        }
        return findings;
    }

    private static Finding.Kind kind(putback.store.books.Finding found) {
        return switch (found.answer()) {
            case "agreed" -> Finding.Kind.AGREED;
            case "declined" -> found.stopsDriving() ? Finding.Kind.DECLINED_SAFETY : Finding.Kind.DECLINED;
            default -> Finding.Kind.OPEN;
        };
    }

    /** With the torque that the wheels' fasteners are tightened to in this very job. */
    private Recheck recheck(Plan plan, LocalDate day) {
        LocalDate by = day.plusDays(RECHECK_DAYS);
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            Fastener fastener = step.fastener();
            if (step.act() == Act.TIGHTEN && joint != null && fastener != null && Ledgers.holdsWheel(joint)) {
                String source = fastener.source();
                Torque torque = fastener.tightening() instanceof Tightening.ToTorque to ? to.torque() : null;
                return new Recheck(RECHECK_KM, by, torque, source == null ? "" : source);
            }
        }
        return new Recheck(RECHECK_KM, by, null, "");
    }

    private static GarageTerms law(JobFile file, Map<String, String> settings) {
        return new GarageTerms(
                file.job().arrival().complaint(),
                "",
                "",
                text(settings, "teardown"),
                text(settings, "reassembly"),
                "",
                text(settings, "old-parts"),
                text(settings, "warranty"),
                "",
                text(settings, "storage"),
                "",
                text(settings, "complaints-to"));
    }

    private JobHead head(JobFile file, Map<String, String> settings) {
        Car car = file.car();
        Customer owner = file.customer();
        String unit = " " + car.distanceUnit();
        String in = file.job().arrival().distanceIn();
        String out = file.job().arrival().distanceOut();
        return new JobHead(
                file.job().number(),
                LocalDate.now(books.clock()),
                letterhead(settings),
                new CarLine(
                        (car.make() + " " + car.model() + " " + car.built()).strip(),
                        car.plate(),
                        car.vin(),
                        in.isEmpty() ? "" : in + unit,
                        out.isEmpty() ? "" : out + unit),
                owner == null
                        ? CustomerLine.NONE
                        : new CustomerLine(owner.name(), lines(owner.address()), owner.phone(), owner.email()),
                ledgers.mechanic(file));
    }

    /** Whose papers they are. */
    public static Letterhead letterhead(Map<String, String> settings) {
        return new Letterhead(
                text(settings, "garage"),
                lines(text(settings, "address")),
                text(settings, "phone"),
                text(settings, "email"),
                text(settings, "tax-number"),
                text(settings, "registration"));
    }

    private static List<String> lines(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split("\n", -1));
    }

    /** A setting, or what it is until somebody sets it. */
    public static String text(Map<String, String> settings, String name) {
        @Nullable String value = settings.get(name);
        return value == null ? "" : value;
    }

    /** How this garage writes figures. */
    public static HouseStyle style(Map<String, String> settings) {
        DateOrder dates =
                switch (text(settings, "dates")) {
                    case "day first" -> DateOrder.DAY_MONTH_YEAR;
                    case "month first" -> DateOrder.MONTH_DAY_YEAR;
                    default -> DateOrder.YEAR_MONTH_DAY;
                };
        return new HouseStyle(
                text(settings, "paper").equals("letter") ? PaperSize.LETTER : PaperSize.A4,
                text(settings, "decimal").equals("comma"),
                dates,
                text(settings, "torque").equals("lbf·ft"),
                text(settings, "distance").equals("mi"),
                text(settings, "currency"),
                text(settings, "currency-place").equals("before"));
    }
}
