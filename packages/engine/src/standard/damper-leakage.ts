/** A leakage class of dampers: the flow that a closed damper may let through at a test pressure. */
export interface DamperLeakageClass {
  /** m³/s per m² of damper face at `leakagePressure`, standard air. */
  readonly leakage: number;
  /** Bibliography key and what of it was seen. */
  readonly source: string;
  readonly certainty: "read" | "from memory";
}

/** Pa: 1 in. of water, the pressure at which the classes are compared. */
export const leakagePressure = 249.08891;

/** m³/s per m² for each cubic foot a minute per square foot. */
const perSquareFoot = 0.00508;

/**
 * Leakage classes of dampers at 1 in. of water: 3, 4, 10 and 40 cubic feet a minute per square foot. The classes of
 * smoke dampers at 4 in. (8, 20, 80) are twice those of 1, 2 and 3, as the root of pressure asks.
 */
export const damperLeakageClasses = {
  "1A": { leakage: 3 * perSquareFoot, source: "amca-511", certainty: "from memory" },
  "1": { leakage: 4 * perSquareFoot, source: "amca-511", certainty: "from memory" },
  "2": { leakage: 10 * perSquareFoot, source: "amca-511", certainty: "from memory" },
  "3": { leakage: 40 * perSquareFoot, source: "amca-511", certainty: "from memory" },
} as const satisfies Record<string, DamperLeakageClass>;

/** Name of a leakage class. */
export type DamperLeakageClassName = keyof typeof damperLeakageClasses;

/** The names, best first, for a field's choices. */
export const damperLeakageClassNames = ["1A", "1", "2", "3"] as const satisfies readonly DamperLeakageClassName[];
