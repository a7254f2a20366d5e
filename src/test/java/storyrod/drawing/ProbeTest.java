package storyrod.drawing;
import java.util.*;
import org.junit.jupiter.api.*;
import storyrod.build.*;
import storyrod.piece.*;
class ProbeTest {
  @TestFactory
  List<DynamicTest> probe() {
    return AllProjects.each(project -> {
      var piece = project.set().piece();
      Map<String,Integer> n = new TreeMap<>();
      long t=System.nanoTime();
      var all = PlacedHardware.of(piece);
      System.out.println("== "+project+" "+(System.nanoTime()-t)/1000000+" ms");
      all.forEach(i -> n.merge(i.item(),1,Integer::sum));
      HardwareUse.of(piece).counts().forEach((k,v)-> System.out.println("  "+HardwareUse.of(piece).mark(k)+" "+k+" "+v+" placed "+n.getOrDefault(k,0)+" "+piece.kind(k)));
    });
  }
}
