package storyrod.piece;

import java.util.List;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;

/** The words for cuts that slant: tapers, bevelled and mitred ends, chamfers. */
final class SlantTypes {
  private static final Key END =
      Key.required("end", new ValueType.FaceName(), "The end that is cut.");
  private static final Key BY =
      Key.optional("by", new ValueType.AngleValue(), "The angle from square; with `long`.");
  private static final Key LONG =
      Key.optional(
          "long", new ValueType.FaceWord(), "The face at which the part keeps its length.");
  private static final Key TO =
      Key.optional(
          "to", new ValueType.FaceName(), "The face of another part at which this end lies.");
  private static final Key LEVEL =
      Key.optional(
          "level",
          new ValueType.LengthValue(true),
          "The height at which this end is level, once the part stands.");

  static final EntryType BEVEL =
      new EntryType(
          "bevel",
          "An end or an edge cut at an angle over the thickness.",
          List.of(END, BY, LONG, TO, LEVEL));

  static final EntryType MITRE =
      new EntryType(
          "mitre", "An end cut at an angle over the width.", List.of(END, BY, LONG, TO, LEVEL));

  static final EntryType TAPER =
      new EntryType(
          "taper",
          "Faces that run off towards an end, evenly from a line across them.",
          List.of(
              Key.required("end", new ValueType.FaceName(), "The end that gets thinner."),
              Key.required(
                  "faces",
                  new ValueType.OneOrMore(new ValueType.FaceWord()),
                  "The faces that run off."),
              Key.required(
                  "from",
                  new ValueType.LengthValue(true),
                  "The place along the part where it starts."),
              Key.required(
                  "off", new ValueType.LengthValue(false), "What each face loses at the end.")));

  static final EntryType CHAMFER =
      new EntryType(
          "chamfer",
          "Edges taken off at 45 degrees.",
          List.of(
              CutTypes.PART,
              Key.required(
                  "edges",
                  new ValueType.OneOrMore(new ValueType.EdgeName()),
                  "The edges, each by its two faces."),
              Key.required(
                  "size", new ValueType.LengthValue(false), "What it takes off each face.")));

  private SlantTypes() {}
}
