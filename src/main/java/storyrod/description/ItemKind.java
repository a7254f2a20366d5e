package storyrod.description;

/** What an item of hardware is, which decides the rules that hold for it. */
public enum ItemKind {
  WOOD_SCREW,
  POCKET_SCREW,
  BRAD,
  /** Runners beside the drawer. */
  SLIDE,
  /** Runners under the drawer, out of sight. */
  UNDER_SLIDE,
  /** One whose tongue slides in a slot of the rail. */
  TOP_FASTENER,
  /** Two discs in one, let into the rail's upper edge, that turn as the top moves. */
  ROTATING_FASTENER,
  PULL,
  KNOB,
  CATCH,
  /** A hinge with a cup that is let into the door's inside. */
  CONCEALED_HINGE,
  /** A hinge with two leaves that are let into the edges of door and case. */
  BUTT_HINGE,
  SHELF_PIN,
  /** A round peg, glued into both parts of a joint. */
  DOWEL,
  /** A flat oval of pressed beech, glued into a slot of both parts. */
  BISCUIT,
  /** A tenon of its own, glued into a mortise of both parts. */
  LOOSE_TENON,
  /** A plug of wood over a sunk screw. */
  PLUG,
  /** A ring under a screw's head, broader than the slot that the screw goes through. */
  WASHER,
  /** A wooden block whose tongue slides in a slot of the rail. */
  BUTTON,
  FOOT,
  LEVELLING_FOOT,
  /** What ties a piece to the wall. */
  ANTI_TIP_STRAP,
  OTHER;

  public boolean isSlide() {
    return this == SLIDE || this == UNDER_SLIDE;
  }

  public boolean isHinge() {
    return this == CONCEALED_HINGE || this == BUTT_HINGE;
  }

  public boolean isTopFastener() {
    return this == TOP_FASTENER || this == ROTATING_FASTENER || this == BUTTON;
  }
}
