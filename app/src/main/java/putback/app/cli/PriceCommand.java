package putback.app.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.json.PriceJson;
import putback.app.text.Headline;
import putback.app.text.PriceText;
import putback.app.text.Screen;
import putback.labour.price.Crew;
import putback.labour.price.Estimate;
import putback.labour.price.Estimating;
import putback.labour.price.Job;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrade;
import putback.labour.time.DrawnTimes;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.quantity.Parsed;
import putback.store.sheets.Read;

/** How long, how sure, how much. */
final class PriceCommand implements Command {
    static final String NAME = "price";
    private static final int GRADES = 4;
    private static final int MOST_HANDS = 9;
    private static final int MOST_JOBS = 12;
    private static final Option JOB =
            Option.values("--job", "PART-or-UNIT[,...]", "one of several jobs; common work is shared fairly");

    @Override
    public Usage usage() {
        List<Option> options = new ArrayList<>(List.of(
                Renewing.RENEW,
                JOB,
                Renewing.SIDE,
                Option.value("--rust", "0..4", "how rusty it is, clean to wasted; 0 if not said"),
                Option.value("--hands", "N", "how many people work on it, 1 to 9")));
        options.addAll(PriceTerms.OPTIONS);
        options.add(Option.value("--seed", "N", "for what is drawn: the time of several hands"));
        options.add(Option.flag("--json", "for other programs"));
        options.add(Option.value("--pdf", "FILE", "the estimate as a PDF file"));
        options.add(PaperOptions.PAPER);
        options.add(Option.value("--on", "DATE", "day on the paper; left blank if not said"));
        return new Usage(
                NAME, "Says how long a job takes, how sure that is, and what it costs.", List.of("SHEET"), options);
    }

    @Override
    public String more() {
        return """
                Give --renew once, or --job for each of several jobs (12 at most), which are
                planned together; each then bears its fair share of the common work.

                The plan's minutes are medians that scatter as the sheet says. With --rust each
                fastener that is undone may be seized, and then goes through its resorts. The
                estimate is made for the likely time; the other two figures say what four jobs
                in five stay within, and when to stop and call. What is assumed is in
                docs/labour.md.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        List<Renewing> asked = asked(arguments);
        int grade = (int) Numbers.whole(NAME, arguments, "--rust", 0, GRADES, 0);
        long hands = Numbers.whole(NAME, arguments, "--hands", 1, MOST_HANDS, 1);
        long seed = Numbers.whole(NAME, arguments, "--seed", Long.MIN_VALUE, Long.MAX_VALUE, 1);
        Terms terms = PriceTerms.of(arguments);
        checkPaper(arguments);
        Read.Sheet sheet = SheetFile.open(arguments.operands().get(0), terminal);
        if (sheet == null) {
            return Exit.BAD_INPUT;
        }
        List<Job> jobs = jobs(asked, sheet, terminal);
        if (jobs.size() < asked.size()) {
            return Exit.BAD_INPUT;
        }
        Planned planned = Planner.plan(sheet.assembly(), together(jobs));
        if (planned instanceof Planned.Locked locked) {
            terminal.say("putback: " + sheet.name() + ": " + locked.sentence());
            return Exit.NO_SOUND_ANSWER;
        }
        Plan plan = ((Planned.Sound) planned).plan();
        Parsed<Estimate> estimate = Estimating.of(plan, jobs, RustGrade.values()[grade], terms, seed);
        if (!(estimate instanceof Parsed.Value<Estimate> sound)) {
            terminal.say("putback: " + sheet.name() + ": " + estimate.refusal());
            return Exit.BAD_INPUT;
        }
        DrawnTimes standing = standing(plan, RustGrade.values()[grade], terms, hands, seed);
        if (arguments.has("--pdf")) {
            return PricePaper.write(
                    new PricePaper.Priced(plan, sound.value(), standing, terms, grade), arguments, terminal);
        }
        terminal.out()
                .print(
                        arguments.has("--json")
                                ? PriceJson.of(sound.value(), standing) + "\n"
                                : PriceText.of(sound.value(), standing, sheet.assembly(), terms, grade, Screen.here()));
        return Exit.DONE;
    }

    private static List<Renewing> asked(Arguments arguments) throws UsageFault {
        List<Renewing> jobs = Renewing.each(NAME, arguments, JOB);
        boolean renew = arguments.has(Renewing.RENEW.name());
        if (renew && !jobs.isEmpty()) {
            throw Renewing.fault(NAME, "--renew and --job do not go together; give --job for each job");
        }
        if (jobs.size() > MOST_JOBS) {
            throw Renewing.fault(
                    NAME,
                    jobs.size() + " jobs are too many to share fairly; it may be " + MOST_JOBS
                            + ". Maybe put what belongs together into one --job, with commas");
        }
        return jobs.isEmpty() ? List.of(Renewing.of(NAME, arguments)) : jobs;
    }

    private static void checkPaper(Arguments arguments) throws UsageFault {
        if (arguments.has("--json") && arguments.has("--pdf")) {
            throw Renewing.fault(NAME, "--json and --pdf do not go together; give one of them");
        }
        PaperOptions.check(NAME, arguments);
        if (arguments.has("--on") && !arguments.has("--pdf")) {
            throw Renewing.fault(NAME, "--on goes with --pdf FILE");
        }
    }

    /** Null for one pair of hands, whose time is in the estimate. */
    private static @Nullable DrawnTimes standing(Plan plan, RustGrade grade, Terms terms, long hands, long seed) {
        Parsed<DrawnTimes> times = Crew.times(plan, grade, terms.ratePerHour(), (int) hands, seed);
        return hands > 1 && times instanceof Parsed.Value<DrawnTimes> drawn ? drawn.value() : null;
    }

    /** Fewer than asked for when a name was not understood, which is printed then. */
    private static List<Job> jobs(List<Renewing> asked, Read.Sheet sheet, Terminal terminal) {
        List<Job> jobs = new ArrayList<>();
        for (Renewing one : asked) {
            Wanted wanted = one.on(sheet.assembly(), sheet.name(), terminal);
            if (wanted != null) {
                jobs.add(new Job(Headline.renewed(wanted), wanted));
            }
        }
        return jobs;
    }

    private static Wanted together(List<Job> jobs) {
        Map<String, Target> targets = new LinkedHashMap<>();
        for (Job job : jobs) {
            for (Target target : job.wanted().targets()) {
                targets.putIfAbsent(target.id(), target);
            }
        }
        return new Wanted(List.copyOf(targets.values()));
    }
}
