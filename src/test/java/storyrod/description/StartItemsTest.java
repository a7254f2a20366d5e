package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.measure.Length;

/** The tool's own start set of hardware, read as the items of a project are. */
class StartItemsTest {
  private static final String HEAD =
      """
      project: Start set
      stock:
        ash: {kind: solid, species: "ash, white", thickness: 20}
      parts:
        board: {stock: ash, x: 0 to 300, y: 0 to 100, z: 0 to 20, grain: x}
      """;

  private static String text() throws IOException {
    try (InputStream in = Description.class.getResourceAsStream("/storyrod/hardware/items.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Map<String, ItemEntry> items() throws IOException {
    Diagnostics diagnostics = new Diagnostics();
    Vocabulary words = new Vocabulary(List.of(), List.of(), List.of());
    return new DescriptionReader(words)
        .read(new SourceText("items.yaml", HEAD + text()), diagnostics)
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(diagnostics.sorted())))
        .items();
  }

  @Test
  void everyKindButOtherHasAnEntry() throws IOException {
    List<ItemKind> kinds = items().values().stream().map(ItemEntry::kind).distinct().toList();
    for (ItemKind kind : ItemKind.values()) {
      assertTrue(kind == ItemKind.OTHER || kinds.contains(kind), kind + " is missing");
    }
  }

  @Test
  void everyItemHasTheSizesOfItsKindAndNoPrice() throws IOException {
    items()
        .forEach(
            (name, item) -> {
              assertTrue(item.price().isEmpty(), name);
              assertTrue(needed(item).stream().allMatch(Optional::isPresent), name);
            });
  }

  private static List<Optional<Length>> needed(ItemEntry item) {
    return switch (item.kind()) {
      case WOOD_SCREW, POCKET_SCREW, BRAD -> List.of(item.length(), item.diameter());
      case SLIDE -> List.of(item.length(), item.sideClearance());
      case UNDER_SLIDE ->
          List.of(
              item.length(),
              item.sideClearance(),
              item.sizes().bottomClearance(),
              item.sizes().notch());
      case CONCEALED_HINGE ->
          List.of(item.sizes().cupDiameter(), item.sizes().cupDepth(), item.sizes().cupEdge());
      case BUTT_HINGE ->
          List.of(item.length(), item.sizes().leafWidth(), item.sizes().leafThickness());
      case PULL -> List.of(item.sizes().centres());
      case SHELF_PIN, PLUG, WASHER -> List.of(item.diameter());
      case ROTATING_FASTENER ->
          List.of(item.diameter(), item.sizes().thickness(), item.sizes().travel());
      case TOP_FASTENER ->
          List.of(item.sizes().width(), item.sizes().tongue(), item.sizes().travel());
      case BUTTON ->
          List.of(
              item.length(),
              item.sizes().width(),
              item.sizes().thickness(),
              item.sizes().tongue(),
              item.sizes().tongueThickness(),
              item.sizes().travel());
      case DOWEL -> List.of(item.diameter(), item.length());
      case BISCUIT ->
          List.of(
              item.length(),
              item.sizes().width(),
              item.sizes().thickness(),
              item.sizes().slotDepth());
      case LOOSE_TENON -> List.of(item.length(), item.sizes().width(), item.sizes().thickness());
      case KNOB, CATCH, FOOT, LEVELLING_FOOT, ANTI_TIP_STRAP, OTHER -> List.of();
    };
  }

  /** ASME B18.6.1: shank = 0.060 in + 0.013 in x number; both end-points as in wood-screws.csv. */
  @Test
  void woodScrewsHaveTheShankOfTheirNumber() throws IOException {
    Map<String, ItemEntry> items = items();
    for (int number = 6; number <= 10; number++) {
      Length shank = Length.parse("0." + (60 + 13 * number + 1000 + " in").substring(1));
      String start = "wood-screw-" + number + "-";
      List<ItemEntry> same =
          items.values().stream()
              .filter(item -> item.name().startsWith(start) && item.title().contains("#"))
              .toList();
      assertTrue(same.size() > 2, start);
      same.forEach(item -> assertEquals(Optional.of(shank), item.diameter(), item.name()));
    }
  }

  /** Names such as wood-screw-8-1-1-4 say the length: 1 1/4 in. */
  @Test
  void titlesSayTheLength() throws IOException {
    ItemEntry screw = items().get("wood-screw-8-1-1-4");
    assertEquals("Wood screw #8 x 1 1/4 in", screw.title());
    assertEquals(Optional.of(Length.parse("1 1/4 in")), screw.length());
    assertEquals(Optional.of(Length.inches(14)), items().get("slide-14").length());
    assertEquals(Optional.of(Length.mm(550)), items().get("slide-550-mm").length());
  }
}
