package putback.app.ladder;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A picture read back, with the places of its texts. */
final class Drawn {
    /** Lettering is no higher than this above its base line, nor lower than the second figure below it. */
    private static final double ASCENT = 0.74;

    private static final double DESCENT = 0.22;

    private final Document document;
    private final Columns columns;

    private Drawn(Document document, Columns columns) {
        this.document = document;
        this.columns = columns;
    }

    /** Fails where the text is no XML. */
    static Drawn of(String svg, LadderSize size) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Document document =
                    factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
            return new Drawn(document, new Columns(size.wide()));
        } catch (Exception fault) {
            throw new AssertionError("not XML: " + fault.getMessage(), fault);
        }
    }

    /** Where a text stands. */
    record Box(String text, double left, double top, double right, double bottom) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    Element root() {
        return document.getDocumentElement();
    }

    List<Element> all(String tag) {
        NodeList found = document.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    List<String> texts() {
        return all("text").stream().map(Element::getTextContent).toList();
    }

    long count(String tag, String kind) {
        return all(tag).stream()
                .filter(element ->
                        List.of(element.getAttribute("class").split(" ", -1)).contains(kind))
                .count();
    }

    List<Box> boxes() {
        return all("text").stream().map(this::box).toList();
    }

    private Box box(Element text) {
        String kinds = text.getAttribute("class");
        double size = kinds.contains("pb-title")
                ? columns.titleSize
                : kinds.contains("pb-name") ? columns.nameSize : columns.smallSize;
        String content = text.getTextContent();
        double width = Measure.width(content, size);
        if (text.hasAttribute("transform")) {
            return upward(text, content, width, size);
        }
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        double left = kinds.contains("pb-e") ? x - width : kinds.contains("pb-m") ? x - width / 2 : x;
        return new Box(content, left, y - ASCENT * size, left + width, y + DESCENT * size);
    }

    private static Box upward(Element text, String content, double width, double size) {
        String transform = text.getAttribute("transform");
        String[] at = transform
                .substring("translate(".length(), transform.indexOf(')'))
                .split(" ", -1);
        double x = Double.parseDouble(at[0]);
        double y = Double.parseDouble(at[1]);
        return new Box(content, x - ASCENT * size, y - width / 2, x + DESCENT * size, y + width / 2);
    }

    double width() {
        return columns.width;
    }
}
