import { layFineGrid, solveFineGrid } from "../src/component/coil/fine-grid.ts";
import { solveCoil } from "../src/component/coil/march.ts";
import { createCoilWork, createPerformance } from "../src/component/coil/performance.ts";
import { sampleCoil, sampleInlet } from "../src/component/coil/sample-coil.test-data.ts";

const coil = sampleCoil();
const inlet = { ...sampleInlet() };
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
