package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Trays and parts that are there several times, and what joins them. */
class RepeatedUseTest {
  @Test
  void repeatedTraysGrowByAStep() {
    Description rack =
        Trays.described(
            """
            assemblies:
              tray:
                use: tray.yaml
                repeat: {count: trays, along: z, over: 0 to 320, gap: 10, shorter-by: 20}
                in: {z: each.bottom to each.top}
            """);
    // 320 = 3 h - 20 - 40 + 2 * 10, so h = 120: then 100, then 80
    assertEquals("0-10 0-200 0-120", Trays.extent(rack, "tray-1.left"));
    assertEquals("0-10 0-200 130-230", Trays.extent(rack, "tray-2.left"));
    assertEquals("0-10 0-200 240-320", Trays.extent(rack, "tray-3.left"));
    assertEquals(List.of("oak", "wood"), List.copyOf(rack.stock().keySet()));
  }

  @Test
  void jointOfARepeatedPartStandsForEachOfThem() {
    Description rack =
        Trays.described(
            """
            parts:
              side: {stock: oak, x: 0 to 12, y: 0 to 100, z: 0 to 400, grain: z}
              shelf:
                stock: oak
                repeat: {count: 3, along: z, over: 0 to 400, size: oak.thickness}
                x: side.right to 300
                y: 0 to 100
                z: each.bottom to each.top
                grain: x
            joints:
              - dado: {end: shelf.left, into: side, depth: 4}
            """);
    assertEquals("12-300 0-100 91-103", Trays.extent(rack, "shelf-1"));
    assertEquals(
        List.of("shelf-1", "shelf-2", "shelf-3"),
        rack.joints().stream().map(joint -> joint.face("end").part()).toList());
  }

  @Test
  void equalCentresStepOn() {
    Description rack =
        Trays.described(
            """
            parts:
              slat:
                stock: oak
                repeat: {count: 2, along: x, first: 10, step: 60, size: 40}
                x: each.left to each.right
                y: 0 to 12
                z: 0 to 100 * nth
                grain: z
            """);
    assertEquals("10-50 0-12 0-100", Trays.extent(rack, "slat-1"));
    assertEquals("70-110 0-12 0-200", Trays.extent(rack, "slat-2"));
  }

  @Test
  void eachBayKnowsTheWallsBesideIt() {
    Description rack =
        Trays.described(
            """
            parts:
              side: {stock: oak, x: 0 to 12, y: 0 to 100, z: 0 to 400, grain: z}
              end: {stock: oak, x: 600 to 612, y: 0 to 100, z: 0 to 400, grain: z}
              post:
                stock: oak
                repeat: {count: 2, along: x, over: side.right to end.left, size: oak.thickness}
                x: each.left to each.right
                y: 0 to 100
                z: 0 to 400
                grain: z
            assemblies:
              bay:
                unit: no
                repeat:
                  count: 3
                  along: x
                  over: side.right to end.left
                  gap: oak.thickness
                  beside: {left-wall: [side, post], right-wall: [post, end]}
                parts:
                  shelf:
                    stock: oak
                    x: left-wall.right to right-wall.left
                    y: 0 to 100
                    z: 100 to 100 + oak.thickness
                    grain: x
                joints:
                  - dado: {end: shelf.left, into: left-wall, depth: 4}
                  - dado: {end: shelf.right, into: right-wall, depth: 4}
            """);
    assertEquals("212-400 0-100 100-112", Trays.extent(rack, "bay-2.shelf"));
    assertEquals(
        List.of("side", "post-1", "post-1", "post-2", "post-2", "end"),
        rack.joints().stream().map(joint -> joint.text("into")).toList());
    assertTrue(rack.assemblies().isEmpty());
  }

  @Test
  void jointToTheOneAfterStopsAtTheLast() {
    Description rack =
        Trays.described(
            """
            parts:
              stave:
                stock: oak
                repeat: {count: 4, along: y, over: 0 to 400}
                x: 0 to 900
                y: each.front to each.back
                z: 0 to oak.thickness
                grain: x
            joints:
              - butt: {end: stave.back, to: after}
            """);
    assertEquals(
        List.of("stave-1 stave-2", "stave-2 stave-3", "stave-3 stave-4"),
        rack.joints().stream()
            .map(joint -> joint.face("end").part() + " " + joint.text("to"))
            .toList());
  }
}
