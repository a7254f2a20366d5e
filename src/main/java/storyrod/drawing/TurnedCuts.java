package storyrod.drawing;

import java.util.Comparator;
import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Dovetails.Tail;
import storyrod.piece.Haunch;
import storyrod.piece.InPlace;
import storyrod.piece.InPlace.Bore;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** Cuts of a part in the frame into which it is turned. */
record TurnedCuts(Turn turn) {
  List<Cut> of(List<Cut> cuts) {
    return cuts.stream().map(this::turned).toList();
  }

  private Cut turned(Cut cut) {
    return switch (cut) {
      case Cut.Trench trench -> turned(trench);
      case Cut.Tenon tenon -> turned(tenon);
      case Comb comb -> turned(comb);
      case Cut.Shaped shaped -> turned(shaped);
      case Cut.Roundover roundover -> turned(roundover);
      case Cut.Holes holes -> turned(holes);
      case PocketHoles pockets -> turned(pockets);
      case InPlace inPlace -> turned(inPlace);
      case Slanted.Slope slope -> turned(slope);
      case Slanted.Housing housing -> turned(housing);
      case Slots slots -> turned(slots);
      case Dovetails dovetails -> turned(dovetails);
      case SplineSlot slot -> turned(slot);
    };
  }

  private Cut.Trench turned(Cut.Trench trench) {
    return new Cut.Trench(
        trench.term(),
        trench.role(),
        turn.turned(trench.from()),
        turn.turned(trench.removed()),
        trench.depth(),
        trench.forWhat(),
        trench.alsoFor(),
        trench.at());
  }

  private Cut.Tenon turned(Cut.Tenon tenon) {
    return new Cut.Tenon(
        tenon.term(),
        turn.turned(tenon.from()),
        turn.turned(tenon.end()),
        turn.turned(tenon.tenon()),
        tenon.haunch().map(this::turned),
        tenon.forWhat(),
        tenon.at());
  }

  private Haunch turned(Haunch haunch) {
    return new Haunch(turn.turned(haunch.side()), turn.turned(haunch.box()));
  }

  private Dovetails turned(Dovetails row) {
    Axis across = turn.turned(row.across());
    List<Tail> tails = row.tails().stream().map(tail -> turned(tail, turn.old(across))).toList();
    return new Dovetails(
        row.term(),
        turn.turned(row.from()),
        turn.turned(row.wide()),
        across,
        turn.turned(row.end()),
        turn.old(across).sign() < 0 ? tails.reversed() : tails,
        row.slope(),
        row.forWhat(),
        row.at());
  }

  private Tail turned(Tail tail, Face old) {
    return new Tail(turn.turned(tail.narrow(), old), turn.turned(tail.wide(), old));
  }

  private SplineSlot turned(SplineSlot slot) {
    Axis along = turn.turned(slot.along());
    return new SplineSlot(
        turn.turned(slot.from()),
        slot.profile().mapped(along, turn::turned),
        turn.turned(slot.run(), turn.old(along)),
        slot.thickness(),
        slot.depth(),
        slot.forWhat(),
        slot.at());
  }

  private Comb turned(Comb comb) {
    Axis along = turn.turned(comb.along());
    return new Comb(
        comb.term(),
        turn.turned(comb.from()),
        turn.turned(comb.end()),
        along,
        comb.boxes().stream()
            .map(each -> turn.turned(each).on(along))
            .sorted(Comparator.comparing(Range::from))
            .toList(),
        comb.finger(),
        comb.forWhat(),
        comb.at());
  }

  private Cut.Shaped turned(Cut.Shaped shaped) {
    Axis normal = shaped.contour().normal();
    return new Cut.Shaped(
        shaped.term(),
        turn.turned(shaped.from()),
        shaped.contour().mapped(turn.turned(normal), turn::turned),
        shaped.inside(),
        shaped.forWhat(),
        shaped.at());
  }

  private Cut.Roundover turned(Cut.Roundover roundover) {
    return new Cut.Roundover(
        roundover.term(),
        turn.turned(roundover.from()),
        roundover.edges().stream().map(this::turned).toList(),
        roundover.around(),
        roundover.radius(),
        roundover.at());
  }

  private Edge turned(Edge edge) {
    return new Edge(turn.turned(edge.one()), turn.turned(edge.other()));
  }

  private Slanted.Slope turned(Slanted.Slope slope) {
    return new Slanted.Slope(
        slope.term(),
        turn.turned(slope.from()),
        turn.turned(slope.towards()),
        turn.turned(slope.first()),
        turn.turned(slope.second()),
        slope.at());
  }

  private InPlace turned(InPlace inPlace) {
    return new InPlace(
        inPlace.term(),
        turn.turned(inPlace.from()),
        inPlace.bores().stream().map(this::turned).toList(),
        inPlace.diameter(),
        inPlace.depth(),
        inPlace.through(),
        inPlace.forWhat(),
        inPlace.at());
  }

  private Bore turned(Bore bore) {
    return new Bore(turn.turned(bore.mouth()), turn.turned(bore.end()));
  }

  private PocketHoles turned(PocketHoles pockets) {
    return new PocketHoles(
        pockets.term(),
        turn.turned(pockets.from()),
        turn.turned(pockets.end()),
        pockets.centres().stream().map(turn::turned).toList(),
        pockets.diameter(),
        pockets.pilot(),
        pockets.angleDegrees(),
        pockets.forWhat(),
        pockets.at());
  }

  private Slanted.Housing turned(Slanted.Housing housing) {
    Face low = turn.old(turn.turned(housing.across()));
    Face along = turn.old(turn.turned(housing.along()));
    return new Slanted.Housing(
        housing.term(),
        turn.turned(housing.from()),
        turn.turned(housing.across()),
        turn.turned(housing.mouth(), low),
        turn.turned(housing.run(), along),
        turn.turned(housing.surface(), turn.old(turn.turned(housing.from().axis()))),
        housing.depth(),
        housing.shift().times(low.sign()),
        housing.forWhat(),
        housing.at());
  }

  private Cut.Holes turned(Cut.Holes holes) {
    Axis along = turn.turned(holes.along());
    boolean against = (turn.old(along).sign() < 0) != holes.step().isNegative();
    Point first = against ? holes.centres().getLast() : holes.centres().getFirst();
    return new Cut.Holes(
        holes.term(),
        turn.turned(holes.from()),
        turn.turned(first),
        along,
        holes.step().abs(),
        holes.count(),
        holes.diameter(),
        holes.depth(),
        holes.through(),
        holes.countersink(),
        holes.forWhat(),
        holes.at());
  }

  private Slots turned(Slots slots) {
    Axis along = turn.turned(slots.along());
    boolean against = (turn.old(along).sign() < 0) != slots.step().isNegative();
    return new Slots(
        slots.term(),
        slots.form(),
        turn.turned(slots.from()),
        turn.turned(against ? slots.centres().getLast() : slots.centres().getFirst()),
        along,
        slots.step().abs(),
        slots.count(),
        slots.size(),
        slots.through(),
        slots.forWhat(),
        slots.at());
  }
}
