package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Axis;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Fineness;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Solid;
import storyrod.measure.LengthFormat;
import storyrod.piece.Carving;
import storyrod.piece.Cut;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.SplineSlot;

/** Makes a part again from its drawing and tells what does not come out right. */
final class Rebuilding {
  private static final Fineness ROUGH = new Fineness(1, 8);

  private Rebuilding() {}

  static List<String> faults(Part part, Drawing drawing, LengthFormat format) {
    FlatPart flat = FlatPart.of(part);
    ReadSheet sheet = new ReadSheet(drawing);
    Tracing tracing = new Tracing(flat, sheet, drawing.scale().orElseThrow().factor());
    Figures figures = new Figures(format);
    Givens givens = new Givens(sheet, tracing, figures);
    NoteGivens said = new NoteGivens(givens, tracing, figures);
    ReadNotes notes = new ReadNotes(tracing, sheet.notes);
    List<String> faults = new ArrayList<>(notes.faults());
    for (Cut cut : flat.cuts()) {
      boolean curve = cut instanceof Cut.Shaped || cut instanceof Cut.Roundover;
      if (!curve && notes.of(cut).isEmpty()) {
        faults.add("no note speaks of the " + cut.term());
      }
      notes.of(cut).ifPresent(text -> said.add(cut, text));
      notes
          .likeness(cut)
          .filter(other -> cut instanceof Cut.Tenon && other instanceof Cut.Tenon)
          .ifPresent(other -> said.addEqual((Cut.Tenon) cut, (Cut.Tenon) other));
    }
    for (SplineSlot slot : flat.cuts(SplineSlot.class)) {
      Slanted.Slope mitre = Remade.mitre(flat, slot);
      boolean isTold = slot.along() != Axis.Y && notes.of(slot).isPresent();
      notes
          .of(mitre)
          .filter(lean -> isTold)
          .ifPresent(lean -> said.addSlot(slot, notes.of(slot).orElseThrow(), mitre, lean));
    }
    givens.addAuxiliary();
    faults.addAll(givens.faults());
    faults.addAll(RadiusNotes.faults(flat, sheet, figures));
    faults.addAll(givens.open());
    faults.addAll(givens.notToScale());
    Remade remade = new Remade(flat, givens, notes, figures);
    List<Cut> cuts = new ArrayList<>();
    for (Cut cut : flat.cuts()) {
      try {
        if (!(cut instanceof InPlace)) {
          cuts.add(remade.cut(cut));
        }
      } catch (IllegalStateException | Tracing.NotDrawn e) {
        faults.add(cut.term() + ": " + e.getMessage());
      }
    }
    if (!faults.isEmpty()) {
      return faults;
    }
    List<Cut> known = new ArrayList<>();
    for (Cut cut : flat.cuts()) {
      if (!(cut instanceof InPlace)) {
        known.add(cut instanceof PocketHoles p ? unpiloted(p) : cut);
      }
    }
    Solid exact = Carving.of(flat.box(), known, ROUGH);
    Solid again = Carving.of(remade.box(), cuts, ROUGH);
    return compared(exact, again, remade.worstOff() + 0.02);
  }

  private static PocketHoles unpiloted(PocketHoles p) {
    return new PocketHoles(
        p.term(),
        p.from(),
        p.end(),
        p.centres(),
        p.diameter(),
        p.diameter().dividedBy(2, java.math.RoundingMode.HALF_EVEN),
        p.angleDegrees(),
        p.forWhat(),
        p.at());
  }

  /** Volume, what one has and the other has not, and each corner and bore beside its twin. */
  static List<String> compared(Solid exact, Solid again, double off) {
    List<String> faults = new ArrayList<>();
    double most = exact.faces().stream().mapToDouble(FlatFace::areaMm2).sum() * off;
    double more = again.without(List.of(exact)).volumeMm3();
    double less = exact.without(List.of(again)).volumeMm3();
    double differ = Math.abs(exact.volumeMm3() - again.volumeMm3());
    if (more + less > most || differ > most) {
      faults.add("%.0f mm³ more and %.0f less, %.0f may be".formatted(more, less, most));
    }
    addCorners(exact, again, off, faults);
    addCorners(again, exact, off, faults);
    addBores(exact, again, off, faults);
    return faults;
  }

  private static List<Vector3D> corners(Solid solid) {
    List<Vector3D> corners = new ArrayList<>();
    for (FlatFace face : solid.faces()) {
      corners.addAll(face.outer());
      face.openings().forEach(corners::addAll);
    }
    return corners;
  }

  private static void addCorners(Solid one, Solid other, double off, List<String> faults) {
    List<Vector3D> others = corners(other);
    for (Vector3D corner : corners(one)) {
      boolean there = others.stream().anyMatch(each -> apart(each, corner) < off);
      if (!there) {
        faults.add("the corner at " + corner + " has no twin within " + off);
      }
    }
  }

  private static double apart(Vector3D one, Vector3D other) {
    Vector3D way = one.subtract(other);
    return Math.max(Math.abs(way.getX()), Math.max(Math.abs(way.getY()), Math.abs(way.getZ())));
  }

  private static void addBores(Solid exact, Solid again, double off, List<String> faults) {
    for (int i = 0; i < exact.bores().size(); i++) {
      Cylinder one = exact.bores().get(i);
      Cylinder other = again.bores().get(i);
      boolean same =
          apart(one.mouth(), other.mouth()) < off
              && apart(one.end(), other.end()) < off
              && Math.abs(one.radiusMm() - other.radiusMm()) < 0.2;
      if (!same) {
        faults.add("the bore at " + one.mouth() + " comes out at " + other.mouth());
      }
    }
  }
}
