package storyrod.drawing;

import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import storyrod.piece.Mark;

/**
 * Rooms that remember what they were asked, so that it is known for which others a drawing does.
 */
final class AskedRooms implements Rooms {
  private final Rooms rooms;
  private final Queue<Asked<?>> asked = new ConcurrentLinkedQueue<>();

  AskedRooms(Rooms rooms) {
    this.rooms = rooms;
  }

  /** A question with its answer. */
  private record Asked<T>(Function<Rooms, T> question, T answer) {
    boolean isAnsweredAlikeBy(Rooms other) {
      return answer.equals(question.apply(other));
    }
  }

  private <T> T ask(Function<Rooms, T> question) {
    T answer = question.apply(rooms);
    asked.add(new Asked<>(question, answer));
    return answer;
  }

  /** Whether other rooms answer all that was asked so far alike. */
  boolean areLike(Rooms others) {
    return asked.stream().allMatch(each -> each.isAnsweredAlikeBy(others));
  }

  @Override
  public Size page() {
    return ask(Rooms::page);
  }

  @Override
  public Size turnedPage() {
    return ask(Rooms::turnedPage);
  }

  @Override
  public Size cover() {
    return ask(Rooms::cover);
  }

  @Override
  public Size exploded() {
    return ask(Rooms::exploded);
  }

  @Override
  public Size explodedHardware() {
    return ask(Rooms::explodedHardware);
  }

  @Override
  public List<Size> opened(List<DoubleUnaryOperator> heights) {
    return ask(each -> each.opened(heights));
  }

  @Override
  public Size layout() {
    return ask(each -> each.layout());
  }

  @Override
  public Size layout(int cuts) {
    return ask(each -> each.layout(cuts));
  }

  @Override
  public Size fullSize(List<FullSize> templates) {
    return ask(each -> each.fullSize(templates));
  }

  @Override
  public Size turnedFullSize(List<FullSize> templates) {
    return ask(each -> each.turnedFullSize(templates));
  }

  @Override
  public double besidePartMm(Mark mark) {
    return ask(each -> each.besidePartMm(mark));
  }

  @Override
  public double besideBlankMm(Mark mark) {
    return ask(each -> each.besideBlankMm(mark));
  }

  @Override
  public Size joint() {
    return ask(Rooms::joint);
  }

  @Override
  public double besideGeneralMm() {
    return ask(Rooms::besideGeneralMm);
  }

  @Override
  public Size besideSentences() {
    return ask(Rooms::besideSentences);
  }

  @Override
  public Map<Integer, Size> steps(Map<Integer, DoubleUnaryOperator> heights) {
    return ask(each -> each.steps(heights));
  }
}
