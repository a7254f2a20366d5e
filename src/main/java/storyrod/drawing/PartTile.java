package storyrod.drawing;

import java.util.Optional;
import storyrod.geometry.Axis;

/** A face of a part, among many: as low as a letter on it, slim ones wider than others. */
sealed interface PartTile extends Tile permits MarkTile, SandTile {
  /** What is as slim as this needs more width than others. */
  double SLIM = 6;

  /** The part, its drawn face towards the front or the back. */
  FlatPart flat();

  @Override
  default Optional<String> partMark() {
    return Optional.of(flat().part().mark());
  }

  default double lengthMm() {
    return flat().size(Axis.X).toMm();
  }

  default double widthMm() {
    return flat().size(Axis.Z).toMm();
  }

  @Override
  default double shape() {
    return ShortFace.shape(lengthMm(), widthMm());
  }

  @Override
  default double leastMm() {
    return 8;
  }

  @Override
  default double mostMm() {
    return 24;
  }

  @Override
  default int inARow() {
    return shape() > SLIM ? 3 : 6;
  }
}
