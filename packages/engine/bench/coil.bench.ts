import { buildCoil } from "../src/component/coil/coil.ts";
import { layFineGrid, solveFineGrid } from "../src/component/coil/fine-grid.ts";
import { solveCoil } from "../src/component/coil/march.ts";
import { createCoilWork, createPerformance } from "../src/component/coil/performance.ts";
import type { FinnedSurface } from "../src/component/finned-surface/family.ts";

const surface: FinnedSurface = {
  head: { name: "bench", typical: true, basis: "invented", source: "", date: "", note: "" },
  pattern: "plain",
  tubeOutsideDiameter: 0.015875,
  tubeWall: 0.000508,
  tubeMaterial: "copper",
  transversePitch: 0.0381,
  longitudinalPitch: 0.03302,
  staggered: true,
  finMaterial: "aluminium",
  finThickness: 0.0001651,
  collars: false,
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
const coil = buildCoil({
  surface,
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
});
const inlet = {
  dryAirFlow: 2.8,
  dryBulb: 36.7,
  humidityRatio: 0.0206,
  pressure: 101_325,
  coldestFilament: 36.7,
  liquid: { substance: "water", massFraction: 0 } as const,
  liquidFlow: 5.7,
  liquidTemperature: 6.67,
};
const work = createCoilWork();
const out = createPerformance();
const grid = layFineGrid(coil, 8);
let turn = 0;

function solve(cold: boolean): void {
  for (let k = 0; k < 100; k++) {
    if (cold) work.levels = 0;
    turn = (turn + 1) % 97;
    inlet.dryBulb = 35 + 0.02 * turn;
    solveCoil(coil, inlet, work, out);
  }
}

/** How fast a coil is solved. */
export const suite = {
  title: "an eight-row wet coil of outside air",
  tasks: [
    { name: "row grid, from nothing", operations: 100, run: () => solve(true) },
    {
      name: "row grid, from the solution before",
      operations: 100,
      run: () => solve(false),
      compare: "row grid, from nothing",
    },
    { name: "fine grid of eight lanes, from the row grid", run: () => solveFineGrid(grid, inlet, out) },
  ],
};
