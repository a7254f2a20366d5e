package storyrod.planset;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.openpdf.extend.ReplacedElement;
import org.openpdf.extend.ReplacedElementFactory;
import org.openpdf.extend.UserAgentCallback;
import org.openpdf.layout.LayoutContext;
import org.openpdf.render.BlockBox;
import org.openpdf.simple.extend.FormSubmissionListener;
import org.w3c.dom.Element;

/**
 * Puts drawings where the pages have an element of the class {@code drawing}, as vectors, and
 * photos where they have one of the class {@code photo}.
 */
final class DrawingElements implements ReplacedElementFactory {
  private final Pictures pictures;

  DrawingElements(Pictures pictures) {
    this.pictures = pictures;
  }

  @Override
  public @Nullable ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int cssWidth, int cssHeight) {
    Element element = box.getElement();
    if (element == null) {
      return null;
    }
    String name = element.getAttribute("data-name");
    return switch (element.getAttribute("class")) {
      case "drawing" ->
          new Painted(
              named(pictures.drawings(), name), new PlacedPicture.Size(cssWidth, cssHeight));
      case "photo" ->
          new PlacedPhoto(
              named(pictures.photos(), name),
              element.getAttribute("title"),
              new PlacedPicture.Size(cssWidth, cssHeight));
      default -> null;
    };
  }

  private static <T> T named(Map<String, T> all, String name) {
    T found = all.get(name);
    if (found == null) {
      throw new IllegalStateException("bug: no picture " + name);
    }
    return found;
  }

  @Override
  public void reset() {}

  @Override
  public void remove(Element element) {}

  @Override
  public void setFormSubmissionListener(FormSubmissionListener listener) {}
}
