package storyrod.build.rule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Placing;
import storyrod.build.Unit;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

/**
 * A panel held on opposite sides by grooves is trapped by its frame, and so must come before it.
 */
public final class PanelBeforeFrameCloses implements Rule {
  @Override
  public String key() {
    return "panel-before-frame-closes";
  }

  @Override
  public String reason() {
    return "a panel that lies in grooves goes in before the last part of its frame closes on it";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> isCaptured(job.piece().joints(), placing.unit()))
        .flatMap(panel -> closing(job, panel).stream())
        .toList();
  }

  /** Whether a unit lies loose in others on two opposite sides. */
  public static boolean isCaptured(List<Joint> joints, Unit unit) {
    List<Face> held =
        joints.stream()
            .filter(joint -> !joint.holding() && unit.partNames().contains(joint.first()))
            .map(Joint::firstFace)
            .toList();
    return Arrays.stream(Face.values())
        .anyMatch(face -> held.contains(face) && held.contains(face.opposite()));
  }

  private List<Need> closing(Job job, Placing panel) {
    List<Unit> standing = new ArrayList<>(job.before(panel));
    for (Placing later : job.after(panel)) {
      standing.add(later.unit());
      if (job.reach().ways(panel.unit(), standing).isEmpty()) {
        return List.of(need(Job.fit(panel), Job.fit(later)));
      }
    }
    return List.of();
  }
}
