package storyrod.build;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Haunch;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What to set a saw to for tenons and tongues: their size, and what comes off at each side. */
final class TenonSettings {
  private final Part part;

  private TenonSettings(Part part) {
    this.part = part;
  }

  /** Settings for a part's tenons, told of the part that its mark's drawing shows. */
  static List<Setting> of(Piece piece, Part part, List<Cut> cuts) {
    Part shown = piece.mark(part.mark()).shown();
    TenonSettings settings = new TenonSettings(shown);
    CutKind kind = CutKind.of(part, cuts.getFirst());
    Set<Setting> all = new LinkedHashSet<>();
    shown.cuts(Cut.Tenon.class).stream()
        .filter(tenon -> CutKind.of(shown, tenon).equals(kind))
        .forEach(tenon -> all.addAll(settings.of(tenon)));
    return List.copyOf(all);
  }

  private List<Setting> of(Cut.Tenon tenon) {
    Axis width = Axis.other(tenon.from().axis(), part.thickness());
    Stream<Setting> both =
        Stream.of(
            new Setting("tenon-thickness", Optional.empty(), tenon.tenon().size(part.thickness())),
            new Setting("tenon-length", Optional.empty(), tenon.length()));
    return Stream.of(
            both,
            sides(tenon, part.thickness()),
            tenon.haunch().map(each -> haunched(tenon, each)).orElseGet(() -> sides(tenon, width)))
        .flatMap(each -> each)
        .filter(setting -> setting.value().isPositive())
        .toList();
  }

  /** What comes off at the one edge, and the haunch that stays at the other. */
  private Stream<Setting> haunched(Cut.Tenon tenon, Haunch haunch) {
    Face plain = haunch.side().opposite();
    Optional<String> name = Optional.of(part.name());
    return Stream.of(
        new Setting("shoulder-" + plain.word(), name, tenon.shoulder(plain)),
        new Setting("haunch-" + haunch.side().word(), name, haunch.width()),
        new Setting("haunch-length", name, haunch.box().size(tenon.from().axis())));
  }

  /** What comes off at two opposite sides, said once where it is the same. */
  private Stream<Setting> sides(Cut.Tenon tenon, Axis axis) {
    Face low = Face.of(axis, -1);
    Face high = Face.of(axis, 1);
    Length off = tenon.shoulder(low);
    Optional<String> name = Optional.of(part.name());
    String what = axis == part.thickness() ? "cheek-" : "shoulder-";
    return off.equals(tenon.shoulder(high))
        ? Stream.of(new Setting(what + "each", name, off))
        : Stream.of(
            new Setting(what + low.word(), name, off),
            new Setting(what + high.word(), name, tenon.shoulder(high)));
  }
}
