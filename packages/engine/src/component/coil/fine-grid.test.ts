import { describe, expect, it } from "vitest";
import { layFineGrid, solveFineGrid } from "./fine-grid.ts";
import { solveCoil } from "./march.ts";
import { createCoilWork, createPerformance } from "./performance.ts";
import { sampleCoil, sampleInlet } from "./sample-coil.test-data.ts";

describe("row grid against fine grid", () => {
  // The row grid takes each row with mixed air; the fine grid follows every tube in eight lanes. Three parts in a thousand
  // is what the row grid may give away; most coils stay within one part in two thousand.
  it.each([
    ["eight rows, full circuit", {}, {}],
    ["half circuit", { circuits: 12 }, { liquidFlow: 3 }],
    ["double circuit", { circuits: 48 }, {}],
    ["one and a half circuits", { rows: 6, circuits: 36 }, {}],
    ["three quarters", { circuits: 16 }, {}],
    ["four rows", { rows: 4 }, {}],
    ["two rows on little water", { rows: 2, circuits: 8 }, { liquidFlow: 1 }],
    ["dry", {}, { humidityRatio: 0.004 }],
    ["partly wet", {}, { humidityRatio: 0.0095 }],
    ["parallel flow", { flow: "parallel" as const }, {}],
    [
      "heating",
      { rows: 2, circuits: 12 },
      { liquidTemperature: 80, dryBulb: -10, humidityRatio: 0.001, liquidFlow: 2 },
    ],
  ])("%s", (_name, make, changes) => {
    const coil = sampleCoil(make);
    const inlet = sampleInlet(changes);
    const rows = createPerformance();
    solveCoil(coil, inlet, createCoilWork(), rows);
    expect(rows.converged).toBe(true);
    const fine = createPerformance();
    solveFineGrid(layFineGrid(coil, 8), inlet, fine);
    expect(fine.converged).toBe(true);
    expect(Math.abs(rows.heat / fine.heat - 1)).toBeLessThan(0.003);
    // The liquid sees the same share; the air's dry bulb a twentieth of a kelvin.
    expect(Math.abs(rows.leavingDryBulb - fine.leavingDryBulb)).toBeLessThan(0.06);
  });

  it("does not change between eight and twenty-four lanes", () => {
    const [coarse, fine] = [8, 24].map((lanes) => {
      const out = createPerformance();
      solveFineGrid(layFineGrid(sampleCoil(), lanes), sampleInlet(), out);
      return out.heat;
    });
    expect(Math.abs(coarse! / fine! - 1)).toBeLessThan(3e-4);
  });
});
