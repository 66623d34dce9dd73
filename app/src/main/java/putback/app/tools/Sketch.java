package putback.app.tools;

/** Writes the elements of a small SVG picture. Lengths in px. */
final class Sketch {
    private final StringBuilder svg = new StringBuilder(6000);

    Sketch raw(String markup) {
        svg.append(markup);
        return this;
    }

    void path(String kind, Outline outline) {
        svg.append("<path class=\"")
                .append(kind)
                .append("\" d=\"")
                .append(outline)
                .append("\"/>");
    }

    void line(String kind, double x1, double y1, double x2, double y2) {
        path(kind, new Outline().from(x1, y1).to(x2, y2));
    }

    void box(String kind, double x, double y, double width, double height) {
        path(kind, new Outline().box(x, y, width, height));
    }

    /**
     * @param kind class of the text; empty for none
     * @param words plain: nothing in them needs escaping
     */
    void text(double x, double y, String kind, String words) {
        svg.append("<text x=\"").append(Outline.figure(x)).append("\" y=\"").append(Outline.figure(y));
        svg.append(kind.isEmpty() ? "\">" : "\" class=\"" + kind + "\">")
                .append(words)
                .append("</text>");
    }

    @Override
    public String toString() {
        return svg.toString();
    }
}
