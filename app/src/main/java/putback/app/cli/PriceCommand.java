package putback.app.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.asking.PriceQuestion;
import putback.app.json.PriceJson;
import putback.app.text.ExamplePrices;
import putback.app.text.Headline;
import putback.app.text.PriceText;
import putback.app.text.Screen;
import putback.labour.price.Beliefs;
import putback.labour.price.Crew;
import putback.labour.price.Estimate;
import putback.labour.price.Estimating;
import putback.labour.price.Job;
import putback.labour.price.Jobs;
import putback.labour.price.OwnFigures;
import putback.labour.price.PlaceProfile;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrades;
import putback.labour.share.Shapley;
import putback.labour.time.DrawnTimes;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.quantity.Parsed;
import putback.store.sheets.Fault;
import putback.store.sheets.PlaceRead;
import putback.store.sheets.PlaceReader;
import putback.store.sheets.Read;

/** How long, how sure, how much. */
final class PriceCommand implements Command {
    static final String NAME = "price";
    private static final Option PLACE = Option.value(
            "--place", "ID-or-FILE", "what the law there usually asks of an estimate; not-set if not said");
    private static final Option JOB =
            Option.values("--job", "PART-or-UNIT[,...]", "one of several jobs; common work is shared fairly");

    @Override
    public Usage usage() {
        List<Option> options =
                new ArrayList<>(List.of(Renewing.RENEW, JOB, Renewing.SIDE, PriceTerms.RUST, PriceTerms.HANDS));
        options.addAll(PriceTerms.OPTIONS);
        options.add(Option.value("--seed", "N", "for what is drawn: several hands, shares of more than 12 jobs"));
        options.add(OwnCases.LEARNT);
        options.addAll(List.of(BooksPlace.DATA, BooksPlace.DATABASE, BooksPlace.GARAGE));
        options.add(PLACE);
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
                Give --renew once, or --job for each of several jobs (60 at most), which are
                planned together; each then bears its fair share of the common work. Up to 12
                jobs the shares are exact; beyond, they are drawn, with their error.

                --rust takes a grade for the whole car, for a side (left=4) and for a fixing
                (left.strut-to-hub=2; without a side, both), several with commas. What is said
                more closely counts.

                The plan's minutes are medians that scatter as the sheet says. With --rust each
                fastener that is undone may be seized, and then goes through its resorts. The
                estimate is made for the likely time; the other two figures say what four jobs
                in five stay within, and when to stop and call. What is assumed is in
                docs/labour.md.

                With --data or --database the garage's own books count: what its finished jobs on
                cars of the same stock sheet have taught. putback learnt prints it, --learnt reads
                it from a file.

                --place says what an estimate usually has to carry there and what is still
                missing, for one of the places below or a file of your own (docs/labour.md). It
                is not legal advice.
                """ + String.join(", ", PlaceReader.ids()) + "\n";
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        List<Renewing> asked = asked(arguments);
        int hands = PriceTerms.hands(arguments);
        long seed = Numbers.whole(NAME, arguments, "--seed", Long.MIN_VALUE, Long.MAX_VALUE, 1);
        Terms terms = PriceTerms.of(arguments);
        checkPaper(arguments);
        OwnCases.check(arguments);
        Read.Sheet sheet = SheetFile.open(arguments.operands().get(0), terminal);
        if (sheet == null) {
            return Exit.BAD_INPUT;
        }
        PlaceProfile place = place(arguments, terminal);
        if (place == null) {
            return Exit.BAD_INPUT;
        }
        OwnFigures own = OwnCases.of(arguments, terminal);
        if (own == null) {
            return Exit.BAD_INPUT;
        }
        RustGrades rust = PriceTerms.rust(arguments, sheet.assembly());
        List<Job> named = jobs(asked, sheet, terminal);
        if (named.size() < asked.size()) {
            return Exit.BAD_INPUT;
        }
        Jobs jobs = Jobs.of(named);
        Planned planned = Planner.plan(sheet.assembly(), together(jobs.each()));
        if (planned instanceof Planned.Locked locked) {
            terminal.say("putback: " + sheet.name() + ": " + locked.sentence());
            return Exit.NO_SOUND_ANSWER;
        }
        PriceQuestion question = new PriceQuestion(sheet.assembly(), terms, new Beliefs(rust, own), hands, seed, place);
        return print(((Planned.Sound) planned).plan(), jobs, question, arguments, terminal);
    }

    private static int print(Plan plan, Jobs jobs, PriceQuestion question, Arguments arguments, Terminal terminal)
            throws UsageFault {
        Parsed<Estimate> parsed =
                Estimating.of(plan, jobs.each(), question.beliefs(), question.terms(), question.seed());
        if (!(parsed instanceof Parsed.Value<Estimate> sound)) {
            terminal.say("putback: " + question.assembly().sheet().id() + ": " + parsed.refusal());
            return Exit.BAD_INPUT;
        }
        List<String> notes = new ArrayList<>(jobs.notes());
        notes.addAll(ExamplePrices.notes(plan, arguments.has("--rate")));
        Estimate estimate = sound.value().withNotes(notes);
        DrawnTimes standing = standing(plan, question);
        if (arguments.has("--pdf")) {
            int rust = question.beliefs().rust().usual().ordinal();
            return PricePaper.write(
                    new PricePaper.Priced(plan, estimate, standing, question.terms(), rust), arguments, terminal);
        }
        terminal.out()
                .print(
                        arguments.has("--json")
                                ? PriceJson.of(estimate, standing, question) + "\n"
                                : PriceText.of(estimate, standing, question, Screen.here()));
        return Exit.DONE;
    }

    /** Null when there is none such, which is printed then. */
    private static @Nullable PlaceProfile place(Arguments arguments, Terminal terminal) {
        PlaceRead read = PlaceReader.open(arguments.value(PLACE.name()).orElse(PlaceProfile.NOT_SET.id()));
        if (read instanceof PlaceRead.Sound sound) {
            return sound.profile();
        }
        for (Fault fault : ((PlaceRead.Faulty) read).faults()) {
            terminal.say(fault.toString());
        }
        return null;
    }

    private static List<Renewing> asked(Arguments arguments) throws UsageFault {
        List<Renewing> jobs = Renewing.each(NAME, arguments, JOB);
        boolean renew = arguments.has(Renewing.RENEW.name());
        if (renew && !jobs.isEmpty()) {
            throw Renewing.fault(NAME, "--renew and --job do not go together; give --job for each job");
        }
        if (jobs.isEmpty()) {
            return List.of(Renewing.of(NAME, arguments));
        }
        int different = (int) jobs.stream().map(Renewing::names).distinct().count();
        if (different > Shapley.MOST_JOBS) {
            throw Renewing.fault(
                    NAME,
                    different + " jobs are too many to share fairly; it may be " + Shapley.MOST_JOBS
                            + ". Maybe put what belongs together into one --job, with commas");
        }
        return jobs;
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
    private static @Nullable DrawnTimes standing(Plan plan, PriceQuestion asked) {
        if (asked.hands() == 1) {
            return null;
        }
        BigDecimal rate = asked.terms().ratePerHour();
        return Crew.times(plan, asked.beliefs(), rate, asked.hands(), asked.seed())
                        instanceof Parsed.Value<DrawnTimes> drawn
                ? drawn.value()
                : null;
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
