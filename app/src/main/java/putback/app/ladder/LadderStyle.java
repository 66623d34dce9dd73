package putback.app.ladder;

/** Colours and lines of the picture: warm white, ink blue, one ochre. Dark is the same drawing as a blueprint. */
final class LadderStyle {
    private static final String[] NAMES = {"paper", "ink", "soft", "faint", "ochre", "wash"};
    private static final String[] LIGHT = {"#fbf8f0", "#1b3658", "#48607c", "#a9b7c6", "#b5761a", "#f6e8cd"};
    private static final String[] DARK = {"#10243c", "#dbe7f4", "#a9bdd3", "#48638a", "#e0a64b", "#33383a"};
    private static final String[] PRINT = {"#ffffff", "#1b3658", "#48607c", "#a9b7c6", "#b5761a", "#f9efdd"};

    private static final String RULES = """
        .pb-ladder text{font-family:"Helvetica Neue",Helvetica,Arial,"Liberation Sans",sans-serif;\
        font-variant-numeric:tabular-nums;fill:@ink}
        .pb-ladder .pb-m{text-anchor:middle}
        .pb-ladder .pb-e{text-anchor:end}
        .pb-ladder .pb-quiet{fill:@soft}
        .pb-ladder .pb-strong{font-weight:bold}
        .pb-ladder .pb-unknown{fill:@ink;font-style:italic}
        .pb-ladder .pb-label{fill:@soft;letter-spacing:.03em}
        .pb-ground{fill:@paper}
        .pb-line{fill:none;stroke:@ink;stroke-width:1.3;stroke-linejoin:round}
        .pb-line.pb-on{fill:@paper}
        .pb-bold{fill:none;stroke:@ink;stroke-width:2.4;stroke-linejoin:round;stroke-linecap:round}
        .pb-hair{fill:none;stroke:@ink;stroke-width:.7}
        .pb-rule{fill:none;stroke:@faint;stroke-width:1}
        .pb-frame{fill:none;stroke:@ink;stroke-width:1}
        .pb-face{stroke:@ink;stroke-width:2}
        .pb-solid,.pb-dot{fill:@ink;stroke:@ink;stroke-width:1.3}
        .pb-halo{stroke:@paper;stroke-width:1.5}
        .pb-cut{stroke:@paper;stroke-width:1}
        .pb-bare{fill:@paper}
        .pb-dash{fill:none;stroke:@ink;stroke-width:1;stroke-dasharray:3 2.5}
        .pb-aid{fill:none;stroke:@ink;stroke-width:1.2;stroke-dasharray:7 2 1.5 2}
        .pb-datum{fill:none;stroke:@ink;stroke-width:.8;stroke-dasharray:10 2.5 2 2.5}
        .pb-rail{fill:none;stroke:@ink;stroke-width:6.5}
        .pb-core{fill:none;stroke:@paper;stroke-width:4}
        .pb-ticks{fill:none;stroke:@ink;stroke-width:4;stroke-dasharray:1.2 3.4}
        .pb-bar{fill:none;stroke:@ink;stroke-width:5}
        .pb-slot{fill:none;stroke:@paper;stroke-width:2.6}
        .pb-wire{fill:none;stroke:@ink;stroke-width:1.3}
        .pb-under{fill:none;stroke:@paper;stroke-width:9}
        .pb-plate{fill:@wash;stroke:@ochre;stroke-width:2.5}
        .pb-arrow{fill:@ochre;stroke:none}
        .pb-hatch{stroke:@soft;stroke-width:.8;stroke-opacity:.6}
        """;

    private LadderStyle() {}

    static String of(LadderSize size, Columns columns) {
        StringBuilder style = new StringBuilder(4096);
        if (size.onScreen()) {
            variables(style, "", LIGHT, "");
            variables(style, "@media (prefers-color-scheme:dark){", DARK, "}");
            variables(style, "@media print{", PRINT, "}");
        }
        appendRules(style, size.onScreen());
        size(style, size, "pb-name", columns.nameSize);
        size(style, size, "pb-small", columns.smallSize);
        size(style, size, "pb-title", columns.titleSize);
        return style.toString();
    }

    private static void variables(StringBuilder to, String before, String[] values, String after) {
        to.append(before).append(".pb-ladder{");
        for (int i = 0; i < NAMES.length; i++) {
            to.append("--pb-").append(NAMES[i]).append(':').append(values[i]).append(';');
        }
        to.append('}').append(after).append('\n');
    }

    private static void size(StringBuilder to, LadderSize of, String kind, double px) {
        to.append(".pb-").append(of.word()).append(" .").append(kind).append("{font-size:");
        Pen.append(to, px);
        to.append("px}\n");
    }

    /** On screen a colour is a variable, after its light value for programs that know no variables. */
    private static void appendRules(StringBuilder to, boolean variables) {
        int from = 0;
        for (int at = RULES.indexOf('@'); at >= 0; at = RULES.indexOf('@', from)) {
            to.append(RULES, from, at);
            from = at + 1 + appendColour(to, at, variables);
        }
        to.append(RULES, from, RULES.length());
    }

    /** Returns the length of the colour's name. */
    private static int appendColour(StringBuilder to, int at, boolean variables) {
        int colour = 0;
        while (!RULES.startsWith(NAMES[colour], at + 1)) {
            colour++;
        }
        to.append(variables ? LIGHT[colour] : PRINT[colour]);
        if (variables) {
            int property = Math.max(RULES.lastIndexOf('{', at), RULES.lastIndexOf(';', at)) + 1;
            to.append(';')
                    .append(RULES, property, at)
                    .append("var(--pb-")
                    .append(NAMES[colour])
                    .append(')');
        }
        return NAMES[colour].length();
    }
}
