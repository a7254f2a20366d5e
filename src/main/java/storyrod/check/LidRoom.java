package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A lid that is too tight in its groove to slide, or so loose that it rattles. */
final class LidRoom implements Check {
  private static final Length LEAST = Length.micrometres(400);
  private static final Length MOST = Length.micrometres(1600);

  @Override
  public String code() {
    return "lid-room";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A lid that slides has about 1/32 in or 0.8 mm of room in its groove: with less"
            + " than half of that it binds when the weather is damp, with more than twice "
            + "that it rattles.",
        "Common practice.",
        "It looks at the groove as cut, not at how the lid's wood moves through the " + "year.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Joint joint : piece.joints()) {
      for (Cut cut : piece.part(joint.second()).cuts()) {
        if (cut instanceof Cut.Trench groove
            && groove.term().equals("lid groove")
            && groove.isFor(joint.first())
            && groove.at().equals(joint.at())) {
          check(piece, joint, groove, found);
        }
      }
    }
    return found;
  }

  private void check(Piece piece, Joint joint, Cut.Trench groove, List<Diagnostic> found) {
    Part lid = piece.part(joint.first());
    Length room =
        groove.removed().size(lid.thickness()).minus(edge(lid, joint).size(lid.thickness()));
    boolean isTight = room.isShorterThan(LEAST);
    if (isTight || room.isLongerThan(MOST)) {
      LengthFormat format = piece.description().format();
      found.add(
          Diagnostic.warning(
                  code(),
                  joint.at(),
                  "%s has %s of room in the groove of %s: %s"
                      .formatted(
                          lid.name(),
                          format.formatWithUnit(room),
                          joint.second(),
                          isTight ? "it will bind in damp weather" : "it will rattle"))
              .also(lid.at(), lid.name() + " is defined here")
              .hint("leave `room` out for the usual %s".formatted(usual(format))));
    }
  }

  private static String usual(LengthFormat format) {
    return switch (format.unit()) {
      case INCH -> "1/32 in";
      case MM -> "0.8 mm";
    };
  }

  private static Box edge(Part lid, Joint joint) {
    return lid.cuts().stream()
        .filter(cut -> cut instanceof Cut.Tenon && cut.at().equals(joint.at()))
        .map(cut -> ((Cut.Tenon) cut).tenon())
        .findFirst()
        .orElse(lid.box());
  }
}
