import type { FinnedSurface } from "#component/finned-surface/family";
import { buildCoil, type Coil, type CoilMake } from "./coil.ts";
import type { CoilInlet } from "./performance.ts";

/** Plain aluminium fins on 5/8-in. copper tubes, 1.5 × 1.3 in., as the trade builds most. */
export const plainSurface: FinnedSurface = {
  head: {
    name: "sample",
    typical: true,
    basis: "common practice",
    source: "common-practice",
    date: "2026-11-25",
    note: "",
  },
  pattern: "plain",
  tubeOutsideDiameter: 0.015875,
  tubeWall: 0.000508,
  tubeMaterial: "copper",
  transversePitch: 0.0381,
  longitudinalPitch: 0.03302,
  staggered: true,
  finMaterial: "aluminium",
  finThickness: 0.0001651,
  collars: true,
  correlation: "Wang-Chi-Chang 2000",
  heatFactor: 1,
  frictionFactor: 1,
  contactResistance: 0,
  tubeHeatFactor: 1,
  wetHeat: "Wang 2000",
  wetHeatFactor: undefined,
  lewisFactor: 1,
  wetFriction: "common practice",
  wetFrictionFactor: undefined,
  tested: undefined,
};

/** Eight rows, 12 fins per inch, 24 tubes high, full circuit; give what differs. */
export function sampleCoil(changes: Partial<CoilMake> = {}): Coil {
  return buildCoil({
    surface: plainSurface,
    rows: 8,
    tubesPerRow: 24,
    finnedLength: 1.22,
    finsPerLength: 12 / 0.0254,
    finThickness: 0.0001651,
    finMaterial: "aluminium",
    tubeWall: 0.000508,
    tubeMaterial: "copper",
    circuits: 24,
    flow: "counter",
    turbulators: false,
    foulingInside: 5e-5,
    foulingOutside: 0,
    ...changes,
  });
}

/** Humid outside air on chilled water; give what differs. */
export function sampleInlet(changes: Partial<CoilInlet> = {}): CoilInlet {
  const inlet: CoilInlet = {
    dryAirFlow: 2.8,
    dryBulb: 36.7,
    humidityRatio: 0.0206,
    pressure: 101_325,
    coldestFilament: 36.7,
    liquid: { substance: "water", massFraction: 0 },
    liquidFlow: 5.7,
    liquidTemperature: 6.67,
    ...changes,
  };
  if (changes.coldestFilament === undefined) inlet.coldestFilament = inlet.dryBulb;
  return inlet;
}
