package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Fineness;
import storyrod.geometry.Solid;
import storyrod.piece.Carving;
import storyrod.piece.Cut;
import storyrod.piece.Part;

/**
 * What a step takes off a part, in the frame of the flat part. Cuts of later steps are not there
 * yet.
 *
 * @param cuts those that the step makes
 * @param left the flat body after the step, with the bores that were there before it
 * @param waste what the step takes off the flat body; empty where it only bores or rounds edges
 * @param bores those that the step adds
 * @param sawnAtMm where along the part wood that goes on is left out
 */
record Taken(
    FlatPart flat,
    List<Cut> cuts,
    Solid left,
    Solid waste,
    List<Cylinder> bores,
    List<Double> sawnAtMm) {
  Taken {
    cuts = List.copyOf(cuts);
    bores = List.copyOf(bores);
    sawnAtMm = List.copyOf(sawnAtMm);
  }

  /** The same cuts, of what is drawn of the part. */
  Taken shown(Solid left, Solid waste, List<Cylinder> bores, List<Double> sawnAtMm) {
    return new Taken(flat, cuts, left, waste, bores, sawnAtMm);
  }

  boolean rounds() {
    return !Cut.only(Cut.Roundover.class, cuts).isEmpty();
  }

  /** Those that the step adds, and those that are there before it. */
  Stream<Cylinder> allBores() {
    return Stream.concat(bores.stream(), left.bores().stream());
  }

  /** Empty where the step takes nothing off the part. */
  static Optional<Taken> of(Part part, BuildPlan plan, Step step) {
    ByThen byThen = new ByThen(plan);
    Set<Cut> now = byThen.made(part, number -> number == step.number());
    Set<Cut> later = byThen.made(part, number -> number > step.number());
    FlatPart flat = FlatPart.of(part);
    List<Cut> before = new ArrayList<>();
    List<Cut> own = new ArrayList<>();
    for (int i = 0; i < part.cuts().size(); i++) {
      Cut cut = part.cuts().get(i);
      if (now.contains(cut)) {
        own.add(flat.cuts().get(i));
      } else if (!later.contains(cut)) {
        before.add(flat.cuts().get(i));
      }
    }
    return between(flat, before, own);
  }

  private static Optional<Taken> between(FlatPart flat, List<Cut> before, List<Cut> own) {
    List<Cut> both = new ArrayList<>(before);
    both.addAll(own);
    Solid old = Carving.of(flat.box(), before, Fineness.USUAL);
    Solid young = Carving.of(flat.box(), both, Fineness.USUAL);
    Solid left = young.unbored();
    Solid waste = old.unbored().minus(left);
    List<Cylinder> bores = new ArrayList<>(young.bores());
    bores.removeAll(old.bores());
    boolean rounds = own.stream().anyMatch(Cut.Roundover.class::isInstance);
    return waste.isEmpty() && bores.isEmpty() && !rounds
        ? Optional.empty()
        : Optional.of(
            new Taken(flat.with(both), own, left.bored(old.bores()), waste, bores, List.of()));
  }
}
