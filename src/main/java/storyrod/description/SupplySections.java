package storyrod.description;

import java.util.List;
import storyrod.description.ValueType.Allowance;
import storyrod.description.ValueType.Amount;
import storyrod.description.ValueType.Choice;
import storyrod.description.ValueType.Count;
import storyrod.description.ValueType.CoverageValue;
import storyrod.description.ValueType.LengthValue;
import storyrod.description.ValueType.Listed;
import storyrod.description.ValueType.Number;
import storyrod.description.ValueType.OneOrMore;
import storyrod.description.ValueType.PriceValue;
import storyrod.description.ValueType.RangeValue;
import storyrod.description.ValueType.Section;
import storyrod.description.ValueType.SheetSizeValue;
import storyrod.description.ValueType.StockName;
import storyrod.description.ValueType.Text;
import storyrod.description.ValueType.VolumeValue;
import storyrod.description.ValueType.YesNo;

/** The keys of what a piece takes: wood, items and finish, and the shop that works it. */
final class SupplySections {
  private static final Text TEXT = new Text();
  private static final LengthValue LENGTH = new LengthValue(false);
  private static final RangeValue RANGE = new RangeValue();
  private static final Allowance ALLOWANCE = new Allowance();

  public static final EntryType STOCK =
      new EntryType(
          "stock",
          "A wood or sheet that parts are cut from.",
          List.of(
              Key.required("kind", Choice.of(StockKind.values()), "Boards or sheets."),
              Key.required("species", TEXT, "The wood, or what the sheet is made of."),
              Key.required("thickness", LENGTH, "How thick the finished parts are."),
              Key.optional("bought-as", LENGTH, "How thick boards are when bought."),
              Key.optional("sheet", new SheetSizeValue(), "Along the face grain x across it."),
              Key.optional("price", new PriceValue(), "An amount per board-foot or per sheet."),
              Key.optional("density", new Amount(), "In kg/m³, if it is not the usual one."),
              Key.optional("grained", new YesNo(), "Whether parts must follow its grain.")
                  .standard("yes"),
              Key.optional("sawn", new Choice(List.of("flat", "quarter")), "How boards were sawn.")
                  .standard("flat"),
              Key.optional(
                  "movement",
                  new Amount(),
                  "What its width changes for each per cent of moisture, as a ratio, if it is not"
                      + " that of the tables."),
              Key.optional(
                  "modulus",
                  new Amount(),
                  "Its modulus of elasticity along the grain in MPa, if it is not that of the"
                      + " tables."),
              Key.optional(
                  "measured", LENGTH, "How thick the sheet is by the calliper, once it is there."),
              Key.optional("spalted", new YesNo(), "Whether the wood is spalted or mouldy.")
                  .standard("no"),
              Key.optional(
                  "boards",
                  new SheetSizeValue(),
                  "A usual board where it is bought, along the grain x across it.")));

  public static final EntryType DEFECT =
      new EntryType(
          "defect",
          "A knot, a split, a soft or waney place: a rectangle that no part is cut from.",
          List.of(
              Key.required("x", RANGE, "From where to where along the grain, from one end."),
              Key.optional(
                  "y", RANGE, "From where to where across, from one edge; else the whole width.")));

  public static final EntryType ON_HAND =
      new EntryType(
          "on-hand",
          "Boards of one size, or pieces of a sheet, that are there already.",
          List.of(
              Key.required("stock", new StockName(), "What they are."),
              Key.required("length", LENGTH, "How long one is, along the grain."),
              Key.required("width", LENGTH, "How wide one is."),
              Key.optional("count", new Count(1), "How many there are.").standard("1"),
              Key.optional("price", new Amount(), "What using one of them is counted as."),
              Key.optional("defects", new Listed(DEFECT), "What no part may be cut from."),
              Key.optional("say", TEXT, "Where they come from, for the record.")));

