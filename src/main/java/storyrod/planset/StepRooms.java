package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import storyrod.drawing.Packing;
import storyrod.drawing.Size;

/**
 * Gives the pictures of steps their rooms: pages are filled, short steps share one, and a long text
 * goes into two columns before it takes the picture's room.
 */
final class StepRooms {
  /** The share of a page's height that a picture may take, and that which is enough for it. */
  static final double MOST_SHARE = 0.62;

  private static final double ENOUGH_SHARE = 0.4;

  /** The share of a page that a picture takes at least where its step has a page of its own. */
  static final double LEAST_SHARE = 0.27;

  static final double LEAST_PICTURE_MM = 42;

  /** What is enough for a strip; higher it only fills a page that stays white. */
  private static final double ENOUGH_STRIP_MM = 32;

  /** A strip below the lists is small, and so half as bad as none: a share of what is squared. */
  private static final double BELOW_LISTS = 0.7;

  private static final double STEP_MM = 2;
  private static final double CLEARLY = 1.03;

  private final Paper paper;
  private final StepHeights texts;

  StepRooms(Print print) {
    this.paper = print.paper();
    this.texts = new StepHeights(print);
  }

  /**
   * A step that has to be set.
   *
   * @param stageMm the height of its stage's heading, if it stands under one
   * @param picture the height that its picture fills at a width; empty if it has none
   * @param strip the share of a page that may stay white for a strip above small texts; 0 if its
   *     picture is no strip
   */
  record Wish(
      StepEntry step, double stageMm, Optional<DoubleUnaryOperator> picture, double strip) {}

  /**
   * A step that takes its place.
   *
   * @param widthMm the width of its picture's room
   * @param besideMm what it takes beside the room of its picture
   * @param aside the room below its lists, for which its last height is
   */
  private record Place(Packing.Item item, double widthMm, double besideMm, Optional<Size> aside) {
    Place(Packing.Item item, double widthMm, double besideMm) {
      this(item, widthMm, besideMm, Optional.empty());
    }

    double largestMm() {
      return item.heights().getFirst() - besideMm;
    }

    boolean isAside(int choice) {
      return aside.isPresent() && choice == item.heights().size() - 1;
    }

    /**
     * The room of its picture where it has one of its heights; empty where it has none. Below the
     * lists it may be higher by what is left white of the page.
     *
     * @param mostMm no picture below lists is made higher than this
     */
    Optional<Size> room(int choice, double whiteMm, double mostMm) {
      if (isAside(choice)) {
        return aside.map(
            each ->
                new Size(
                    each.widthMm(),
                    Math.max(each.heightMm(), Math.min(each.heightMm() + whiteMm, mostMm))));
      }
      double high = item.heights().get(choice) - besideMm;
      return widthMm > 0 && high > 0 ? Optional.of(new Size(widthMm, high)) : Optional.empty();
    }
  }

  /** The rooms of the pictures, by the numbers of their steps. */
  Map<Integer, Size> of(List<Wish> wishes) {
    List<Place> places = wishes.stream().map(this::place).toList();
    List<Packing.Item> items = places.stream().map(Place::item).toList();
    Map<Integer, Size> rooms = new LinkedHashMap<>();
    for (Packing.Page page : Packing.pages(items, StepHeights.roomMm(paper), StepPages.MOST)) {
      double white = whiteMm(page, items) / Math.max(1, asides(page, places));
      for (int i = 0; i < page.choices().size(); i++) {
        int at = page.first() + i;
        int number = wishes.get(at).step().number();
        places
            .get(at)
            .room(page.choices().get(i), white, MOST_SHARE * paper.textHeightMm())
            .ifPresent(room -> rooms.put(number, room));
      }
    }
    return rooms;
  }

  /** How many steps of a page have their pictures below their lists. */
  private static long asides(Packing.Page page, List<Place> places) {
    return IntStream.range(0, page.choices().size())
        .filter(i -> places.get(page.first() + i).isAside(page.choices().get(i)))
        .count();
  }

