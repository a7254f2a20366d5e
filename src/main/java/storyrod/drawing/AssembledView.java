package storyrod.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.piece.Piece;

/** The piece put together, as it stands on the cover. */
final class AssembledView {
  private AssembledView() {}

  /** An isometric view that fills a page, at a scale of its own, without marks, all mounted. */
  public static Drawing draw(Piece piece, List<Hardware> hardware, Size page) {
    return draw(picture(piece, hardware), page);
  }

  /** The same of what is seen of it. */
  static Drawing draw(Picture picture, Size page) {
    return picture.drawn("cover", Picture.Notes.NONE, page);
  }

  /** What is seen of it, for any page. */
  static Picture picture(Piece piece, List<Hardware> hardware) {
    List<Hardware> mounted = hardware.stream().filter(Hardware::isMounted).toList();
    Scene scene =
        new Scene(
                piece.parts().stream()
                    .map(part -> new Scene.Item(part.name(), part.placed(), Vector3D.ZERO))
                    .toList())
            .wearing(mounted);
    return Picture.of(scene, piece.parts(), piece.parts().size(), View.USUAL);
  }
}
