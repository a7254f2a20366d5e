package storyrod.description;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import storyrod.description.Library.Found;

/** The sub-assemblies that come with the tool: descriptions like any other, one file each. */
public final class Shipped {
  /** Their names, in the order in which the reference tells of them. */
  public static final List<String> NAMES =
      List.of(
          "carcase",
          "face-frame",
          "drawer-box",
          "panel-door",
          "slab-door",
          "adjustable-shelf",
          "plinth",
          "feet",
          "leg-and-apron",
          "slab-top",
          "breadboard-top");

  private Shipped() {}

  static Found find(String name) {
    return NAMES.contains(name)
        ? Found.of(new SourceText(name, text(name)))
        : Found.none(
            "there is no sub-assembly '" + Quote.of(name) + "' that comes with the tool",
            Names.suggest(name, NAMES.stream())
                + "; for a file of your own write its path, such as `door.yaml`");
  }

  /** The text of one of them. */
  public static String text(String name) {
    try (InputStream stream =
        Shipped.class.getResourceAsStream("/storyrod/subassembly/" + name + ".yaml")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