  public static final EntryType ITEM =
      new EntryType(
          "item",
          "An item of hardware with the sizes that matter.",
          List.of(
              Key.required("kind", Choice.of(ItemKind.values()), "What it is."),
              Key.optional("title", TEXT, "Its name for a reader."),
              Key.optional(
                  "from",
                  new StockName(),
                  "The stock that splines are cut from in the shop; without it they are bought."),
              Key.optional("length", LENGTH, "How long it is."),
              Key.optional(
                  "diameter",
                  LENGTH,
                  "A screw's shank, the body of a pin, dowel or plug, a dot that is stuck on."),
              Key.optional("side-clearance", LENGTH, "What a slide needs beside the drawer."),
              Key.optional("bottom-clearance", LENGTH, "What it needs under the drawer's sides."),
              Key.optional("notch", LENGTH, "From the lower edge of the sides up to the bottom."),
              Key.optional("cup-diameter", LENGTH, "How wide a concealed hinge's cup is."),
              Key.optional("cup-depth", LENGTH, "How deep that cup is let in."),
              Key.optional("cup-edge", LENGTH, "From the door's edge to the rim of the cup."),
              Key.optional("leaf-width", LENGTH, "How wide a butt hinge's leaf is."),
              Key.optional("leaf-thickness", LENGTH, "How deep that leaf is let in."),
              Key.optional("centres", LENGTH, "Between the two holes of a pull."),
              Key.optional(
                  "width",
                  LENGTH,
                  "How wide a loose tenon, biscuit, button or spline is, or a sheet that is cut to"
                      + " lie on a bottom."),
              Key.optional("thickness", LENGTH, "How thick it is, or how deep it is let in."),
              Key.optional("tongue", LENGTH, "How far a fastener reaches into its slot."),
              Key.optional("tongue-thickness", LENGTH, "How thick that tongue is."),
              Key.optional("slot-depth", LENGTH, "How deep the slot for a biscuit is."),
              Key.optional("travel", LENGTH, "How far in all the top can move on a fastener."),
              Key.optional("pack", new Count(1), "How many come in a pack.").standard("1"),
              Key.optional("price", new Amount(), "The price of a pack.")));

  public static final EntryType LAST_COAT =
      new EntryType(
          "last-coat",
          "Another product that goes on over the coats of the finish, such as wax over shellac.",
          List.of(
              Key.required("product", TEXT, "What is put on."),
              Key.optional("how", new Choice(FinishEntry.HOW), "How it is put on."),
              Key.optional("coats", new Count(1), "How many coats.").standard("1"),
              Key.optional("dry-hours", new Count(0), "Hours until it has dried.").standard("24"),
              Key.optional("kind", new Choice(FinishEntry.KINDS), "What sort of product it is."),
              Key.optional("coverage", new CoverageValue(), "What one coat covers, by its label."),
              Key.optional("sold-in", new VolumeValue(), "What one can holds."),
              Key.optional("price", new Amount(), "The price of one can.")));

  public static final EntryType SANDPAPER =
      new EntryType(
          "sandpaper",
          "How the sandpaper is sold that a finish takes.",
          List.of(
              Key.optional("pack", new Count(1), "How many sheets of a grit come in a pack.")
                  .standard("1"),
              Key.required("price", new Amount(), "The price of a pack.")));

  public static final EntryType FINISH =
      new EntryType(
          "finish",
          "What the piece is finished with.",
          List.of(
              Key.required("product", TEXT, "What is put on."),
              Key.optional("how", new Choice(FinishEntry.HOW), "How it is put on."),
              Key.optional("coats", new Count(1), "How many coats.").standard("3"),
              Key.optional("dry-hours", new Count(0), "Hours between coats.").standard("24"),
              Key.optional("sand-to", new Count(1), "The last grit before it.").standard("180"),
              Key.optional("tried-on", TEXT, "The wood it was tried on."),
              Key.optional("sheen", new Choice(FinishEntry.SHEENS), "How it shines when dry."),
              Key.optional(
                  "cure-days", new Count(1), "Days until it has fully hardened, by its label."),
              Key.optional("kind", new Choice(FinishEntry.KINDS), "What sort of product it is."),
              Key.optional("coverage", new CoverageValue(), "What one coat covers, by its label."),
              Key.optional("sold-in", new VolumeValue(), "What one can holds."),
              Key.optional("price", new Amount(), "The price of one can."),
              Key.optional("sandpaper", new Section(SANDPAPER), "The price of its sandpaper."),
              Key.optional(
                  "last", new Section(LAST_COAT), "What goes on over these coats, and once.")));

