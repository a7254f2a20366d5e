package storyrod.drawing;

/** The drawing of joints that are alike. */
public record JointSheet(JointKind kind, Drawing drawing) {}
