/**
 * Masses of bought parts for which records hold none: as common in the trade, from memory, within about a quarter. A
 * declared mass or a scale takes their place.
 */
export const partMasses = {
  source: "from-memory masses of bought parts, within about 25 %",
  /** kg for each m² of face and m of depth. */
  filter: { pleated: 33, rigid: 48, "v-bank": 56, bag: 12, pad: 20 },
  /** kg: gasket, springs and clips of one filter frame. */
  filterFasteners: 0.3,
  /** kg for each m² of damper face: axles, bearings, linkage. */
  damperLinkage: 3,
  /** kg: an actuator; a hand quadrant. */
  actuator: 4,
  quadrant: 1,
  /** kg for each m² of window with its frame. */
  window: 28,
  /** kg: hinges, latches and gasket of a door. */
  doorHardware: 6,
  hatchHardware: 2.5,
  /** kg: a vapour-tight light with its box; a switch and receptacle outside. */
  light: 2.5,
  receptacle: 1,
  /** kg: sheaves and belts for each kW of motor; a belt guard. */
  beltDrivePerKilowatt: 0.9,
  beltGuard: 12,
  /** kg: one spring with housing for each kg that it carries, and the least. */
  springShare: 0.015,
  leastSpring: 2.5,
  /** kg for each bearing and kW of motor, and the least. */
  bearingPerKilowatt: 0.35,
  leastBearing: 2.5,
  /** kg for each m² of fin: water that hangs on wet fins. */
  waterOnFins: 0.1,
  /** kg: a lockable disconnect in its box; a shipping restraint of a spring; a thrust restraint. */
  disconnect: 5,
  shippingRestraint: 1.2,
  thrustRestraint: 4,
  /** kg for each metre of lubrication line. */
  lubricationLine: 0.12,
  /** kg of a lifting lug. */
  liftingLug: 3.5,
  /** kg of a steam trap, and of a control valve with actuator inside the cabinet: none is counted in the unit. */
  steamTrap: 6,
} as const;

/** m: sheet and profile of bought parts whose records hold none; common practice, from memory. */
export const partSheets = {
  source: "from-memory sheet of bought parts",
  louverBlade: 0.00206,
  damperSkin: 0.0008,
  damperFrame: 0.0016,
  backdraftBlade: 0.0016,
  eliminatorBlade: 0.000635,
  headerWall: 0.002,
  dispersionTubeWall: 0.0012,
} as const;
