package storyrod.description;

import java.util.List;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;

/**
 * An item of hardware that comes with the tool.
 *
 * @param name by which a project uses it
 * @param kind as an item of a project has one
 * @param title for a reader
 */
public record TradeItem(String name, String kind, String title) {
  /** All of them, in the order of their list. */
  public static List<TradeItem> all() {
    return StartSet.members().stream().map(TradeItem::of).toList();
  }

  private static TradeItem of(Member member) {
    return new TradeItem(member.key().text(), text(member, "kind"), text(member, "title"));
  }

  private static String text(Member member, String key) {
    return ((Mapping) member.value()).get(key).map(Node::texts).orElse(List.of()).getFirst();
  }
}
