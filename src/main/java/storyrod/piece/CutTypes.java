package storyrod.piece;

import java.util.List;
import java.util.stream.Stream;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Face;

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
              Key.optional(
                  "through",
                  new ValueType.YesNo(),
                  "Whether they go right through; no if not said."),
              Key.optional("along", new ValueType.AxisName(), "The axis of the row."),
              Key.optional(
                  "step", new ValueType.LengthValue(false), "From one centre to the next."),
              Key.optional("count", new ValueType.Count(1), "How many; one if not said."),
              FOR));

  private static final EntryType NOTCH =
      new EntryType("notch", "A box cut out of a part at its edge.", List.of(PART, X, Y, Z));

  private static final EntryType CUTOUT =
      new EntryType(
          "cutout",
          "A box cut out of the middle of a part, right through.",
          List.of(
              PART,
              X,
              Y,
              Z,
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

  private static final Key END =
      Key.required("end", new ValueType.FaceName(), "The end that is cut.");
  private static final Key BY =
      Key.optional("by", new ValueType.AngleValue(), "The angle from square; with `long`.");
  private static final Key LONG =
      Key.optional(
          "long", new ValueType.Choice(faces()), "The face at which the part keeps its length.");
  private static final Key TO =
      Key.optional(
          "to", new ValueType.FaceName(), "The face of another part at which this end lies.");
  private static final Key LEVEL =
      Key.optional(
          "level",
          new ValueType.LengthValue(true),
          "The height at which this end is level, once the part stands.");

  private static final EntryType BEVEL =
      new EntryType(
          "bevel",
          "An end or an edge cut at an angle over the thickness.",
          List.of(END, BY, LONG, TO, LEVEL));

  private static final EntryType MITRE =
      new EntryType(
          "mitre", "An end cut at an angle over the width.", List.of(END, BY, LONG, TO, LEVEL));

  private static final EntryType TAPER =
      new EntryType(
          "taper",
          "Faces that run off towards an end, evenly from a line across them.",
          List.of(
              Key.required("end", new ValueType.FaceName(), "The end that gets thinner."),
              Key.required(
                  "faces",
                  new ValueType.OneOrMore(new ValueType.Choice(faces())),
                  "The faces that run off."),
              Key.required(
                  "from",
                  new ValueType.LengthValue(true),
                  "The place along the part where it starts."),
              Key.required(
                  "off", new ValueType.LengthValue(false), "What each face loses at the end.")));

  private static final EntryType CHAMFER =
      new EntryType(
          "chamfer",
          "Edges taken off at 45 degrees.",
          List.of(
              PART,
              Key.required(
                  "edges",
                  new ValueType.OneOrMore(new ValueType.Choice(edges())),
                  "The edges, each by its two faces."),
              Key.required(
                  "size", new ValueType.LengthValue(false), "What it takes off each face.")));

  private CutTypes() {}

  private static List<String> faces() {
    return Stream.of(Face.values()).map(Face::word).toList();
  }

  /** Both ways to name each edge, such as {@code front-top} and {@code top-front}. */
  private static List<String> edges() {
    return Stream.of(Face.values())
        .flatMap(
            one ->
                Stream.of(Face.values())
                    .filter(two -> two.axis() != one.axis())
                    .map(two -> one.word() + "-" + two.word()))
        .toList();
  }

  /** The words of all kinds, for the description reader. */
  public static List<EntryType> words() {
    return List.of(BEVEL, CHAMFER, CUTOUT, HOLES, MITRE, NOTCH, TAPER);
  }
}
