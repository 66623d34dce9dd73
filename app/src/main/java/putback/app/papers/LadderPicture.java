package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import putback.app.ladder.LadderSize;
import putback.app.ladder.LadderSvg;
import putback.app.text.Headline;
import putback.plan.Plan;

/** The ladder as on the page, as wide as a sheet of paper allows; a tall one is cut between its rows. */
final class LadderPicture {
    private static final double MARGIN_ACROSS = 24;
    private static final double MARGIN_DOWN = 46;
    /** A ladder that is hardly too tall is made a little smaller instead of being cut. */
    private static final double SHRINKS = 1.12;
    /** How near a cut may come to a line of words, in px: above its base, and below. */
    private static final double ABOVE = 17;

    private static final double BELOW = 8;
    private static final Pattern BASE = Pattern.compile("<text[^>]* y=\"([0-9.]+)\"");
    private static final Pattern TYPEFACE = Pattern.compile("font-family:[^;]*;");

    private final String svg;
    private final double width;
    private final double height;
    private final PaperSize paper;

    private LadderPicture(String svg, PaperSize paper) {
        this.svg = svg;
        this.paper = paper;
        width = figure(" width=\"");
        height = figure(" height=\"");
    }

    /** One picture, or one for each page. */
    static List<Block> of(Plan plan, PaperSize paper) {
        String svg =
                TYPEFACE.matcher(LadderSvg.draw(plan, LadderSize.PAPER)).replaceAll("font-family:'Liberation Sans';");
        return new LadderPicture(svg, paper).pictures(Headline.renewed(plan));
    }

    private List<Block> pictures(String renewed) {
        double most = (paper.heightMm() - MARGIN_DOWN) / acrossMm() * width;
        List<Double> cuts = height <= most * SHRINKS ? List.of(0.0, height) : cuts(most);
        List<Block> pictures = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1);
            double tall = cuts.get(i) - from;
            double scale = Math.min(acrossMm() / width, (paper.heightMm() - MARGIN_DOWN) / tall);
            String part = cuts.size() == 2 ? "" : ", part " + i + " of " + (cuts.size() - 1);
            String said = "The ladder" + part + ": down the left rail apart, up the right rail together. Renewed: "
                    + renewed + ". The tables say the same in words.";
            pictures.add(
                    new Block.Picture(slice(from, tall), said, hundredths(width * scale), hundredths(tall * scale)));
        }
        return pictures;
    }

    private double acrossMm() {
        return paper.widthMm() - MARGIN_ACROSS;
    }

    private List<Double> cuts(double most) {
        List<Double> bases = new ArrayList<>();
        Matcher texts = BASE.matcher(svg);
        while (texts.find()) {
            bases.add(Double.valueOf(texts.group(1)));
        }
        int pages = (int) Math.ceil(height / most);
        List<Double> cuts = new ArrayList<>(List.of(0.0));
        for (int page = 1; page < pages; page++) {
            cuts.add(free(height * page / pages, bases, cuts.get(cuts.size() - 1)));
        }
        cuts.add(height);
        return cuts;
    }

    /** The lowest place not below the wanted one that no words stand on. */
    private static double free(double wanted, List<Double> bases, double least) {
        for (double at = wanted; at > least + 1; at--) {
            double cut = at;
            if (bases.stream().noneMatch(base -> base > cut - BELOW && base < cut + ABOVE)) {
                return cut;
            }
        }
        return wanted;
    }

    private String slice(double from, double tall) {
        int at = svg.indexOf("viewBox=\"");
        int end = svg.indexOf('>', at);
        return svg.substring(0, at) + "viewBox=\"0 " + from + " " + width + " " + tall + "\" width=\"" + width
                + "\" height=\"" + tall + "\"" + svg.substring(end);
    }

    private static double hundredths(double mm) {
        return Math.floor(mm * 100) / 100;
    }

    private double figure(String name) {
        int from = svg.indexOf(name) + name.length();
        return Double.parseDouble(svg.substring(from, svg.indexOf('"', from)));
    }
}
