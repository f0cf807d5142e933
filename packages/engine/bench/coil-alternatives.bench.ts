import { plainSurface } from "../src/component/coil/sample-coil.test-data.ts";
import type { FinnedSurface } from "../src/component/finned-surface/family.ts";
import type { CoilTask } from "../src/design/coil-alternative.ts";
import { coilAlternatives } from "../src/design/coil-alternatives.ts";
import { coilBlocks } from "../src/design/coil-choice.ts";
import { createAir } from "../src/section/air.ts";

const inch = 0.0254;
const half: FinnedSurface = {
  ...plainSurface,
  head: { ...plainSurface.head, name: "plain 1/2 in" },
  tubeOutsideDiameter: 0.0127,
  tubeWall: 0.000406,
  transversePitch: 0.03175,
  longitudinalPitch: 0.0275,
  finThickness: 0.0001524,
};
const wavy = (surface: FinnedSurface): FinnedSurface => ({
  ...surface,
  head: { ...surface.head, name: `wavy of ${surface.head.name}` },
  pattern: "wavy",
  heatFactor: 1.25,
  frictionFactor: 1.6,
});

const blocks = coilBlocks(
  {
    kind: "chilled-water coil",
    surface: plainSurface,
    rows: 8,
    fins: 12 / inch,
    circuits: 80,
    connectionEnds: "as the circuits give",
    flowPath: "counter",
    turbulators: "none",
    finnedHeight: 40 * 0.0381,
    finnedLength: 2.44,
    stacked: 1,
    finThickness: undefined,
    finMaterial: undefined,
    tubeWall: undefined,
    tubeMaterial: undefined,
    correlation: undefined,
    foulingInside: 5e-5,
    foulingOutside: 0,
    length: undefined,
    fullFlow: undefined,
    intermediatePans: false,
    panReach: 0.76,
    declaredRating: undefined,
  },
  { width: 2.7, height: 1.8, hand: "right" },
  [plainSurface, wavy(half)],
);
const air = Object.assign(createAir(), {
  dryAirFlow: 9,
  dryBulb: 36.7,
  coldestFilament: 36.7,
  humidityRatio: 0.0206,
  barometricPressure: 101_325,
});
const supply = {
  liquid: { substance: "water", massFraction: 0 },
  supplyTemperature: 6.67,
  temperatureChange: 6.67,
  massFlow: undefined,
  valveFails: "closed",
  pumpRunsWhenStopped: false,
} as const;
const task: CoilTask = {
  ...blocks,
  air,
  supply,
  wanted: 12.5,
  rows: [6, 8],
  fins: [8, 10, 12, 14].map((fins) => fins / inch),
  turbulators: [false, true],
  limits: {
    faceVelocity: 2.8,
    airPressureDrop: 400,
    liquidPressureDrop: 90_000,
    leastTubeVelocity: 0.3,
    mostTubeVelocity: 2.4,
    depth: Number.POSITIVE_INFINITY,
  },
};
const looked = coilAlternatives(task).looked;
const given: CoilTask = { ...task, supply: { ...supply, massFlow: 18, temperatureChange: undefined } };

/** How fast a coil is chosen; an operation is one alternative looked at. */
export const suite = {
  title: "alternatives of an eight-row wet coil, each",
  tasks: [
    { name: "water by its rise", operations: looked, run: () => coilAlternatives(task) },
    { name: "water flow given", operations: looked, run: () => coilAlternatives(given) },
    {
      name: "water by its rise, none refused unsolved",
      operations: looked,
      run: () =>
        coilAlternatives({
          ...task,
          wanted: 36,
          limits: { ...task.limits, leastTubeVelocity: 0, mostTubeVelocity: 20 },
        }),
    },
  ],
};
