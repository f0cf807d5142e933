/** A leakage class of casings: m³/s per m² of casing at 400 Pa suction and at 700 Pa pressure. */
export interface CasingLeakageClass {
  readonly name: "L1" | "L2" | "L3";
  readonly atSuction: number;
  readonly atPressure: number;
  readonly certainty: "read" | "from memory";
}

/** Pa, of the two tests. */
export const casingLeakageTests = { suction: 400, pressure: 700 } as const;

/** Leakage classes of EN 1886, tightest first. L1 at 400 Pa was read; the others are from memory. */
export const casingLeakageClasses = {
  source: "en-1886",
  rows: [
    { name: "L1", atSuction: 0.15e-3, atPressure: 0.22e-3, certainty: "read" },
    { name: "L2", atSuction: 0.44e-3, atPressure: 0.63e-3, certainty: "from memory" },
    { name: "L3", atSuction: 1.32e-3, atPressure: 1.9e-3, certainty: "from memory" },
  ] satisfies readonly CasingLeakageClass[],
} as const;

/** Deflection classes of EN 1886, m over m of span at 1000 Pa. D1 was read, D2 is from memory; D3 is all above. */
export const casingDeflectionClasses = {
  source: "en-1886",
  rows: [
    { name: "D1", relative: 0.004 },
    { name: "D2", relative: 0.01 },
  ],
  worst: "D3",
} as const;

/** Span over deflection that owners ask of panels at their test pressure: 1/240. */
export const panelDeflectionLimit = { share: 1 / 240, source: "common-practice owner specifications" } as const;
