package storyrod.planset;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.EntityResolver;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads the templates' text into a tree; document types and entities of its own are refused. */
final class Xhtml {
  private static final String NO_XHTML = "bug: the templates made no XHTML: ";

  private Xhtml() {}

  /** What is wrong with a text, out of the message of {@link #parse}. */
  static String fault(String message) {
    return message.replace(NO_XHTML, "what they make is no XHTML: ");
  }

  /**
   * The tree of a well-formed text.
   *
   * @throws UnprintableTextException if it holds a character that XML forbids, which can only be
   *     the user's
   */
  static Document parse(String text) {
    text.codePoints()
        .filter(c -> !allowed(c))
        .findFirst()
        .ifPresent(
            c -> {
              throw new UnprintableTextException(c, around(text, text.indexOf(c)));
            });
    try {
      return builder().parse(new InputSource(new StringReader(text)));
    } catch (SAXException e) {
      throw new IllegalStateException(NO_XHTML + e.getMessage(), e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The characters of XML 1.0, production 2. */
  private static boolean allowed(int c) {
    return c == 9
        || c == 10
        || c == 13
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }

  private static String around(String text, int at) {
    int from = Math.max(text.lastIndexOf('>', at), text.lastIndexOf('"', at)) + 1;
    int to = text.indexOf('<', at);
    return text.substring(from, to < 0 ? text.length() : to).strip();
  }

  private static DocumentBuilder builder() {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
      factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
      factory.setFeature("http://apache.org/xml/features/dom/defer-node-expansion", false);
      factory.setExpandEntityReferences(false);
      factory.setXIncludeAware(false);
      DocumentBuilder builder = factory.newDocumentBuilder();
      EntityResolver refuse =
          (publicId, systemId) -> {
            throw new SAXException("bug: the templates ask for " + systemId);
          };
      builder.setEntityResolver(refuse);
      builder.setErrorHandler(null);
      return builder;
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("bug: the XML parser cannot be closed off", e);
    }
  }
}
