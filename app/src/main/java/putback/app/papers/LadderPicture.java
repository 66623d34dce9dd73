package putback.app.papers;

import putback.app.ladder.LadderSize;
import putback.app.ladder.LadderSvg;
import putback.app.text.Headline;
import putback.plan.Plan;

/** The ladder as on the page, as large as a sheet of paper allows. */
final class LadderPicture {
    private static final double MARGIN_ACROSS = 24;
    private static final double MARGIN_DOWN = 42;

    private LadderPicture() {}

    static Block.Picture of(Plan plan, PaperSize paper) {
        String svg = LadderSvg.draw(plan, LadderSize.PAPER)
                .replaceAll("font-family:[^;]*;", "font-family:'Liberation Sans';");
        double width = figure(svg, " width=\"");
        double height = figure(svg, " height=\"");
        double scale = Math.min((paper.widthMm() - MARGIN_ACROSS) / width, (paper.heightMm() - MARGIN_DOWN) / height);
        String said = "The ladder: down the left rail apart, up the right rail together. Renewed: "
                + Headline.renewed(plan) + ". The tables say the same in words.";
        return new Block.Picture(svg, said, hundredths(width * scale), hundredths(height * scale));
    }

    private static double hundredths(double mm) {
        return Math.floor(mm * 100) / 100;
    }

    private static double figure(String svg, String name) {
        int from = svg.indexOf(name) + name.length();
        return Double.parseDouble(svg.substring(from, svg.indexOf('"', from)));
    }
}
