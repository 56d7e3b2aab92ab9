package leverwright.face;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads markup with the platform's own XML parser. */
public final class Xml {
    private Xml() {}

    /** Returns the document; an error where it is not well formed. */
    public static Document parse(String markup) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(markup)));
        } catch (Exception broken) {
            throw new AssertionError("not well-formed: " + broken.getMessage(), broken);
        }
    }

    /** Returns every element of the document in order. */
    public static List<Element> elements(Document document) {
        NodeList nodes = document.getElementsByTagName("*");
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** Returns each element's name with the names of its attributes, for example {@code "a href"}. */
    public static List<String> shape(Document document) {
        List<String> shape = new ArrayList<>();
        for (Element element : elements(document)) {
            StringBuilder one = new StringBuilder(element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                one.append(' ').append(element.getAttributes().item(i).getNodeName());
            }
            shape.add(one.toString());
        }
        return shape;
    }
}
