package org.woodyield.show;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** Reads markup back with the JDK's own parser, so that a test sees what a reader's program sees. */
final class Xml {

    static {
        // The module under test does not read java.xml, and must not for a test's sake alone.
        ModuleLayer.boot().findModule("java.xml").ifPresent(Xml.class.getModule()::addReads);
    }

    private Xml() {}

    static Document parse(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new ErrorHandler() {
                @Override
                public void warning(SAXParseException exception) throws SAXParseException {
                    throw exception;
                }

                @Override
                public void error(SAXParseException exception) throws SAXParseException {
                    throw exception;
                }

                @Override
                public void fatalError(SAXParseException exception) throws SAXParseException {
                    throw exception;
                }
            });
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage() + "\n" + text, e);
        }
    }

    static List<Element> all(Node under, String name) {
        List<Element> found = new ArrayList<>();
        collect(under, name, found);
        return found;
    }

    private static void collect(Node node, String name, List<Element> into) {
        if (node instanceof Element element
                && (name.equals("*") || element.getTagName().equals(name))) {
            into.add(element);
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            collect(child, name, into);
        }
    }

    static List<Element> children(Element element) {
        List<Element> found = new ArrayList<>();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                found.add(inner);
            }
        }
        return found;
    }
}
