package storyrod.description;

import java.util.List;
import java.util.Optional;

/**
 * The glue that all glued joints take.
 *
 * @param kind what sort of glue it is, a word of {@link #KINDS}
 * @param openMinutes how long it may lie before the joint is closed
 * @param clampMinutes how long a joint stays clamped
 * @param cureHours until it is as hard as it gets, so that tools may run across a joint
 * @param supply how far it goes and how it is sold
 */
public record GlueEntry(
    Span at,
    String product,
    Optional<String> kind,
    Optional<Integer> openMinutes,
    Optional<Integer> clampMinutes,
    Optional<Integer> cureHours,
    Supply supply) {
  /** The words for sorts of glue; a test holds them to the table of coverages. */
  public static final List<String> KINDS =
      List.of("pva", "slow-pva", "hide-glue", "epoxy", "polyurethane", "plastic-resin");
}
