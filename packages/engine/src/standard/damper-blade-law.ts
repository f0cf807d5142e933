/** Loss against blade angle, ln K = a + b·(90° − angle), between two angles; quadratics in the angle outside. */
export interface DamperBladeLaw {
  /** ln K of the law's straight part carried on to the open damper. */
  readonly a: number;
  /** Per degree away from open. */
  readonly b: number;
  /** Degrees from closed at which the straight part begins and ends. */
  readonly lowest: number;
  readonly highest: number;
}

/** Typical constants for dampers of airfoil and flat blades alike; source: ashrae-825-rp. */
export const damperBladeLaws = {
  opposed: { a: -1.51, b: 0.105, lowest: 15, highest: 55 },
  parallel: { a: -1.51, b: 0.0842, lowest: 15, highest: 65 },
} as const satisfies Record<string, DamperBladeLaw>;

/** How neighbouring blades turn: against one another, or the same way. */
export type BladeAction = keyof typeof damperBladeLaws;
