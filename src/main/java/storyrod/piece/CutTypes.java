package storyrod.piece;

import java.util.List;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.Outlines;
import storyrod.description.ValueType;

/** The words for cuts that the description asks for itself, beside those that joints make. */
public final class CutTypes {
  private static final Key FOR =
      Key.optional("for", new ValueType.ItemName(), "The item of hardware it is for.");
  static final Key PART = Key.required("in", new ValueType.PartName(), "The part that is cut.");
  private static final Key X =
      Key.optional(
          "x", new ValueType.RangeValue(), "From where to where; right through if left out.");
  private static final Key Y =
      Key.optional(
          "y", new ValueType.RangeValue(), "From where to where; right through if left out.");
  private static final Key Z =
      Key.optional(
          "z", new ValueType.RangeValue(), "From where to where; right through if left out.");

  private static final Key RADIUS =
      Key.optional("radius", new ValueType.LengthValue(false), "The radius of its inner corners.");
  private static final Key POINTS =
      Key.optional(
          "points",
          new ValueType.Listed(Outlines.POINT),
          "Its path, if it is no box; it closes by itself.");

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
      new EntryType(
          "notch",
          "A box, or any path, cut out of a part at its edge.",
          List.of(PART, X, Y, Z, RADIUS, POINTS));

  private static final EntryType CUTOUT =
      new EntryType(
          "cutout",
          "A box, or any path, cut out of the middle of a part, right through.",
          List.of(
              PART,
              X,
              Y,
              Z,
              RADIUS,
              POINTS,
              Key.optional(
                  "kept-as",
                  new ValueType.PartName(),
                  "The part that the piece cut out becomes; its grain runs through."),
              Key.optional(
                  "method",
                  new ValueType.Choice(KeptCutout.Method.words()),
                  "How a kept piece is cut out."),
              Key.optional(
                  "gap",
                  new ValueType.Allowance(),
                  "With `saw`: what is trimmed off each side across the grain."),
              Key.optional(
                  "cutter",
                  new ValueType.LengthValue(false),
                  "With `router`: the cutter's diameter, which is the gap all round."),
              Key.optional(
                  "kerf",
                  new ValueType.LengthValue(false),
                  "With `laser`: what it takes; with `saw`: the blade's, if not the shop's.")));

  private static final EntryType SLOT =
      new EntryType(
          "slot",
          "An opening with round ends, right through, such as a hand hold.",
          List.of(
              PART,
              Key.required("at", new ValueType.Point(), "Its middle."),
              Key.required("along", new ValueType.AxisName(), "The axis along which it runs."),
              Key.required("length", new ValueType.LengthValue(false), "How long, over all."),
              Key.required(
                  "width",
                  new ValueType.LengthValue(false),
                  "How wide, twice the radius of its ends."),
              FOR));

  private static final EntryType ROUNDOVER =
      new EntryType(
          "roundover",
          "Edges rounded with a router bit.",
          List.of(
              PART,
              Key.optional(
                  "edges",
                  new ValueType.OneOrMore(new ValueType.EdgeName()),
                  "The edges, each by its two faces; or say `around`."),
              Key.optional(
                  "around",
                  new ValueType.FaceWord(),
                  "A face, of which all edges are rounded, curved ones too."),
              Key.required("radius", new ValueType.LengthValue(false), "The bit's radius.")));

  private CutTypes() {}

  /** The words of all kinds, for the description reader. */
  public static List<EntryType> words() {
    return List.of(
        SlantTypes.BEVEL,
        SlantTypes.CHAMFER,
        CUTOUT,
        HOLES,
        SlantTypes.MITRE,
        NOTCH,
        ROUNDOVER,
        SLOT,
        SlantTypes.TAPER);
  }
}
