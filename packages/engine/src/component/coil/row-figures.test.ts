import { describe, expect, it } from "vitest";
import { solveCoil } from "./march.ts";
import { createCoilWork, createPerformance } from "./performance.ts";
import { rowFigures } from "./row-figures.ts";
import { sampleCoil, sampleInlet } from "./sample-coil.test-data.ts";

function rowsOf(changes: Parameters<typeof sampleInlet>[0], coil = sampleCoil()) {
  const work = createCoilWork();
  const out = createPerformance();
  const inlet = sampleInlet(changes);
  solveCoil(coil, inlet, work, out);
  return { rows: rowFigures(coil, inlet, work), out, inlet };
}

describe("a coil row by row", () => {
  // kays-london-1984: in air that passes liquid of one temperature each row leaves exp(−NTU) of the difference. Ten times the
  // usual flow holds the liquid within a kelvin over a row; 1 % of the difference covers that.
  it("has transfer units that make the leaving air of each dry row", () => {
    const { rows } = rowsOf({ humidityRatio: 0.002, liquidFlow: 57 });
    expect(rows).toHaveLength(8);
    for (const { entering, leaving, liquidIn, liquidOut, transferUnits, wet } of rows) {
      expect(wet).toBe(0);
      const left = (leaving - (liquidIn + liquidOut) / 2) / (entering - (liquidIn + liquidOut) / 2);
      expect(Math.abs(left - Math.exp(-transferUnits))).toBeLessThan(0.01);
    }
  });

  it("adds up to the coil, air and liquid in opposite order, as each begins where the one before ended", () => {
    const { rows, out, inlet } = rowsOf({});
    expect(rows.reduce((sum, each) => sum + each.heat, 0) / out.heat).toBeCloseTo(1, 9);
    expect(rows[0]!.entering).toBe(inlet.dryBulb);
    expect(rows[7]!.liquidIn).toBe(inlet.liquidTemperature);
    expect(rows[0]!.liquidOut).toBeCloseTo(out.leavingLiquid, 3);
    for (let r = 1; r < 8; r++) {
      expect(rows[r]!.entering).toBe(rows[r - 1]!.leaving);
      expect(rows[r]!.liquidOut).toBeCloseTo(rows[r - 1]!.liquidIn, 9);
    }
  });

  // On the wet rows the potential θ = t + κ W takes the place of temperature: what NTU makes of it is the row's heat. Chords of
  // the saturation curve differ from its arc, and the liquid warms along the tube: 4 % covers both.
  it("has transfer units of wet rows that make their heat by the potential of temperature and moisture", () => {
    const { rows, inlet } = rowsOf({});
    const wet = rows.filter((each) => each.wet === 1);
    expect(wet.length).toBeGreaterThan(4);
    for (const each of wet) {
      const cp = 1006 + 1860 * each.enteringMoisture;
      const kappa = (2_501_000 - 2326 * each.root) / cp;
      const saturation = (t: number) => {
        const pressure = 611.2 * Math.exp((17.62 * t) / (243.12 + t));
        return (0.622 * pressure) / (101_325 - pressure);
      };
      const mean = (each.liquidIn + each.liquidOut) / 2;
      const difference = each.entering - mean + kappa * (each.enteringMoisture - saturation(mean));
      const heat = inlet.dryAirFlow * cp * (1 - Math.exp(-each.transferUnits)) * difference;
      expect(Math.abs(heat / each.heat - 1)).toBeLessThan(0.04);
    }
  });
});
