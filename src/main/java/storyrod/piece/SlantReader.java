package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.FaceRef;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;

/** Reads tapers and chamfers, and says what is wrong with them. */
final class SlantReader {
  private final Map<String, Blank> blanks;
  private final LengthFormat format;
  private final Diagnostics diagnostics;

  SlantReader(Map<String, Blank> blanks, LengthFormat format, Diagnostics diagnostics) {
    this.blanks = blanks;
    this.format = format;
    this.diagnostics = diagnostics;
  }

  List<Slant> tapers(Entry entry) {
    FaceRef end = entry.face("end");
    Blank blank = blanks.get(end.part());
    if (!runsToAnEnd(entry, blank, end.face()) || !startsInside(entry, blank, end.face())) {
      return List.of();
    }
    List<Face> faces = faces(entry, blank, end.face());
    return faces.stream().allMatch(face -> leavesWood(entry, blank, faces, face))
        ? faces.stream().map(face -> taper(entry, blank, end.face(), face)).toList()
        : List.of();
  }

  private boolean runsToAnEnd(Entry entry, Blank blank, Face end) {
    return end.axis() == blank.length()
        || fail(
            Diagnostic.error(
                    "taper-end",
                    entry.at("end"),
                    "a taper runs along a part to its end, but %s is a side of %s"
                        .formatted(end.word(), blank.name()))
                .hint(
                    "name one of its ends, `%s` or `%s`"
                        .formatted(
                            new FaceRef(blank.name(), Face.of(blank.length(), -1)),
                            new FaceRef(blank.name(), Face.of(blank.length(), 1)))));
  }

  private boolean startsInside(Entry entry, Blank blank, Face end) {
    Length from = entry.length("from");
    Range have = blank.shoulder().on(end.axis());
    return have.contains(from) && !from.equals(blank.shoulder().at(end))
        || fail(
            Diagnostic.error(
                    "taper-start",
                    entry.at("from"),
                    "the taper starts at %s = %s, but %s runs from %s to %s"
                        .formatted(
                            end.axis().word(),
                            print(from),
                            blank.name(),
                            print(have.from()),
                            print(have.to())))
                .also(blank.at(), blank.name() + " is defined here")
                .hint("let it start inside the part, before its " + end.word()));
  }

  private List<Face> faces(Entry entry, Blank blank, Face end) {
    List<Face> faces = new ArrayList<>();
    for (Located<Face> word : entry.list("faces", Face.class)) {
      Face face = word.value();
      if (face.axis() == end.axis()) {
        fail(
            Diagnostic.error(
                    "taper-face",
                    word.at(),
                    "%s is an end of %s and cannot taper along it"
                        .formatted(face.word(), blank.name()))
                .hint("name faces along its length"));
      } else if (faces.contains(face)) {
        fail(
            Diagnostic.error("taper-face", word.at(), face.word() + " is named twice")
                .hint("name each face once"));
      } else {
        faces.add(face);
      }
    }
    return faces;
  }

  private boolean leavesWood(Entry entry, Blank blank, List<Face> faces, Face face) {
    Length off = entry.length("off");
    Length both = faces.contains(face.opposite()) ? off.times(2) : off;
    Length have = blank.shoulder().size(face.axis());
    return both.isShorterThan(have)
        || fail(
            Diagnostic.error(
                    "taper-off",
                    entry.at("off"),
                    "the taper takes %s off%s, but %s has only %s from %s to %s"
                        .formatted(
                            print(off),
                            both.equals(off) ? "" : " each of two opposite faces",
                            blank.name(),
                            print(have),
                            Face.of(face.axis(), -1).word(),
                            Face.of(face.axis(), 1).word()))
                .also(blank.at(), blank.name() + " is defined here")
                .hint("take less off"));
  }

  private static Slant taper(Entry entry, Blank blank, Face end, Face face) {
    return new Slant(blank.name(), now -> taperOn(now, entry, end, face));
  }

  /** The plane follows from the shoulder; where a joint made the part longer, it runs on. */
  private static Slanted.Slope taperOn(Blank blank, Entry entry, Face end, Face face) {
    Length from = entry.length("from");
    Length planned = blank.shoulder().at(end).minus(from).abs();
    Length run = blank.box().at(end).minus(from).abs();
    Length off =
        entry
            .length("off")
            .times(Rational.of(run.ticks(), planned.ticks()), java.math.RoundingMode.HALF_EVEN);
    Point edge = corner(blank, face, end);
    return new Slanted.Slope(
        "taper",
        face,
        end,
        edge.with(end.axis(), from),
        edge.moved(face.axis(), off.times(-face.sign())),
        entry.at());
  }

  List<Slant> chamfers(Entry entry) {
    Blank blank = blanks.get(entry.text("in"));
    List<Slant> slants = new ArrayList<>();
    for (Located<Edge> edge : entry.list("edges", Edge.class)) {
      Face one = edge.value().one();
      Face two = edge.value().other();
      if (isThinEnough(entry, blank, one) && isThinEnough(entry, blank, two)) {
        slants.add(chamfer(entry, blank, one, two));
      }
    }
    return slants;
  }

  private boolean isThinEnough(Entry entry, Blank blank, Face face) {
    Length have = blank.shoulder().size(face.axis());
    return entry.length("size").isShorterThan(have)
        || fail(
            Diagnostic.error(
                    "chamfer-size",
                    entry.at("size"),
                    "a chamfer of %s leaves nothing of %s, which is %s there"
                        .formatted(print(entry.length("size")), blank.name(), print(have)))
                .also(blank.at(), blank.name() + " is defined here")
                .hint("make it smaller"));
  }

  private static Slant chamfer(Entry entry, Blank blank, Face one, Face two) {
    Length size = entry.length("size");
    return new Slant(
        blank.name(),
        now -> {
          Point edge = corner(now, one, two);
          return new Slanted.Slope(
              "chamfer",
              one,
              two,
              edge.moved(two.axis(), size.times(-two.sign())),
              edge.moved(one.axis(), size.times(-one.sign())),
              entry.at());
        });
  }

  /** The end of the edge of two faces at which its axis starts. */
  static Point corner(Blank blank, Face one, Face two) {
    Axis along = Axis.other(one.axis(), two.axis());
    return Point.ORIGIN
        .with(one.axis(), blank.box().at(one))
        .with(two.axis(), blank.box().at(two))
        .with(along, blank.box().on(along).from());
  }

  private boolean fail(Diagnostic fault) {
    diagnostics.add(fault);
    return false;
  }

  private String print(Length length) {
    return format.formatWithUnit(length);
  }
}
