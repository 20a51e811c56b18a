package jackwork.drawing;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** XML text to a tree of SVG elements; no entity is expanded and nothing outside the text is fetched. */
final class SvgParser {

    static final int DEEPEST = 100;

    /** Keeps a file of empty tags from filling the memory that its few bytes do not seem to ask for. */
    static final int MOST_ELEMENTS = 200_000;

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";

    /** Attributes that say something about shape, place or paint; the rest (editors' notes) is left unread. */
    private static final Set<String> KEPT = Set.of(
            "id",
            "style",
            "fill",
            "stroke",
            DrawingSvg.SCALE,
            "display",
            "transform",
            "transform-origin",
            "href",
            "d",
            "points",
            "x",
            "y",
            "width",
            "height",
            "viewBox",
            "preserveAspectRatio",
            "cx",
            "cy",
            "r",
            "rx",
            "ry",
            "x1",
            "y1",
            "x2",
            "y2");

    /** Any but the five that XML itself declares, and numbered characters. */
    private static final Pattern ENTITY = Pattern.compile("&(?!amp;|lt;|gt;|quot;|apos;|#)[^;]*;?");

    private final SvgSource source;
    private final XMLStreamReader reader;
    private int elements;

    private SvgParser(SvgSource source, XMLStreamReader reader) {
        this.source = source;
        this.reader = reader;
    }

    static SvgElement parse(SvgSource source) {
        // The JDK's own factory, so that no other parser on the class path brings other habits.
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("refers to something outside the file");
        });
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(source.text()));
            try {
                return new SvgParser(source, reader).tree();
            } catch (XMLStreamException e) {
                String text = String.valueOf(e.getMessage());
                String why = text.substring(text.lastIndexOf("Message: ") + 1).replaceFirst("^essage: ", "");
                throw source.problem(
                        reader.getLocation().getCharacterOffset(),
                        "this is not well-formed XML (" + why + "); open it in the drawing program and save it again");
            }
        } catch (XMLStreamException e) {
            throw source.problem(0, "this is not XML (" + e.getMessage() + "); SVG was expected");
        }
    }

    private SvgElement tree() throws XMLStreamException {
        Deque<SvgElement> open = new ArrayDeque<>();
        SvgElement root = null;
        while (reader.hasNext()) {
            switch (reader.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    SvgElement element = element();
                    if (open.isEmpty()) {
                        root = element;
                    } else {
                        open.peek().children().add(element);
                    }
                    open.push(element);
                    if (open.size() > DEEPEST) {
                        throw element.problem("nested deeper than " + DEEPEST + " elements; ungroup the drawing");
                    }
                }
                case XMLStreamConstants.END_ELEMENT -> open.pop();
                default -> {
                    // Text, comments and instructions have no shape.
                }
            }
        }
        if (root == null || !root.name().equals("svg")) {
            throw source.problem(
                    root == null ? 0 : root.offset(),
                    "the first element is <" + (root == null ? "" : root.name()) + ">, <svg> was expected");
        }
        return root;
    }

    private SvgElement element() {
        int end = reader.getLocation().getCharacterOffset();
        // The reader stands behind the tag; a bare '<' cannot occur inside one, so the last one opens it.
        int start = Math.max(0, source.text().lastIndexOf('<', end - 1));
        if (++elements > MOST_ELEMENTS) {
            throw source.problem(
                    start, "more than " + MOST_ELEMENTS + " elements; keep decoration out of the drawing of the parts");
        }
        refuseEntities(start, end);
        Map<String, String> attributes = new HashMap<>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String key = reader.getAttributeLocalName(i);
            String namespace = reader.getAttributeNamespace(i);
            boolean plain = namespace == null || namespace.isEmpty();
            if (plain && KEPT.contains(key)) {
                attributes.put(key, reader.getAttributeValue(i));
            } else if (XLINK.equals(namespace) && key.equals("href")) {
                attributes.putIfAbsent(key, reader.getAttributeValue(i));
            }
        }
        String namespace = reader.getNamespaceURI();
        boolean ours = namespace == null || namespace.isEmpty() || namespace.equals(SVG);
        String name = ours ? reader.getLocalName() : reader.getPrefix() + ":" + reader.getLocalName();
        return new SvgElement(source, start, name, Map.copyOf(attributes), new ArrayList<>(0));
    }

    /** The parser would leave out an entity that an unread document type declares, and say nothing. */
    private void refuseEntities(int start, int end) {
        Matcher entity = ENTITY.matcher(source.text())
                .region(start, Math.min(end, source.text().length()));
        if (entity.find()) {
            throw source.problem(
                    entity.start(), "entity " + entity.group() + " is not read for safety; save as plain SVG");
        }
    }
}
