package putback.app.wheels;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Writes the elements of a drawing on warm white paper in ink blue, with one ochre; on a dark page as a blueprint. Lengths in px. */
final class Drawing {
    /** Width of what a telephone shows, px. */
    static final double NARROW = 358;

    private static final Pattern COLOUR = Pattern.compile("(fill|stroke):@([a-z-]+)");
    private static final Map<String, String> LIGHT = Map.of(
            "paper", "#fbf8f0",
            "ink", "#1b3658",
            "soft", "#48607c",
            "faint", "#a9b7c6",
            "ochre", "#b5761a",
            "ochre-ink", "#85540d");

    private static final String STYLE = """
            <style>
            .wh text{font-family:"Helvetica Neue",Helvetica,Arial,"Liberation Sans",sans-serif;\
            font-variant-numeric:tabular-nums;fill:@ink;font-size:13px}
            .wh .quiet{fill:@soft;font-size:12px}
            .wh .title{font-weight:bold;font-size:17px}
            .wh .name{font-weight:bold}
            .wh .then{fill:@ochre-ink}
            .wh .mid{text-anchor:middle}
            .wh .end{text-anchor:end}
            .wh .paper{fill:@paper}
            .wh .line{fill:none;stroke:@ink;stroke-width:1.4;stroke-linejoin:round}
            .wh .bold{fill:none;stroke:@ink;stroke-width:3;stroke-linecap:round;stroke-linejoin:round}
            .wh .part{fill:@paper;stroke:@ink;stroke-width:1.6;stroke-linejoin:round}
            .wh .hair{fill:none;stroke:@ink;stroke-width:.7}
            .wh .rule{fill:none;stroke:@faint;stroke-width:1}
            .wh .datum{fill:none;stroke:@soft;stroke-width:.9;stroke-dasharray:12 3 2 3}
            .wh .ochre-dash{fill:none;stroke:@ochre;stroke-width:1.8;stroke-dasharray:6 3}
            .wh .pin{fill:@paper;stroke:@ink;stroke-width:1.4}
            </style>
            """;

    private final StringBuilder svg = new StringBuilder(8000);

    /**
     * @param label what it shows, for whoever cannot see it
     */
    Drawing(double width, double height, String label, DrawnFor looked) {
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"wh\" role=\"img\" aria-label=\"")
                .append(escaped(label));
        svg.append("\" viewBox=\"0 0 ").append(figure(width)).append(' ').append(figure(height));
        svg.append("\" width=\"").append(figure(width)).append("\" height=\"").append(figure(height));
        svg.append("\">\n").append(style(looked));
        svg.append("<rect class=\"paper\" width=\"100%\" height=\"100%\"/>\n");
    }

    /** On a page a colour is the page's own, after its light value for programs that know no variables. */
    private static String style(DrawnFor looked) {
        return COLOUR.matcher(STYLE).replaceAll(found -> {
            String light = LIGHT.getOrDefault(found.group(2), "");
            String plain = found.group(1) + ":" + light;
            return looked == DrawnFor.FILE
                    ? plain
                    : plain + ";" + found.group(1) + ":var(--" + found.group(2) + "," + light + ")";
        });
    }

    /** Words in lines of so many letters; a longer word is cut. */
    static List<String> lines(String words, int letters) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.strip().split("\\s+", -1)) {
            String rest = word;
            while (line.length() + rest.length() + 1 > letters) {
                int room = line.isEmpty() ? letters : 0;
                line.append(rest, 0, Math.min(room, rest.length()));
                rest = rest.substring(Math.min(room, rest.length()));
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() || rest.isEmpty() ? "" : " ").append(rest);
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    void line(String kind, double x1, double y1, double x2, double y2) {
        path(kind, false, x1, y1, x2, y2);
    }

    /** A run of points: x1, y1, x2, y2 ... */
    void path(String kind, boolean closed, double... points) {
        svg.append("<path class=\"").append(kind).append("\" d=\"");
        for (int i = 0; i < points.length; i += 2) {
            svg.append(i == 0 ? 'M' : 'L').append(figure(points[i])).append(' ').append(figure(points[i + 1]));
        }
        svg.append(closed ? "Z\"/>\n" : "\"/>\n");
    }

    void circle(String kind, double x, double y, double radius) {
        svg.append("<circle class=\"").append(kind).append("\" cx=\"").append(figure(x));
        svg.append("\" cy=\"")
                .append(figure(y))
                .append("\" r=\"")
                .append(figure(radius))
                .append("\"/>\n");
    }

    void text(String kind, double x, double y, String words) {
        svg.append("<text class=\"").append(kind).append("\" x=\"").append(figure(x));
        svg.append("\" y=\"")
                .append(figure(y))
                .append("\">")
                .append(escaped(words))
                .append("</text>\n");
    }

    /** A box turned clockwise on the screen about its middle. */
    void turnedBox(String kind, double x, double y, double width, double height, double degrees) {
        svg.append("<rect class=\"").append(kind).append("\" x=\"").append(figure(x - width / 2));
        svg.append("\" y=\"")
                .append(figure(y - height / 2))
                .append("\" width=\"")
                .append(figure(width));
        svg.append("\" height=\"").append(figure(height)).append("\" rx=\"6\" transform=\"rotate(");
        svg.append(figure(degrees))
                .append(' ')
                .append(figure(x))
                .append(' ')
                .append(figure(y))
                .append(")\"/>\n");
    }

    String done() {
        return svg + "</svg>\n";
    }

    static String figure(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        String plain = text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
        return plain.equals("-0") ? "0" : plain;
    }

    private static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '&' -> safe.append("&amp;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(c < ' ' || Character.getType(c) == Character.SURROGATE ? '?' : c);
            }
        });
        return safe.toString();
    }
}
