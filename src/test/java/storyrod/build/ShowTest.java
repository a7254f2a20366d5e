package storyrod.build;

import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostics;

class ShowTest {
  @Test
  void show() {
    Diagnostics d = new Diagnostics();
    var plan = Planner.plan(Benches.bench().piece(), d);
    d.sorted().forEach(System.out::println);
    plan.ifPresent(p -> p.steps().forEach(s -> System.out.println(
        s.number() + " " + s.stage().key() + " " + s.operations().stream().map(Operation::name).toList()
        + " enters " + s.enters().map(Enum::name).orElse("-") + " " + s.minutes() + "/" + s.waitMinutes() + " " + s.hardware() + " " + s.cautions() + "\n      " + s.settings().stream().map(x -> x.key() + x.part().map(q -> " " + q).orElse("") + "=" + x.value()).toList())));
  }
}
