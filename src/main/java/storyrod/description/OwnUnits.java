package storyrod.description;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.measure.Unit;

/** Lengths of a shared file that says `units:`, written so that they hold in a project of any. */
final class OwnUnits {
  private static final Pattern BARE = Pattern.compile("[0-9][0-9 ./]*");

  private OwnUnits() {}

  /** The entry with the file's unit after every bare length. */
  static Mapping entry(Mapping file, Mapping entry, EntryType type) {
    return unit(file).map(unit -> written(entry, type, unit)).orElse(entry);
  }

  /** The same for entries with names. */
  static Mapping entries(Mapping file, Mapping entries, EntryType type) {
    List<Member> members =
        entries.members().stream()
            .map(
                member ->
                    member.value() instanceof Mapping entry
                        ? new Member(member.key(), entry(file, entry, type))
                        : member)
            .toList();
    return new Mapping(members, entries.at());
  }

  private static Optional<String> unit(Mapping file) {
    return file.get("units")
        .filter(Scalar.class::isInstance)
        .map(word -> ((Scalar) word).text())
        .filter(word -> List.of("inch", "mm").contains(word))
        .map(word -> word.equals(Unit.MM.word()) ? "mm" : "in");
  }

  private static Mapping written(Mapping entry, EntryType type, String unit) {
    return new Mapping(
        entry.members().stream().map(member -> written(member, type, unit)).toList(), entry.at());
  }

  private static Member written(Member member, EntryType type, String unit) {
    return isLength(member.key().text(), type)
            && member.value() instanceof Scalar number
            && BARE.matcher(number.text()).matches()
        ? new Member(
            member.key(),
            new Scalar(number.text().strip() + " " + unit, number.quoted(), number.at()))
        : member;
  }

  private static boolean isLength(String name, EntryType type) {
    return type.keys().stream()
        .filter(key -> key.name().equals(name))
        .anyMatch(
            key ->
                key.type() instanceof ValueType.LengthValue
                    || key.type() instanceof ValueType.Allowance);
  }
}
