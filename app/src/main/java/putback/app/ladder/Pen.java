package putback.app.ladder;

/** Writes SVG elements. Lengths are in px and written with at most two decimals. */
final class Pen {
    private final StringBuilder out;

    Pen(int capacity) {
        out = new StringBuilder(capacity);
    }

    Pen raw(String markup) {
        out.append(markup);
        return this;
    }

    Pen escaped(String text) {
        escape(out, text);
        return this;
    }

    Pen number(double value) {
        append(out, value);
        return this;
    }

    /** At most two decimals, no exponent, no trailing zeros. */
    static void append(StringBuilder to, double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths < 0) {
            to.append('-');
            hundredths = -hundredths;
        }
        to.append(hundredths / 100);
        long rest = hundredths % 100;
        if (rest != 0) {
            to.append('.').append(rest / 10);
            if (rest % 10 != 0) {
                to.append(rest % 10);
            }
        }
    }

    Pen attribute(String name, double value) {
        out.append(' ').append(name).append("=\"");
        append(out, value);
        out.append('"');
        return this;
    }

    Pen attribute(String name, String value) {
        out.append(' ').append(name).append("=\"");
        escape(out, value);
        out.append('"');
        return this;
    }

    void group(String kind) {
        out.append("<g class=\"").append(kind).append("\">");
    }

    void end() {
        out.append("</g>\n");
    }

    void line(String kind, double x1, double y1, double x2, double y2) {
        raw("<line class=\"").raw(kind).raw("\"");
        attribute("x1", x1)
                .attribute("y1", y1)
                .attribute("x2", x2)
                .attribute("y2", y2)
                .raw("/>");
    }

    void rect(String kind, double x, double y, double width, double height) {
        raw("<rect class=\"").raw(kind).raw("\"").attribute("x", x).attribute("y", y);
        attribute("width", width).attribute("height", height).raw("/>");
    }

    void circle(String kind, double x, double y, double radius) {
        raw("<circle class=\"").raw(kind).raw("\"").attribute("cx", x).attribute("cy", y);
        attribute("r", radius).raw("/>");
    }

    void path(String kind, Track track) {
        raw("<path class=\"").raw(kind).raw("\" d=\"").raw(track.text()).raw("\"/>");
    }

    /** Text that starts, ends or is centred at x; kind names its size and face. */
    void text(String kind, double x, double y, Anchor anchor, String text) {
        if (text.isEmpty()) {
            return;
        }
        raw("<text class=\"").raw(kind).raw(anchor.suffix).raw("\"");
        attribute("x", x).attribute("y", y).raw(">");
        escape(out, text);
        raw("</text>");
    }

    /** Text that reads upwards, centred on a point of its middle line. */
    void upward(String kind, double x, double y, String text) {
        raw("<text class=\"")
                .raw(kind)
                .raw(" pb-m\" transform=\"translate(")
                .number(x)
                .raw(" ")
                .number(y);
        raw(") rotate(-90)\">");
        escape(out, text);
        raw("</text>");
    }

    enum Anchor {
        START(""),
        MIDDLE(" pb-m"),
        END(" pb-e");

        private final String suffix;

        Anchor(String suffix) {
            this.suffix = suffix;
        }
    }

    /** Escapes for text and attribute; what XML cannot hold becomes a replacement character. */
    static void escape(StringBuilder to, String text) {
        for (int i = 0; i < text.length(); ) {
            int code = text.codePointAt(i);
            i += Character.charCount(code);
            switch (code) {
                case '<' -> to.append("&lt;");
                case '>' -> to.append("&gt;");
                case '&' -> to.append("&amp;");
                case '"' -> to.append("&quot;");
                default -> to.appendCodePoint(allowed(code) ? code : 0xfffd);
            }
        }
    }

    private static boolean allowed(int code) {
        return code == '\t' || code >= 0x20 && code < 0xd800 || code >= 0xe000 && code < 0xfffe || code >= 0x10000;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
