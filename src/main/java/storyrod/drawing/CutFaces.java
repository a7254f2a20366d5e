package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.description.StockKind;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.piece.Part;

/**
 * The cut faces of a section on paper: hatched at 45°, neighbours the other way or closer, sheet
 * goods closer than boards (ISO 128-50, from memory); what is too thin to be hatched is filled.
 */
final class CutFaces {
  private static final double BOARD_PITCH = 2.4;
  private static final double SHEET_PITCH = 1.3;
  private static final double THINNEST = 1.1;
  private static final double TOUCHING = 0.2;

  private final List<Sawn> all = new ArrayList<>();

  /** The cut faces of one part, and which way their hatching runs. */
  private record Sawn(Part part, List<List<List<At>>> faces, boolean rising) {
    boolean touches(List<List<List<At>>> others) {
      return faces.stream()
          .anyMatch(a -> others.stream().anyMatch(b -> touch(bounds(a), bounds(b))));
    }
  }

  CutFaces(Section section, Fit fit) {
    Map<String, List<FlatFace>> faces = section.cutFaces();
    for (Part part : section.kept()) {
      List<FlatFace> own = faces.getOrDefault(part.name(), List.of());
      add(part, own.stream().map(face -> rings(face, fit)).toList());
    }
  }

  private CutFaces() {}

  /** Faces that lie on the paper already, by part. */
  static CutFaces of(Map<Part, List<List<List<At>>>> faces) {
    CutFaces cut = new CutFaces();
    faces.forEach(cut::add);
    return cut;
  }

  private void add(Part part, List<List<List<At>>> faces) {
    if (!faces.isEmpty()) {
      all.add(new Sawn(part, faces, isRising(faces)));
    }
  }

  private static List<List<At>> rings(FlatFace face, Fit fit) {
    View view = View.at(Face.RIGHT);
    return Stream.concat(Stream.of(face.outer()), face.openings().stream())
        .map(ring -> ring.stream().map(view::project).map(fit::on).toList())
        .toList();
  }

  /** The way that fewer of the neighbours have which have one already. */
  private boolean isRising(List<List<List<At>>> rings) {
    int balance = 0;
    for (Sawn other : all) {
      if (other.touches(rings)) {
        balance += other.rising ? 1 : -1;
      }
    }
    return balance <= 0;
  }

  private static boolean touch(Bounds a, Bounds b) {
    return a.left() < b.right() + TOUCHING
        && b.left() < a.right() + TOUCHING
        && a.top() < b.bottom() + TOUCHING
        && b.top() < a.bottom() + TOUCHING;
  }

  private static Bounds bounds(List<List<At>> rings) {
    Bounds bounds = Bounds.NONE;
    for (At at : rings.getFirst()) {
      bounds = bounds.with(at);
    }
    return bounds;
  }

  /** A group for each part that is cut. */
  List<Element> elements() {
    return all.stream().map(CutFaces::group).toList();
  }

  private static Element group(Sawn sawn) {
    List<Element> elements = new ArrayList<>();
    sawn.faces.forEach(face -> addFace(sawn, face, elements));
    return new Group("cut-" + Ink.id(sawn.part), sawn.part.mark(), sawn.part.title(), elements);
  }

  private static void addFace(Sawn sawn, List<List<At>> face, List<Element> elements) {
    Bounds bounds = bounds(face);
    boolean thin = Math.min(bounds.width(), bounds.height()) < THINNEST;
    elements.add(new Area(thin ? Tone.SIDE : Tone.WHITE, face));
    if (!thin) {
      boolean sheet = sawn.part.stock().kind() == StockKind.SHEET;
      hatch(face, sheet ? SHEET_PITCH : BOARD_PITCH, sawn.rising)
          .forEach(line -> elements.add(new Line(Role.DIMENSION, line)));
    }
    for (List<At> ring : face) {
      List<At> closed = new ArrayList<>(ring);
      closed.add(ring.getFirst());
      elements.add(new Line(Role.VISIBLE, closed));
    }
  }

  private static List<List<At>> hatch(List<List<At>> rings, double pitch, boolean rising) {
    return rising ? Hatching.lines(rings, pitch) : mirrored(Hatching.lines(mirrored(rings), pitch));
  }

  private static List<List<At>> mirrored(List<List<At>> rings) {
    return rings.stream()
        .map(ring -> ring.stream().map(at -> new At(-at.x(), at.y())).toList())
        .toList();
  }
}
