package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Edges.Edge;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Face;
import storyrod.geometry.Solid;

final class SharedEdgesTest {
  private static final View FRONT = View.at(Face.FRONT);

  private final List<ScreenLine> asked = new ArrayList<>();

  private SharedEdges of(Edge... items) {
    List<List<Edge>> edges = List.of(items).stream().map(List::of).toList();
    return new SharedEdges(
        edges,
        line -> {
          asked.add(line);
          return List.of(line.picture());
        });
  }

  private static Edge edge(double fromX, double toX, double z, boolean outline) {
    Vector3D from = Vector3D.of(fromX, 0, z);
    return new Edge(ScreenLine.of(from, Vector3D.of(toX, 0, z), FRONT), outline);
  }

  @Test
  void firstItemKeepsWhatTwoShareAndOutlinesGoBeforeInnerEdges() {
    SharedEdges edges = of(edge(0, 100, 0, true), edge(50, 150, 0, true), edge(0, 200, 0, false));
    assertEquals(100, length(edges.of(0, true)), 1e-9);
    assertEquals(50, length(edges.of(1, true)), 1e-9);
    assertEquals(50, length(edges.of(2, false)), 1e-9);
    assertEquals(0, length(edges.of(0, false)), 1e-9);
    SharedEdges inner = of(edge(0, 100, 0, false), edge(0, 100, 0, true));
    assertEquals(0, length(inner.of(0, false)), 1e-9);
    assertEquals(100, length(inner.of(1, true)), 1e-9);
  }

  private static double length(List<Stroke> strokes) {
    return strokes.stream().mapToDouble(Stroke::length).sum();
  }

  @Test
  void onlyEdgesOnOneLineWithWhatIsAskedForAreWorkedOutAndThoseOnce() {
    SharedEdges edges = of(edge(0, 100, 0, true), edge(0, 100, 40, true), edge(50, 150, 0, true));
    edges.of(2, true);
    edges.of(2, true);
    assertEquals(2, asked.size());
    edges.of(1, true);
    assertEquals(3, asked.size());
  }

  @Test
  void edgeOfTwoFacesInSightIsNoOutlineWhicheverWayItRuns() {
    Scene.Item cube =
        new Scene.Item("cube", Solid.of(SeenSolids.box(0, 9, 0, 9, 0, 9)), Vector3D.ZERO);
    List<Edge> edges = HiddenLines.of(new Scene(List.of(cube)), View.USUAL).edges(0);
    assertEquals(9, edges.size());
    assertEquals(3, edges.stream().filter(each -> !each.isOutline()).count());
  }
}
