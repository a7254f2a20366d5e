package storyrod.piece;

import java.util.List;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;

/** The words for cuts that the description asks for itself, beside those that joints make. */
public final class CutTypes {
  private static final Key FOR =
      Key.optional("for", new ValueType.ItemName(), "The item of hardware it is for.");
  private static final Key PART =
      Key.required("in", new ValueType.PartName(), "The part that is cut.");
  private static final Key X =
      Key.optional(
          "x", new ValueType.RangeValue(), "From where to where; right through if left out.");
  private static final Key Y =
      Key.optional(
          "y", new ValueType.RangeValue(), "From where to where; right through if left out.");
  private static final Key Z =
      Key.optional(
          "z", new ValueType.RangeValue(), "From where to where; right through if left out.");

  private static final EntryType HOLES =
      new EntryType(
          "holes",
          "Round holes, one or a row with equal spacing, in one face or the same in several.",
          List.of(
              Key.required(
                  "in",
                  new ValueType.OneOrMore(new ValueType.FaceName()),
                  "The faces from which they are drilled."),
              Key.required("at", new ValueType.Point(), "The first hole's centre."),
              Key.required("diameter", new ValueType.LengthValue(false), "The drill's diameter."),
              Key.optional(
                  "depth", new ValueType.LengthValue(false), "How deep; or say `through: yes`."),
              Key.optional("through", new ValueType.YesNo(), "Whether they go right through.")
                  .standard("no"),
              Key.optional("along", new ValueType.AxisName(), "The axis of the row."),
              Key.optional(
                  "step", new ValueType.LengthValue(false), "From one centre to the next."),
              Key.optional("count", new ValueType.Count(1), "How many.").standard("1"),
              FOR));

  private static final EntryType NOTCH =
      new EntryType("notch", "A box cut out of a part at its edge.", List.of(PART, X, Y, Z));

  private static final EntryType CUTOUT =
      new EntryType(
          "cutout",
          "A box cut out of the middle of a part, right through.",
          List.of(PART, X, Y, Z));

  private CutTypes() {}

  /** The words of all kinds, for the description reader. */
  public static List<EntryType> words() {
    return List.of(CUTOUT, HOLES, NOTCH);
  }
}