  private double whiteMm(Packing.Page page, List<Packing.Item> items) {
    double filled = 0;
    for (int i = 0; i < page.choices().size(); i++) {
      filled += items.get(page.first() + i).heights().get(page.choices().get(i));
    }
    return Math.max(0, StepHeights.roomMm(paper) - filled);
  }

  private Place place(Wish wish) {
    return wish.picture()
        .map(picture -> wish.strip() > 0 ? strip(wish, picture) : pictured(wish, picture))
        .orElseGet(
            () -> {
              double text = texts.of(wish.step(), false) + wish.stageMm();
              return new Place(Packing.Item.of(text), 0, text);
            });
  }

  /**
   * A strip may shrink as long as it can be read, to what it fills at no width; it goes below the
   * lists where no page has room for it above the sentences or too much of one would stay white.
   */
  private Place strip(Wish wish, DoubleUnaryOperator picture) {
    double text = texts.of(wish.step(), false) + wish.stageMm();
    double around = text + StepMeasures.AROUND_STRIP_MM;
    double wide = paper.textWidthMm();
    double least = picture.applyAsDouble(0);
    List<Double> heights = new ArrayList<>();
    double most = Math.min(picture.applyAsDouble(wide), MOST_SHARE * paper.textHeightMm());
    for (double high = most; high > least; high -= STEP_MM) {
      heights.add(around + high);
    }
    heights.add(around + Math.min(least, most));
    heights.removeIf(height -> height > StepHeights.roomMm(paper));
    Optional<Size> aside = aside(wish, picture, around + Math.min(least, most));
    heights.add(aside.map(room -> withAside(wish, room)).orElse(text));
    double gone = wish.strip() * (aside.isPresent() ? BELOW_LISTS : 1);
    Packing.Item item = new Packing.Item(heights, around + ENOUGH_STRIP_MM, gone);
    return new Place(item, wide, around, aside);
  }

  /** What the sentences leave below the lists, or more where that is lower than above them. */
  private Optional<Size> aside(Wish wish, DoubleUnaryOperator picture, double aboveMm) {
    double needed = picture.applyAsDouble(StepMeasures.SIDE_MM);
    double left = texts.asideMm(wish.step(), MOST_SHARE * paper.textHeightMm());
    Size room = new Size(StepMeasures.SIDE_MM, Math.max(needed, left));
    double most = Math.min(aboveMm, StepHeights.roomMm(paper));
    return Optional.of(room).filter(each -> withAside(wish, each) < most);
  }

  private double withAside(Wish wish, Size room) {
    return texts.withAside(wish.step(), room.heightMm()) + wish.stageMm();
  }

  /**
   * In columns only where the picture gets clearly larger by it, and a line to sign has room below.
   */
  private Place pictured(Wish wish, DoubleUnaryOperator picture) {
    double around = wish.stageMm() + StepMeasures.AROUND_PICTURE_MM;
    double wide = paper.textWidthMm();
    if (texts.of(wish.step(), false) + wish.stageMm() > StepHeights.roomMm(paper)) {
      return overPages(wish, picture);
    }
    Place plain = place(wide, around + texts.of(wish.step(), true), picture);
    double narrow = texts.besideListsMm();
    Place columns = place(narrow, around + texts.inColumns(wish.step()), picture);
    Place onePage =
        isTooHigh(wish) || scale(columns, picture) < CLEARLY * scale(plain, picture)
            ? plain
            : atLeast(texts.side().besidePicture(wish.step()), columns);
    return isReadable(onePage, picture) ? onePage : largerOf(onePage, overPages(wish, picture));
  }

  /** Whether the lists do not leave the sentences in columns their room. */
  private boolean isTooHigh(Wish wish) {
    return wish.stageMm() + texts.listsInColumns(wish.step()) > paper.textHeightMm();
  }

  /** Whether a picture is as high as one with a page to its step has to be, or as it can be. */
  private boolean isReadable(Place place, DoubleUnaryOperator picture) {
    double filled = picture.applyAsDouble(place.widthMm());
    return place.largestMm() >= Math.min(filled, LEAST_SHARE * paper.textHeightMm());
  }

