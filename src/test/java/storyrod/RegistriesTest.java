package storyrod;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.rule.Rule;
import storyrod.build.rule.Rules;
import storyrod.check.Check;
import storyrod.check.Checks;
import storyrod.piece.JointType;
import storyrod.piece.JointTypes;

/** Every joint, check and rule that exists is in its registry, in the order of the names. */
class RegistriesTest {
  @Test
  void everyJointIsRegistered() {
    assertEquals(classesOf(JointType.class), names(JointTypes.ALL));
    List<String> words = JointTypes.ALL.stream().map(type -> type.words().name()).toList();
    assertEquals(words.stream().sorted().toList(), words);
  }

  @Test
  void everyCheckIsRegistered() {
    assertEquals(classesOf(Check.class), names(Checks.ALL));
    List<String> codes = Checks.ALL.stream().map(Check::code).toList();
    assertEquals(codes.stream().sorted().toList(), codes);
  }

  @Test
  void everyRuleIsRegistered() {
    assertEquals(classesOf(Rule.class), names(Rules.ALL));
  }

  private static List<String> names(List<?> registered) {
    return registered.stream().map(each -> each.getClass().getSimpleName()).sorted().toList();
  }

  private static List<String> classesOf(Class<?> type) {
    return new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(type.getPackageName())
            .stream()
            .filter(each -> each.isAssignableTo(type) && !each.isInterface())
            .filter(each -> !each.getModifiers().contains(JavaModifier.ABSTRACT))
            .map(JavaClass::getSimpleName)
            .sorted()
            .toList();
  }
}
