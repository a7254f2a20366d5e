package storyrod.description;

import java.util.Arrays;
import java.util.List;
import storyrod.description.ValueType.AxisName;
import storyrod.description.ValueType.Choice;
import storyrod.description.ValueType.Count;
import storyrod.description.ValueType.FaceName;
import storyrod.description.ValueType.ItemName;
import storyrod.description.ValueType.LengthValue;
import storyrod.description.ValueType.OneOrMore;
import storyrod.description.ValueType.PartName;
import storyrod.description.ValueType.RangeValue;
import storyrod.description.ValueType.YesNo;
import storyrod.geometry.Face;

/** Joints, cuts and verbs as later stages bring them, enough for the tests of the reader. */
final class TestVocabulary {
  private static final FaceName FACE = new FaceName();
  private static final PartName PART = new PartName();
  private static final ItemName ITEM = new ItemName();
  private static final RangeValue RANGE = new RangeValue();
  private static final LengthValue LENGTH = new LengthValue(false);

  static final Vocabulary ALL =
      new Vocabulary(
          joints(),
          cuts(),
          List.of(
              "choose",
              "mill",
              "size",
              "mark",
              "cut",
              "drill",
              "sand",
              "fit",
              "mount",
              "test",
              "finish",
              "dry-fit",
              "trial-fit",
              "trim"));

  private TestVocabulary() {}

  private static List<EntryType> joints() {
    return List.of(
        kind("dado", must("end", FACE), must("into", PART), must("depth", LENGTH), glue()),
        kind("groove", must("end", FACE), must("into", PART), must("depth", LENGTH), glue()),
        kind("rabbet", must("end", FACE), must("into", PART), must("depth", LENGTH), glue()),
        kind("butt", must("end", FACE), must("to", PART), glue()),
        kind(
            "pocket-screws",
            must("end", FACE),
            must("into", PART),
            must("from", faces()),
            must("count", new Count(1)),
            must("screw", ITEM),
            glue()),
        kind(
            "screws",
            must("through", FACE),
            must("into", PART),
            must("count", new Count(1)),
            must("screw", ITEM),
            glue()),
        kind(
            "brads",
            must("through", FACE),
            must("into", PART),
            must("count", new Count(1)),
            must("brad", ITEM),
            glue()),
        kind(
            "fastened-top",
            must("top", FACE),
            must("rail", FACE),
            must("slot-from-top", LENGTH),
            may("slot-depth", LENGTH),
            must("fastener", ITEM),
            must("screw", ITEM),
            must("count", new Count(1))));
  }

  private static Choice faces() {
    return new Choice(Arrays.stream(Face.values()).map(Face::word).toList());
  }

  private static List<EntryType> cuts() {
    return List.of(
        kind(
            "holes",
            must("in", new OneOrMore(FACE)),
            must("at", new ValueType.Point()),
            may("along", new AxisName()),
            may("step", LENGTH),
            may("count", new Count(1)),
            must("diameter", LENGTH),
            may("depth", LENGTH),
            may("through", new YesNo()),
            may("for", ITEM)),
        kind("notch", must("in", PART), may("x", RANGE), may("y", RANGE), may("z", RANGE)),
        kind("cutout", must("in", PART), may("x", RANGE), may("y", RANGE), may("z", RANGE)));
  }

  private static EntryType kind(String name, Key... keys) {
    return new EntryType(name, "A " + name + ".", List.of(keys));
  }

  private static Key must(String name, ValueType type) {
    return Key.required(name, type, "");
  }

  private static Key may(String name, ValueType type) {
    return Key.optional(name, type, "");
  }

  private static Key glue() {
    return may("glue", new YesNo());
  }
}
