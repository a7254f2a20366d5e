package storyrod.check;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;

/** All checks, in the order of their codes. */
public final class Checks {
  public static final List<Check> ALL =
      List.of(
          new BiscuitSize(),
          new BoardTooThin(),
          new BoresMeet(),
          new BradLength(),
          new BradPlaces(),
          new BreadboardFixed(),
          new BreaksOut(),
          new BridleThickness(),
          new CrossGrain(),
          new CrowdedFasteners(),
          new DadoDepth(),
          new DoorCover(),
          new DoorGap(),
          new DovetailLap(),
          new DovetailPins(),
          new DovetailSlope(),
          new DowelSize(),
          new DrawerRoom(),
          new EmptySpace(),
          new FingerDivision(),
          new FingerWidth(),
          new FinishOtherWood(),
          new FinishUntried(),
          new GapCloses(),
          new GluedPanel(),
          new GrainRunsOn(),
          new HaunchInGroove(),
          new HaunchSize(),
          new HingeCount(),
          new HingeCup(),
          new HoleEdge(),
          new HoleMeets(),
          new KeptPieces(),
          new LapThickness(),
          new LayersFit(),
          new LidRoom(),
          new LidWay(),
          new LoosePart(),
          new LooseTenonSize(),
          new MortiseWall(),
          new MortisesMeet(),
          new NearMiss(),
          new NearTwins(),
          new PanelRoom(),
          new PartsOverlap(),
          new PassedLoad(),
          new PinRows(),
          new PlainMitre(),
          new PlugDepth(),
          new PocketMouth(),
          new PocketScrewFit(),
          new PocketWall(),
          new RoundedJoint(),
          new RoundedRow(),
          new ScrewHold(),
          new ScrewLength(),
          new ScrewMeets(),
          new SheetInSlot(),
          new ShelfSag(),
          new SlideClearance(),
          new SlideLength(),
          new SplineThickness(),
          new StaticBalance(),
          new StrapHold(),
          new TenonCutAway(),
          new TenonLength(),
          new TenonThickness(),
          new TippingOver(),
          new TooShortToMill(),
          new TooWideForCrosscut(),
          new TooWideForJointer(),
          new TooWideForPlaner(),
          new TopTravel(),
          new UnknownDensity());

  private Checks() {}

  /** The check of a code. */
  public static Optional<Check> named(String code) {
    return ALL.stream().filter(check -> check.code().equals(code)).findFirst();
  }

  /** The codes of all checks. */
  public static List<String> codes() {
    return ALL.stream().map(Check::code).toList();
  }

  /** Runs every check and collects what it finds. */
  public static void run(Piece piece, Diagnostics diagnostics) {
    run(ALL, piece, diagnostics);
  }

  /** Runs some checks; one that fails is told as a bug of its own, and the others still run. */
  static void run(List<Check> checks, Piece piece, Diagnostics diagnostics) {
    for (Check check : checks) {
      try {
        diagnostics.addAll(check.findings(piece));
      } catch (RuntimeException e) {
        diagnostics.add(failed(check, piece, e));
      }
    }
  }

  private static Diagnostic failed(Check check, Piece piece, RuntimeException e) {
    return Diagnostic.warning(
            "check-failed",
            piece.description().about().project().at(),
            "bug: the check '%s' failed by itself (%s), so nothing is known of what it looks at"
                .formatted(check.code(), e))
        .hint("the piece may be right; please report this with the description");
  }
}
