package storyrod.check;

import java.util.List;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;

/** All checks, in the order of their codes. */
public final class Checks {
  public static final List<Check> ALL =
      List.of(
          new BradLength(),
          new BreaksOut(),
          new BridleThickness(),
          new CrowdedFasteners(),
          new DadoDepth(),
          new FingerDivision(),
          new FingerWidth(),
          new FinishUntried(),
          new HingeCount(),
          new HingeCup(),
          new HoleEdge(),
          new KeptPieces(),
          new LapThickness(),
          new LidRoom(),
          new LidWay(),
          new LoosePart(),
          new MortiseWall(),
          new MortisesMeet(),
          new PartsOverlap(),
          new ScrewLength(),
          new SlideClearance(),
          new SlideLength(),
          new TenonCutAway(),
          new TenonLength(),
          new TenonThickness(),
          new TippingOver(),
          new TooWideForPlaner(),
          new UnknownDensity());

  private Checks() {}

  /** Runs every check and collects what it finds. */
  public static void run(Piece piece, Diagnostics diagnostics) {
    ALL.forEach(check -> diagnostics.addAll(check.findings(piece)));
  }
}
