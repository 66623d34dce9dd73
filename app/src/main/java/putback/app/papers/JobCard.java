package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Figures;
import putback.app.text.Headline;
import putback.plan.Plan;
import putback.plan.steps.Phase;
import putback.plan.tools.Tray;

/** What lies on the trolley: the whole plan, to be ticked and written on. */
final class JobCard {
    private JobCard() {}

    static Paper of(Plan plan, @Nullable Tray tray, JobHead head, HouseStyle style) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Words.of(
                plan.steps().isEmpty() ? "Nothing has to be opened: there are no steps." : summary(plan, style)));
        table(blocks, "Parts to have ready", PlanTables.parts(plan, style));
        table(blocks, "Tools", PlanTables.tools(plan));
        sentences(blocks, "To be thought of", plan.advice());
        sentences(blocks, "Doubtful in the sheet", plan.warnings());
        if (!plan.steps().isEmpty()) {
            blocks.addAll(LadderPicture.of(plan, style.paper()));
        }
        table(blocks, "Apart", StepTable.of(plan, Phase.APART, style));
        table(blocks, "Together", StepTable.of(plan, Phase.TOGETHER, style));
        if (!plan.steps().isEmpty()) {
            blocks.add(LEGEND);
        }
        tightening(blocks, plan, style);
        if (tray != null) {
            table(blocks, "Torque wrenches", WrenchTable.of(plan, tray, style));
        }
        table(blocks, "Follow-ups", PlanTables.followUps(plan, style));
        return new Paper(Paper.Kind.JOB_CARD, title(plan, head), renewOn(plan, head), head, style, blocks);
    }

    /** The car where it is known, since that is what a person looks for; the sheet otherwise. */
    static String title(Plan plan, JobHead head) {
        String car = (head.car().plate() + " " + head.car().car()).strip();
        return car.isEmpty() ? plan.assembly().sheet().title() : car;
    }

    /** For the mechanic: what is renewed, and the sheet where the title is the car. */
    static String renewOn(Plan plan, JobHead head) {
        String sheet = plan.assembly().sheet().title();
        return title(plan, head).equals(sheet)
                ? renew(plan)
                : (renew(plan) + ". Sheet: " + sheet).replaceFirst("^\\. ", "");
    }

    static String renew(Plan plan) {
        String renewed = Headline.renewed(plan);
        return renewed.isEmpty() ? "" : "Renew: " + renewed;
    }

    /** The shapes in words. */
    private static final Block LEGEND = new Block.Legend();

    private static String summary(Plan plan, HouseStyle style) {
        return style.words(Figures.minutes(plan.total()) + " min in all: work "
                + Figures.minutes(plan.selection().work()) + " min, set-up " + Figures.minutes(plan.setup())
                + " min, for clean fasteners and one pair of hands.");
    }

    private static void tightening(List<Block> blocks, Plan plan, HouseStyle style) {
        Block.Table table = TighteningTable.of(plan, style);
        if (table.rows().isEmpty()) {
            return;
        }
        blocks.add(new Block.NewPage());
        blocks.add(new Block.Heading("Tightening"));
        blocks.add(table);
        blocks.add(Block.Words.of("A diamond: seen a second time, by another person, or by the same one ten minutes"
                + " later. A torque that is not known is looked up before it is tightened, never guessed."));
    }

    private static void table(List<Block> blocks, String heading, Block.Table table) {
        if (!table.rows().isEmpty()) {
            blocks.add(new Block.Heading(heading));
            blocks.add(table);
        }
    }

    static void sentences(List<Block> blocks, String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            blocks.add(new Block.Heading(heading));
            blocks.add(new Block.Words(sentences, true));
        }
    }
}
