package storyrod.description;

import java.util.List;
import storyrod.description.ValueType.EdgeName;
import storyrod.description.ValueType.FaceWord;
import storyrod.description.ValueType.LengthValue;
import storyrod.description.ValueType.Listed;
import storyrod.description.ValueType.OneOrMore;
import storyrod.description.ValueType.RangeValue;

/** The ways in which a part's outline leaves the plain rectangle. */
public final class Outlines {
  private static final LengthValue LENGTH = new LengthValue(false);
  private static final LengthValue COORDINATE = new LengthValue(true);
  private static final RangeValue RANGE = new RangeValue();
  private static final FaceWord EDGE = new FaceWord();

  /** A point of a path, and how the path comes to it. */
  public static final EntryType POINT =
      new EntryType(
          "point",
          "A point of a path; the path comes to it straight, unless it has a rise or a through.",
          List.of(
              Key.optional("x", COORDINATE, "Its place on x."),
              Key.optional("y", COORDINATE, "Its place on y."),
              Key.optional("z", COORDINATE, "Its place on z."),
              Key.optional(
                  "rise",
                  COORDINATE,
                  "The path comes in an arc that bows out of the shape by so much; in if below zero."),
              Key.optional(
                  "through", new ValueType.Point(), "The path comes in an arc through here.")));

  private static final EntryType HOLLOW =
      new EntryType(
          "hollow",
          "An arc cut into an edge.",
          List.of(
              Key.required("edge", EDGE, "The edge."),
              Key.optional("x", RANGE, "From where to where; all along if left out."),
              Key.optional("y", RANGE, "From where to where; all along if left out."),
              Key.optional("z", RANGE, "From where to where; all along if left out."),
              Key.required("rise", LENGTH, "How deep it goes in the middle.")));

  private static final EntryType CROWN =
      new EntryType(
          "crown",
          "An edge that is full in the middle and falls to both ends in an arc.",
          List.of(
              Key.required("edge", EDGE, "The edge."),
              Key.required("rise", LENGTH, "How much lower the ends are than the middle.")));

  private static final EntryType ROUND =
      new EntryType(
          "round",
          "Rounded corners.",
          List.of(
              Key.optional(
                  "corners", new OneOrMore(new EdgeName()), "Which; all four if left out."),
              Key.required("radius", LENGTH, "The radius.")));

  private static final EntryType PATH =
      new EntryType(
          "path",
          "The whole outline, point by point; it closes by itself.",
          List.of(Key.required("points", new Listed(POINT), "Its points, all round.")));

  /** All of them, in the order of their names. */
  public static final List<EntryType> ALL = List.of(CROWN, HOLLOW, PATH, ROUND);

  private Outlines() {}
}
