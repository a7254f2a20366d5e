package storyrod.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem;
import storyrod.drawing.Contacts.Path;
import storyrod.geometry.Box;
import storyrod.geometry.Solid;

/**
 * Hardware where it is drawn, on its way in.
 *
 * @param seat where it sits on its host as far as that is drawn from its place, in mm
 * @param outMm how far it has come out along its line
 */
record Fitting(Hardware hardware, Vector3D seat, double outMm) {
  /** How far its body, made about the origin, is drawn from there, in mm. */
  Vector3D offset() {
    return seat.add(hardware.placed().out().multiply(outMm));
  }

  /** The same with another body. */
  Fitting as(Solid body) {
    PlacedItem was = hardware.placed();
    PlacedItem placed =
        new PlacedItem(was.item(), was.origin(), was.host(), was.at(), was.out(), body);
    return new Fitting(
        new Hardware(placed, hardware.id(), hardware.mark(), hardware.title()), seat, outMm);
  }

  Scene.Item item() {
    return new Scene.Item(hardware.id(), hardware.placed().solid(), offset());
  }

  /** The two diagonals through its body, where it is drawn, that look least alike. */
  List<List<Vector3D>> diagonals() {
    Box box = hardware.placed().solid().bounds().orElseThrow();
    Vector3D low = box.low().toMm().add(offset());
    Vector3D high =
        Vector3D.of(box.x().to().toMm(), box.y().to().toMm(), box.z().to().toMm()).add(offset());
    return List.of(
        List.of(low, high),
        List.of(
            Vector3D.of(low.getX(), high.getY(), low.getZ()),
            Vector3D.of(high.getX(), low.getY(), high.getZ())));
  }

  /** The way of its inner end to where it goes in. */
  Path trail() {
    Vector3D end = offset().subtract(hardware.placed().out().multiply(hardware.placed().deepMm()));
    return new Path(hardware.placed().host(), end, seat);
  }

  static List<Path> trails(List<Fitting> fittings) {
    return fittings.stream().map(Fitting::trail).toList();
  }
}
