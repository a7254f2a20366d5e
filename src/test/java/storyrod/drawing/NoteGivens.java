package storyrod.drawing;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.drawing.Figures.Figure;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** What notes say of the places of the cuts that they speak of, as equations. */
record NoteGivens(Givens givens, Tracing tracing, Figures figures) {
  private static final Pattern DEEP = Pattern.compile(", (" + Figures.NUMBER + ") deep");
  private static final Pattern ANGLE = Pattern.compile("(\\d+(?:\\.\\d+)?°)");
  private static final Pattern SIZES =
      Pattern.compile(
          "(%s)(?: × (%s))? × (%s) ".formatted(Figures.NUMBER, Figures.NUMBER, Figures.NUMBER));

  /** What the last printed digit of an angle may hide, in radians. */
  private static final double ANGLE_OFF = Math.toRadians(0.005);

  /** What a note says of the cut that it speaks of. */
  void add(Cut cut, String text) {
    switch (cut) {
      case Cut.Trench trench -> deep(trench, trench.removed().on(trench.from().axis()), text);
      case Slanted.Housing housing -> addHousing(housing, text);
      case Cut.Tenon tenon -> addTenon(tenon, text);
      case Comb comb -> addComb(comb, text);
      case Dovetails row -> addRow(row, text);
      case Slanted.Slope slope -> addSlope(slope, text);
      case Slots slots -> addSlots(slots, text);
      default -> {}
    }
  }

  private void deep(Cut cut, Range depth, String text) {
    Matcher deep = DEEP.matcher(text);
    boolean drawn =
        tracing.drawn(cut.from().axis(), depth.from()).isPresent()
            && tracing.drawn(cut.from().axis(), depth.to()).isPresent();
    if (drawn && deep.find()) {
      said(cut.from().axis(), depth, deep.group(1));
    }
  }

  /** A stretch whose length a note says, be it once more. */
  private void said(Axis axis, Range range, String text) {
    Figure figure = figures.length(text);
    check(apart(axis, range), figure.mm(), figure.halfStep(), text);
  }

  private void check(Map<Integer, Double> sum, double value, double off, String text) {
    givens.note(sum, new Figure(value, off), text);
  }

  private Map<Integer, Double> apart(Axis axis, Range range) {
    return Givens.apart(tracing.place(axis, range.from()), tracing.place(axis, range.to()));
  }

  private void addHousing(Slanted.Housing housing, String text) {
    Axis axis = housing.from().axis();
    Range depth = housing.removed().on(axis);
    deep(housing, depth, text);
    Matcher lean = ANGLE.matcher(text);
    lean.find();
    double tangent =
        Math.tan(Figures.radians(lean.group(1))) * Math.signum(housing.shift().ticks());
    for (int sign : new int[] {-1, 1}) {
      Map<Integer, Double> sum = new TreeMap<>();
      plus(sum, housing.across(), housing.bottom().end(sign), 1);
      plus(sum, housing.across(), housing.mouth().end(sign), -1);
      plus(sum, axis, depth.to(), -tangent);
      plus(sum, axis, depth.from(), tangent);
      check(sum, 0, ANGLE_OFF * depth.length().toMm(), lean.group(1));
    }
  }

  private void plus(Map<Integer, Double> sum, Axis axis, Length at, double times) {
    sum.merge(tracing.place(axis, at), times, Double::sum);
  }

  /** Thickness, width where it is not the part's, length. */
  private void addTenon(Cut.Tenon tenon, String text) {
    Matcher sizes = SIZES.matcher(text);
    if (!sizes.find()) {
      givens.fault("no size in '" + text + "'");
      return;
    }
    Axis run = tenon.from().axis();
    Axis wide = Axis.other(run, Axis.Y);
    said(Axis.Y, tenon.tenon().y(), sizes.group(1));
    if (sizes.group(2) != null) {
      said(wide, tenon.tenon().on(wide), sizes.group(2));
    }
    said(run, tenon.tenon().on(run), sizes.group(3));
  }

  /** What one note says of several is equal in all: so are the haunches beside tenons. */
  void addEqual(Cut.Tenon one, Cut.Tenon other) {
    if (one.haunch().isPresent() && other.haunch().isPresent()) {
      Map<Integer, Double> sum = new TreeMap<>();
      for (Cut.Tenon each : List.of(one, other)) {
        Axis run = each.from().axis();
        Range reach = each.haunch().get().box().on(run);
        int sign = each == one ? 1 : -1;
        plus(sum, run, reach.to(), sign);
        plus(sum, run, reach.from(), -sign);
      }
      check(sum, 0, 0, "equal tenons");
    }
  }

  private void addComb(Comb comb, String text) {
    Matcher said =
        Pattern.compile("(\\d+) sockets, (.*) wide and (.*) apart, (.*) long").matcher(text);
    said.find();
    if (Integer.parseInt(said.group(1)) != comb.sockets().size()) {
      givens.fault("not so many sockets are drawn: " + text);
    }
    said(comb.from().axis(), comb.end().on(comb.from().axis()), said.group(4));
    for (int i = 1; i < comb.sockets().size(); i++) {
      Range before = comb.sockets().get(i - 1);
      Range socket = comb.sockets().get(i);
      said(comb.along(), new Range(before.to(), socket.from()), said.group(3));
      if (i < comb.sockets().size() - 1 || comb.finger().equals(socket.length())) {
        said(comb.along(), socket, said.group(2));
      }
    }
  }

