package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.description.ItemKind;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;
import storyrod.piece.TrenchRole;

/** What is special about cuts and holes, in words such as {@code cut-dado}. */
record CutTraits(Piece piece) {
  /** The two outer blades of a dado set cut a quarter of an inch (common practice), rounded. */
  private static final Length LEAST_DADO_SET = Length.mm(6);

  private static final List<String> GUIDED = List.of("cut-dado", "cut-rabbet");

  /** The traits of cuts that are made in one part with one setting. */
  List<String> of(Part part, List<Cut> cuts) {
    boolean runs = cuts.stream().allMatch(cut -> runsAlongAnEdge(part, cut));
    if (runs) {
      return List.of("cut-edge-notch");
    }
    boolean haunched =
        Cut.only(Cut.Tenon.class, cuts).stream().anyMatch(t -> t.haunch().isPresent());
    return Stream.concat(
            cuts.stream().map(cut -> cutting(part, cut)),
            haunched ? Stream.of("cut-haunch") : Stream.empty())
        .distinct()
        .toList();
  }

  /** A notch that leaves some thickness all along an edge is cut as a rabbet is. */
  private static boolean runsAlongAnEdge(Part part, Cut cut) {
    return cut instanceof Cut.Trench notch
        && notch.term().equals("notch")
        && !CutKind.isStopped(part, notch)
        && notch.removed().on(part.length()).equals(part.box().on(part.length()))
        && notch.depth().isShorterThan(part.box().size(notch.from().axis()));
  }

  private String cutting(Part part, Cut cut) {
    return switch (cut) {
      case Cut.Trench trench ->
          isNarrowGroove(part, trench) ? "cut-narrow-groove" : trench(part, trench);
      case Cut.Shaped shaped -> isOpening(shaped) ? "cut-opening" : "cut-curve";
      case Cut.Roundover roundover -> "cut-roundover";
      case Cut.Holes holes -> drilling(holes);
      case Cut.Tenon tenon ->
          tenon.term().equals("tongue") && Traits.isLargePanel(piece, part)
              ? "cut-large-tongue"
              : trench(tenon.term().replace(' ', '-'));
      case Comb comb -> trench(comb.term().replace(' ', '-'));
      case PocketHoles pocket -> "drill-pocket-hole";
      case Slanted.Slope slope -> "cut-" + (isShort(part, slope) ? "short-" : "") + slope.term();
      case Slanted.Housing housing -> "cut-leaning";
      case Slots slots -> "cut-" + slots.term().replace(' ', '-');
      case Dovetails dovetails -> trench(dovetails.term().replace(' ', '-'));
      case SplineSlot slot -> "cut-spline-slot";
      case InPlace inPlace -> "drill-hole";
    };
  }

  private static boolean isNarrowGroove(Part part, Cut.Trench trench) {
    return TrenchRole.GROOVE.isOf(trench)
        && CutKind.of(part, trench).size().isShorterThan(LEAST_DADO_SET);
  }

  /** Whether a part is too short to be tapered in a jig on the saw. */
  private boolean isShort(Part part, Slanted.Slope slope) {
    Length shortest = piece.description().shop().machines().shortest();
    return slope.term().equals("taper") && part.finishedLength().isShorterThan(shortest);
  }

  private String drilling(Cut.Holes holes) {
    boolean isCup =
        holes.forWhat().map(piece::kind).filter(ItemKind.CONCEALED_HINGE::equals).isPresent();
    if (holes.term().equals("dowel hole")) {
      return "drill-dowel-hole";
    }
    return isCup ? "drill-cup" : holes.through() ? "drill-through" : "drill-hole";
  }

  private static boolean isOpening(Cut.Shaped shaped) {
    return shaped.inside() && !shaped.term().equals("notch");
  }

  /** Dados and rabbets also by what leads the part through them. */
  private static String trench(Part part, Cut.Trench trench) {
    String trait = trench(trench.term().replace(' ', '-'));
    return GUIDED.contains(trait) ? trait + Guidance.of(part, trench).suffix() : trait;
  }

  private static String trench(String term) {
    return Figures.STANDARD.traits().contains("cut-" + term) ? "cut-" + term : "cut-other";
  }
}
