package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.geometry.Face;
import storyrod.measure.Angle;
import storyrod.measure.Length;
import storyrod.piece.Joint.ItemCount;

/**
 * The order of work.
 *
 * @param steps in order, numbered from 1
 * @param needs for each operation in the steps, what had to be done before it and why
 * @param precedence which steps have to come before which, by rules, by geometry or by the maker's
 *     order
 */
public record BuildPlan(List<Step> steps, List<Need> needs, List<Precedence> precedence) {
  public BuildPlan {
    steps = List.copyOf(steps);
    needs = List.copyOf(needs);
    precedence = List.copyOf(precedence);
  }

  /** Steps that could stand in any order. */
  public BuildPlan(List<Step> steps, List<Need> needs) {
    this(steps, needs, List.of());
  }

  /**
   * A stage of the work.
   *
   * @param key names the stage's words, such as {@code milling}; {@code own} for a maker's stage
   * @param title the maker's own title
   */
  public record Stage(String key, Optional<String> title) {}

  /**
   * A numbered step: operations done as one. It holds no words for the reader; the templates make
   * them from what stands here.
   *
   * @param operations all of one verb, at least one
   * @param newParts the full names of parts that come to the piece in this step
   * @param standing the full names of parts already put together before this step that stand with
   *     the new ones
   * @param enters for a fitting step, the direction in which the new parts move to their place, as
   *     the face they lead with
   * @param mirrored the full names of new parts that come from the opposite side
   * @param firstMove the move before that, where the new parts come in with two
   * @param down the face on which what stands lies meanwhile; the bottom where it stands upright
   * @param tools keys into the words for tools
   * @param cautions keys into the words for cautions, most important first
   * @param settings values worth setting or checking, such as a saw's fence or a case's diagonal
   * @param say the maker's own words for this step
   * @param minutes of work
   * @param waitMinutes to wait afterwards; of coats, after all of them together
   * @param glueUp what its glue asks of the shop
   */
  public record Step(
      int number,
      Stage stage,
      List<Operation> operations,
      List<String> newParts,
      List<String> standing,
      Optional<Face> enters,
      List<String> mirrored,
      Optional<FirstMove> firstMove,
      Face down,
      List<ItemCount> hardware,
      List<String> tools,
      List<String> cautions,
      List<Setting> settings,
      List<String> say,
      int minutes,
      int waitMinutes,
      GlueUp glueUp) {
    /** A step that spreads no glue. */
    public Step(
        int number,
        Stage stage,
        List<Operation> operations,
        List<String> newParts,
        List<String> standing,
        Optional<Face> enters,
        List<String> mirrored,
        Optional<FirstMove> firstMove,
        Face down,
        List<ItemCount> hardware,
        List<String> tools,
        List<String> cautions,
        List<Setting> settings,
        List<String> say,
        int minutes,
        int waitMinutes) {
      this(
          number,
          stage,
          operations,
          newParts,
          standing,
          enters,
          mirrored,
          firstMove,
          down,
          hardware,
          tools,
          cautions,
          settings,
          say,
          minutes,
          waitMinutes,
          GlueUp.NONE);
    }

    public Step {
      operations = List.copyOf(operations);
      newParts = List.copyOf(newParts);
      standing = List.copyOf(standing);
      mirrored = List.copyOf(mirrored);
      hardware = List.copyOf(hardware);
      tools = List.copyOf(tools);
      cautions = List.copyOf(cautions);
      settings = List.copyOf(settings);
      say = List.copyOf(say);
    }

    public Verb verb() {
      return operations.getFirst().verb();
    }

    /**
     * What is done in one go, in turn: one coat after the other; a step without coats is done in
     * one. The first has the setting up.
     */
    public List<Session> sessions() {
      int count = operations.stream().mapToInt(each -> each.sessions().size()).max().orElse(1);
      if (count == 1) {
        return List.of(new Session(minutes, waitMinutes));
      }
      int setUp = minutes - operations.stream().mapToInt(Operation::minutes).sum();
      return IntStream.range(0, count).mapToObj(at -> session(at, at == 0 ? setUp : 0)).toList();
    }

    private Session session(int at, int setUp) {
      List<Session> together =
          operations.stream()
              .filter(each -> each.sessions().size() > at)
              .map(each -> each.sessions().get(at))
              .toList();
      return new Session(
          setUp + together.stream().mapToInt(Session::minutes).sum(),
          together.stream().mapToInt(Session::waitMinutes).max().orElse(0));
    }

    /** The direction in which some of its new parts move to their place. */
    public Optional<Face> enters(List<String> parts) {
      return parts.stream().anyMatch(mirrored::contains) ? enters.map(Face::opposite) : enters;
    }

    /** The full names of the parts that its operations are done to, in their order. */
    public List<String> targets() {
      return operations.stream().flatMap(operation -> operation.parts().stream()).toList();
    }

    /** The same step, with what stands laid on a face. */
    Step lying(Face face) {
      return with(number, stage, face);
    }

    /** The same step in another place. */
    Step numbered(int newNumber) {
      return with(newNumber, stage, down);
    }

    /** The same step in another stage. */
    Step in(Stage other) {
      return with(number, other, down);
    }

    /** The same step, with nothing to wait for. */
    Step withoutWait() {
      return gluing(0, glueUp.unclamped());
    }

    private Step with(int newNumber, Stage newStage, Face newDown) {
      return with(newNumber, newStage, newDown, waitMinutes, glueUp);
    }

    /** The same step, with other glue. */
    Step gluing(int newWaitMinutes, GlueUp newGlueUp) {
      return with(number, stage, down, newWaitMinutes, newGlueUp);
    }

    private Step with(
        int newNumber, Stage newStage, Face newDown, int newWaitMinutes, GlueUp newGlueUp) {
      return new Step(
          newNumber,
          newStage,
          operations,
          newParts,
          standing,
          enters,
          mirrored,
          firstMove,
          newDown,
          hardware,
          tools,
          cautions,
          settings,
          say,
          minutes,
          newWaitMinutes,
          newGlueUp);
    }

    /** A trial among some parts of what another step, which spreads the glue, does for good. */
    public Step trying(Step forGood, List<String> among) {
      return new Step(
          number,
          stage,
          forGood.operations,
          forGood.newParts,
          among,
          forGood.enters,
          forGood.mirrored,
          forGood.firstMove,
          forGood.down,
          hardware,
          tools,
          cautions,
          settings,
          say,
          minutes,
          waitMinutes);
    }

    /** Whether it has a setting whose key begins so. */
    public boolean isSet(String start) {
      return settings.stream().anyMatch(setting -> setting.key().startsWith(start));
    }

    /**
     * The new parts that move to their place; the others are the first of an assembly and lie
     * ready.
     */
    public List<String> movingParts() {
      return newParts.stream().filter(part -> !laidReady().contains(part)).toList();
    }

    /**
     * What comes to what stands or lies ready, in the order in which it comes: in each tier, what
     * is joined to parts of the tier before.
     */
    public List<List<Operation>> tiers() {
      return Tiers.of(this);
    }

    private List<String> laidReady() {
      return operations.stream()
          .filter(each -> each.verb() == Verb.FIT && each.joints().isEmpty())
          .filter(each -> operations.size() > 1)
          .flatMap(each -> each.parts().stream())
          .toList();
    }
  }

  /**
   * A value to set or to check.
   *
   * @param key into the words for settings
   * @param angle the value, where it is an angle and no length
   */
  public record Setting(String key, Optional<String> part, Length value, Optional<Angle> angle) {
    public Setting(String key, Optional<String> part, Length value) {
      this(key, part, value, Optional.empty());
    }

    static Setting of(String key, Angle angle) {
      return new Setting(key, Optional.empty(), Length.ZERO, Optional.of(angle));
    }
  }

  /** One operation before another, by their names, with the rule that says so. */
  public record Need(String before, String after, String rule) {}
}