  /** All tails are as wide as the first, and narrower at their roots by their slope. */
  private void addRow(Dovetails row, String text) {
    Matcher slope = Pattern.compile("slope 1:(\\d+(?:\\.\\d+)?)").matcher(text);
    slope.find();
    double rise = 1 / Double.parseDouble(slope.group(1));
    Range first = row.tails().getFirst().wide();
    Range length = row.end().on(row.wide().axis());
    for (Dovetails.Tail tail : row.tails()) {
      Map<Integer, Double> equal = new TreeMap<>();
      plus(equal, row.across(), tail.wide().to(), 1);
      plus(equal, row.across(), tail.wide().from(), -1);
      plus(equal, row.across(), first.to(), -1);
      plus(equal, row.across(), first.from(), 1);
      check(equal, 0, 0, text);
      for (int sign : new int[] {-1, 1}) {
        Map<Integer, Double> sum = new TreeMap<>();
        plus(sum, row.across(), tail.wide().end(sign), sign);
        plus(sum, row.across(), tail.narrow().end(sign), -sign);
        plus(sum, row.wide().axis(), length.to(), -rise);
        plus(sum, row.wide().axis(), length.from(), rise);
        check(sum, 0, 0, text);
      }
    }
  }

  /** The edges of a slot lie about its middle; what is not drawn needs no place. */
  private void addSlots(Slots slots, String text) {
    Matcher sizes = SIZES.matcher(text);
    sizes.find();
    for (Point centre : slots.centres()) {
      Box box = slots.around(centre);
      addAbout(slots.along(), centre, box, sizes.group(3));
      addAbout(slots.across(), centre, box, sizes.group(1));
    }
    deep(slots, slots.around().on(slots.from().axis()), text);
  }

  private void addAbout(Axis axis, Point centre, Box box, String text) {
    Figure figure = figures.length(text);
    for (int sign : new int[] {-1, 1}) {
      OptionalInt edge = tracing.drawn(axis, box.on(axis).end(sign));
      if (edge.isPresent()) {
        Map<Integer, Double> sum =
            Map.of(edge.getAsInt(), 1.0, tracing.place(axis, centre.on(axis)), -1.0);
        check(sum, sign * figure.mm() / 2, figure.halfStep() / 2, text);
      }
    }
  }

  private void addSlope(Slanted.Slope slope, String text) {
    Axis from = slope.from().axis();
    Axis towards = slope.towards().axis();
    tracing.beyond(from, slope.first().on(from));
    Range drop = range(slope.first(), slope.second(), from);
    Range run = range(slope.first(), slope.second(), towards);
    switch (slope.kind()) {
      case CHAMFER -> {
        String size = text.replaceAll("^\\d+× ", "").replaceAll(" chamfer.*", "");
        said(from, drop, size);
        said(towards, run, size);
      }
      case TAPER -> said(from, drop, text.replaceAll(".*taper, (.*) off at.*", "$1"));
      case BEVEL, MITRE -> {
        Matcher angle = ANGLE.matcher(text);
        angle.find();
        double tangent = Math.tan(Figures.radians(angle.group(1)));
        Map<Integer, Double> sum = new TreeMap<>();
        plus(sum, from, drop.to(), 1);
        plus(sum, from, drop.from(), -1);
        plus(sum, towards, run.to(), -tangent);
        plus(sum, towards, run.from(), tangent);
        check(sum, 0, 2 * ANGLE_OFF * run.length().toMm(), angle.group(1));
      }
    }
  }

  /**
   * In a case both corners of a spline's slot lie on the mitre, as far apart as the slot is wide.
   *
   * @param lean what the mitre's note says
   */
  void addSlot(SplineSlot slot, String text, Slanted.Slope mitre, String lean) {
    Axis from = slot.from().axis();
    Matcher angle = ANGLE.matcher(lean);
    Matcher width = Pattern.compile("(" + Figures.NUMBER + ") spline slot").matcher(text);
    Point one = slot.onMitre().getFirst();
    Point two = slot.onMitre().getLast();
    boolean drawn = givens.isDrawn(from, one.on(from)) && givens.isDrawn(from, two.on(from));
    if (!drawn || !angle.find() || !width.find()) {
      return;
    }
    double leans = Figures.radians(angle.group(1));
    double up = sign(two, one, Axis.Y);
    double along =
        sign(mitre.second(), mitre.first(), from) * sign(mitre.second(), mitre.first(), Axis.Y);
    Map<Integer, Double> on = new TreeMap<>();
    plus(on, from, one.on(from), 1);
    plus(on, from, mitre.first().on(from), -1);
    plus(on, Axis.Y, one.y(), -along * Math.tan(leans));
    plus(on, Axis.Y, mitre.first().y(), along * Math.tan(leans));
    check(on, 0, 2 * ANGLE_OFF * one.y().minus(mitre.first().y()).abs().toMm(), lean);
    Figure wide = figures.length(width.group(1));
    addApart(Axis.Y, one, two, up * wide.mm() * Math.cos(leans), text);
    addApart(from, one, two, along * up * wide.mm() * Math.sin(leans), text);
  }

  private void addApart(Axis axis, Point one, Point two, double mm, String text) {
    if (givens.isDrawn(axis, two.on(axis))) {
      Map<Integer, Double> apart = new TreeMap<>();
      plus(apart, axis, two.on(axis), 1);
      plus(apart, axis, one.on(axis), -1);
      check(apart, mm, figures.format().step().toMm() / 2, text);
    }
  }

  private static double sign(Point to, Point from, Axis axis) {
    return Math.signum(to.on(axis).minus(from.on(axis)).ticks());
  }

  private static Range range(Point one, Point other, Axis axis) {
    return new Range(one.on(axis).min(other.on(axis)), one.on(axis).max(other.on(axis)));
  }
}