  private static Place largerOf(Place onePage, Place overPages) {
    return overPages.largestMm() > onePage.largestMm() ? overPages : onePage;
  }

  /** Beside the lists where these have their room and the picture gets clearly larger by it. */
  private Place overPages(Wish wish, DoubleUnaryOperator picture) {
    Place above = aboveLists(wish, picture);
    double room = StepHeights.roomMm(paper) - wish.stageMm() - texts.besideLists(wish.step());
    if (room < texts.side().besidePicture(wish.step())) {
      return above;
    }
    Place beside = besideLists(wish, picture, room);
    double clearly = CLEARLY * CLEARLY;
    return area(beside, picture) < clearly * area(above, picture) ? above : beside;
  }

  /** A picture over the cautions and a sentence, all three beside the lists. */
  private Place besideLists(Wish wish, DoubleUnaryOperator picture, double room) {
    double narrow = texts.besideListsMm();
    double most = Math.min(picture.applyAsDouble(narrow), MOST_SHARE * paper.textHeightMm());
    double left = room - StepMeasures.AROUND_PICTURE_MM - texts.firstWords(wish.step());
    double high = Math.min(most, Math.max(left, LEAST_PICTURE_MM / 2));
    double beside = wish.stageMm() + StepMeasures.AROUND_PICTURE_MM + texts.of(wish.step(), true);
    return new Place(Packing.Item.of(beside + high), narrow, beside);
  }

  /** The area of a picture as it comes out. */
  private static double area(Place place, DoubleUnaryOperator picture) {
    double filled = picture.applyAsDouble(place.widthMm());
    double high = Math.min(filled, place.largestMm());
    return high * high * place.widthMm() / filled;
  }

  /** Words that run on over the next page leave what the lists do not need to a picture. */
  private Place aboveLists(Wish wish, DoubleUnaryOperator picture) {
    double around = wish.stageMm() + StepMeasures.AROUND_PICTURE_MM;
    double wide = paper.textWidthMm();
    double most = Math.min(picture.applyAsDouble(wide), ENOUGH_SHARE * paper.textHeightMm());
    double left =
        StepHeights.roomMm(paper)
            - around
            - texts.head(wish.step(), true)
            - texts.side().besidePicture(wish.step())
            - texts.below(true);
    double high = Math.max(Math.min(most, left), Math.min(most, LEAST_PICTURE_MM / 2));
    double beside = around + texts.of(wish.step(), true);
    return new Place(Packing.Item.of(beside + high), wide, beside);
  }

  /** How large a picture comes out, as a share of what fills the page's width. */
  private double scale(Place place, DoubleUnaryOperator picture) {
    double filled = place.largestMm() / picture.applyAsDouble(place.widthMm());
    return Math.min(1, filled) * place.widthMm() / paper.textWidthMm();
  }

  private Place place(double widthMm, double besideMm, DoubleUnaryOperator picture) {
    double most = Math.min(picture.applyAsDouble(widthMm), MOST_SHARE * paper.textHeightMm());
    double largest =
        Math.max(Math.min(most, paper.roomMm() - besideMm), Math.min(most, LEAST_PICTURE_MM / 2));
    List<Double> heights = new ArrayList<>(List.of(besideMm + largest));
    for (double less = largest - STEP_MM; less >= LEAST_PICTURE_MM; less -= STEP_MM) {
      heights.add(besideMm + less);
    }
    double enough = besideMm + ENOUGH_SHARE * paper.textHeightMm();
    return new Place(new Packing.Item(heights, enough), widthMm, besideMm);
  }

  /** A place whose picture's room is never lower than the lists beside it. */
  private static Place atLeast(double lists, Place place) {
    List<Double> heights =
        place.item().heights().stream()
            .map(height -> Math.max(height, place.besideMm() + lists))
            .distinct()
            .toList();
    return new Place(
        new Packing.Item(heights, place.item().enoughMm()), place.widthMm(), place.besideMm());
  }
}
