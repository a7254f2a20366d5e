package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;

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

  public static Rule named(String key) {
    return ALL.stream()
        .filter(rule -> rule.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no rule " + key));
  }
}
