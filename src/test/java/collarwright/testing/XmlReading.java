package collarwright.testing;

import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Walks through XML text, element by element. */
final class XmlReading {
    private XmlReading() {}

    /**
     * Walks once through.
     *
     * @param xml the text
     * @param opened called at each start tag with name and attributes
     * @param closed called at each end tag with the name
     */
    static void walk(String xml, BiConsumer<String, Map<String, String>> opened, Consumer<String> closed) {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(xml));
            while (reader.hasNext()) {
                int event = reader.next();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    opened.accept(reader.getLocalName(), attributes(reader));
                } else if (event == XMLStreamConstants.END_ELEMENT) {
                    closed.accept(reader.getLocalName());
                }
            }
        } catch (XMLStreamException e) {
            throw new AssertionError("not XML: " + xml, e);
        }
    }

    private static Map<String, String> attributes(XMLStreamReader reader) {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
        }
        return attributes;
    }

    /** The numbers in a text, parted at blanks. */
    static double[] numbers(String text) {
        String[] words = text.strip().split("\\s+");
        double[] numbers = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            numbers[i] = Double.parseDouble(words[i]);
        }
        return numbers;
    }
}