  public static final EntryType GLUE =
      new EntryType(
          "glue",
          "What its joints are glued with.",
          List.of(
              Key.required("product", TEXT, "What is spread."),
              Key.optional("kind", new Choice(GlueEntry.KINDS), "What sort of glue it is."),
              Key.optional(
                  "open-minutes", new Count(1), "How long it may lie before a joint is closed."),
              Key.optional("clamp-minutes", new Count(1), "How long a joint stays clamped."),
              Key.optional("cure-hours", new Count(1), "How long before tools run across a joint."),
              Key.optional("coverage", new CoverageValue(), "What it covers, by its label."),
              Key.optional("sold-in", new VolumeValue(), "What one bottle holds."),
              Key.optional("price", new Amount(), "The price of one bottle.")));

  public static final EntryType SHOP =
      new EntryType(
          "shop",
          "What the shop's machines and habits are.",
          List.of(
              Key.optional("kerf", ALLOWANCE, "The saw blade's cut.").standard("1/8 in"),
              Key.optional("edge-trim", ALLOWANCE, "Cut off each edge of a sheet first.")
                  .standard("1/4 in", "6 mm"),
              Key.optional("extra-length", ALLOWANCE, "What a rough part is longer.")
                  .standard("1 in", "25 mm"),
              Key.optional(
                      "extra-width",
                      ALLOWANCE,
                      "What a rough part up to 4 ft long is wider; half as much again for each 4 ft more.")
                  .standard("1/4 in", "6 mm"),
              Key.optional("planer-width", LENGTH, "The widest board that the planer takes.")
                  .standard("13 in"),
              Key.optional(
                      "waste-percent",
                      new Count(0),
                      "What is bought beyond the rough parts, in per cent.")
                  .standard("20"),
              Key.optional("clamps", new Count(0), "How many clamps there are.").standard("6"),
              Key.optional("clamp-opening", LENGTH, "How far the longest clamps open."),
              Key.optional("hours-per-day", new Count(1), "How many hours are worked in a day.")
                  .standard("8"),
              Key.optional(
                      "widest-fixed",
                      LENGTH,
                      "How wide solid wood may be held across its grain before a finding says so.")
                  .standard("5 in"),
              Key.optional("jointer-width", LENGTH, "The widest face that the jointer flattens."),
              Key.optional(
                  "drum-sander-width", LENGTH, "The widest board that the drum sander takes."),
              Key.optional("crosscut", LENGTH, "The widest board that is crosscut in one go."),
              Key.optional("shortest", LENGTH, "The shortest board for jointer and planer.")
                  .standard("12 in", "300 mm"),
              Key.optional(
                  "without",
                  new OneOrMore(TEXT),
                  "The tools that the shop does not have, by their names in the plan set.")));

  public static final EntryType CLIMATE =
      new EntryType(
          "climate",
          "The air of the room in which the piece will stand. From it follows how much solid wood"
              + " moves between the driest and the dampest season.",
          List.of(
              Key.optional("room", new Choice(ClimateEntry.ROOMS), "A usual room.")
                  .standard("heated"),
              Key.optional("dry-celsius", new Number(), "Degrees Celsius in the driest season."),
              Key.optional("dry-humidity", new Amount(), "Relative humidity then, in per cent."),
              Key.optional("damp-celsius", new Number(), "Degrees Celsius in the dampest season."),
              Key.optional("damp-humidity", new Amount(), "Relative humidity then, in per cent.")));

  private SupplySections() {}
}
