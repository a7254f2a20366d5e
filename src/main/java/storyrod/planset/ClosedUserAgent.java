package storyrod.planset;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import org.openpdf.pdf.ITextOutputDevice;
import org.openpdf.pdf.ITextUserAgent;
import org.openpdf.resource.CSSResource;
import org.openpdf.resource.ImageResource;
import org.openpdf.resource.XMLResource;

/** Opens nothing but the layout's own default style sheet: a page can fetch no address at all. */
final class ClosedUserAgent extends ITextUserAgent {
  private static final String DEFAULT_STYLE = "/resources/css/XhtmlNamespaceHandler.css";

  ClosedUserAgent(ITextOutputDevice device, int dotsPerPixel) {
    super(device, dotsPerPixel);
  }

  @Override
  public CSSResource getCSSResource(String uri) {
    URL allowed = ITextUserAgent.class.getResource(DEFAULT_STYLE);
    if (allowed == null || !allowed.toString().equals(uri)) {
      throw refused(uri);
    }
    try {
      return new CSSResource(allowed.openStream());
    } catch (IOException e) {
      throw new IllegalStateException("bug: no default style sheet", e);
    }
  }

  @Override
  public ImageResource getImageResource(String uri) {
    throw refused(uri);
  }

  @Override
  public XMLResource getXMLResource(String uri) {
    throw refused(uri);
  }

  @Override
  public byte[] getBinaryResource(String uri) {
    throw refused(uri);
  }

  @Override
  protected InputStream resolveAndOpenStream(String uri) {
    throw refused(uri);
  }

  @Override
  protected InputStream openStream(String uri) {
    throw refused(uri);
  }

  private static IllegalStateException refused(String uri) {
    return new IllegalStateException("bug: a page asks for the address " + uri);
  }
}
