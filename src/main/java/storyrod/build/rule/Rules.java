package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;

/** The one list of rules. */
public final class Rules {
  public static final List<Rule> ALL =
      List.of(
          new ChooseBeforeSawing(),
          new SizeAfterMilling(),
          new GlueCured(),
          new KeptInOrder(),
          new KeptBeforeJoints(),
          new MarkAfterSizing(),
          new MarkBeforeJoints(),
          new CutAfterSizing(),
          new MortiseBeforeTenon(),
          new TailsBeforePins(),
          new JointsBeforeTaper(),
          new DrillAfterSizing(),
          new SandAfterMachining(),
          new SizeBeforeFitting(),
          new CutBeforeFitting(),
          new DrillBeforeFitting(),
          new SandBeforeFitting(),
          new DryFitAfterCutting(),
          new DryFitBeforeGlue(),
          new DryFitBeforePreFinish(),
          new PreFinishBeforeFitting(),
          new AssemblyBeforeFitting(),
          new PanelBeforeFrameCloses(),
          new WayIn(),
          new StiffBeforeTurning(),
          new FirmBeforeLoading(),
          new BackLast(),
          new TrimAfterAssembly(),
          new TrimBeforeFitting(),
          new TrialOnStandingParts(),
          new TrialBeforeFinish(),
          new OffcutBeforeTest(),
          new TestBeforeFinishing(),
          new GlueBeforeFinish(),
          new MachineBeforeFinish(),
          new TopAfterFinish(),
          new LidAfterBox(),
          new LidAfterFinish(),
          new MountAfterFinish(),
          new MountOnStandingParts(),
          new HangerBeforeHung(),
          new FrontAfterHung(),
          new CatchAfterHung(),
          new StrapLast());

  private Rules() {}

  /** What all rules ask of a job. */
  public static List<Need> needs(Job job) {
    return ALL.stream().flatMap(rule -> rule.needs(job).stream()).distinct().toList();
  }

  /**
   * Whether a need means an operation when it names what comes first; of several cuts only one may.
   */
  public static boolean meansFirst(Need need, Operation operation) {
    return MortiseBeforeTenon.meansFirst(need, operation)
        && TailsBeforePins.meansFirst(need, operation);
  }

  /** Whether a need means an operation when it names what comes after another one. */
  public static boolean meansLater(Need need, Operation first, Operation operation) {
    return MortiseBeforeTenon.meansLater(need, operation)
        && TailsBeforePins.meansLater(need, operation)
        && JointsBeforeTaper.means(need, first, operation);
  }

  public static Rule named(String key) {
    return ALL.stream()
        .filter(rule -> rule.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no rule " + key));
  }
}
