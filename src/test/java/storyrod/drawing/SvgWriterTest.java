package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgWriterTest {
  static Document parse(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
  }

  static List<String> texts(Document svg) {
    var nodes = svg.getElementsByTagNameNS("http://www.w3.org/2000/svg", "text");
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(nodes.item(i).getTextContent());
    }
    return texts;
  }

  @Test
  void pageIsInMillimetresAndTheViewInHundredths() throws Exception {
    Element root = parse(SvgWriter.write(Samples.everything())).getDocumentElement();
    assertEquals("120mm", root.getAttribute("width"));
    assertEquals("90mm", root.getAttribute("height"));
    assertEquals("0 0 12000 9000", root.getAttribute("viewBox"));
    assertEquals("sample", root.getFirstChild().getTextContent());
  }

  @Test
  void textStaysTextInItsOwnFace() throws Exception {
    String svg = SvgWriter.write(Samples.everything());
    List<String> texts = texts(parse(svg));
    assertTrue(texts.contains("AB"), texts.toString());
    assertTrue(String.join("", texts).contains("27 23/32"), texts.toString());
    assertTrue(svg.contains("font-family: \"Roboto Bold\",Roboto"));
    assertTrue(svg.contains("font-family: \"Roboto\",Roboto"));
    assertTrue(svg.contains("font-family: \"DejaVu Sans\",sans-serif"));
    assertFalse(svg.contains("Dialog"));
  }

  @Test
  void aGroupHasItsId() throws Exception {
    Document svg = parse(SvgWriter.write(Samples.everything()));
    Element group = (Element) svg.getElementsByTagName("g").item(0);
    assertEquals("case.side", group.getAttribute("id"));
    assertEquals("S Side & \"more\"", group.getAttribute("aria-label"));
    assertEquals("S", group.getAttribute("data-mark"));
    assertEquals("Side & \"more\"", group.getAttribute("data-name"));
    assertTrue(group.getElementsByTagName("path").getLength() >= 2);
  }

  @Test
  void twoRunsGiveEqualText() {
    assertEquals(SvgWriter.write(Samples.everything()), SvgWriter.write(Samples.everything()));
  }

  /** Held to arithmetic in whole decimals, near halves of the last digit too. */
  @Test
  void numberIsRoundedAsWrittenOut() {
    Random random = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      double near = random.nextInt(-2000, 2000) / 200.0 + random.nextInt(-2, 3) * 1e-9;
      for (double value : new double[] {near, Math.nextUp(near), near * 1e3, near * 1e12}) {
        BigDecimal exact = new BigDecimal(value).setScale(2, RoundingMode.HALF_EVEN);
        String told = exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
        assertEquals(told, SvgWriter.number(value));
      }
    }
  }
}
