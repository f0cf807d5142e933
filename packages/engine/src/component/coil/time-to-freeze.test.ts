import { describe, expect, it } from "vitest";
import { sampleCoil } from "./sample-coil.test-data.ts";
import {
  driftThroughOpenDampers,
  firstIce,
  frozenTube,
  leakThroughShutDampers,
  longestWait,
  rowConductance,
  rowHeatCapacity,
  rowMeltingHeat,
} from "./time-to-freeze.ts";

const water = { substance: "water", massFraction: 0 } as const;
const coil = sampleCoil({ rows: 2 });
const running = 2800;

/** Seconds to first ice and frozen tube with so much air, W/K, of −15 °C. */
function times({ airCapacity = running, air = -15, start = 10, liquid = water as never, freezePoint = 0 } = {}) {
  const conductance = rowConductance(coil, airCapacity, 35);
  const first = firstIce(rowHeatCapacity(coil, liquid, 1), conductance, start, air, freezePoint);
  return { first, frozen: frozenTube(first, rowMeltingHeat(coil, liquid, 1), conductance, air, freezePoint) };
}

describe("time to freeze", () => {
  it("is minutes at most on running air, and has no end in air above freezing", () => {
    const { first, frozen } = times();
    expect(first).toBeGreaterThan(5);
    expect(first).toBeLessThan(300);
    expect(frozen).toBeGreaterThan(2 * first);
    expect(times({ air: 1 })).toEqual({ first: longestWait, frozen: longestWait });
  });

  // The same row in slices along the air, each at its own air temperature, stepped through time in twentieths of a second:
  // water and metal first, then the heat of melting. Two hundredths cover the steps.
  it("agrees with stepping air and row through time", () => {
    const films = 1 / (1 / (35 * coil.outsideRow) + coil.wallRow + 1 / (200 * coil.insideRow));
    const heat = (row: number) => {
      let air = -15;
      for (let slice = 0; slice < 50; slice++) air += ((films / 50) * (row - air)) / (running + films / 100);
      return running * (air + 15);
    };
    let row = 10;
    let time = 0;
    for (; row > 0; time += 0.05) row -= (heat(row) * 0.05) / rowHeatCapacity(coil, water, 1);
    expect(time / times().first).toBeCloseTo(1, 2);
    let ice = 0;
    for (; ice < rowMeltingHeat(coil, water, 1); time += 0.05) ice += heat(0) * 0.05;
    expect(time / times().frozen).toBeCloseTo(1, 2);
  });

  // ashrae-hof insulation chapter: water in a pipe cools to freezing in ρ c A R ln((t₀ − t_a)/(t_f − t_a)) per length. With
  // air without end and bare metal left out, the row is such a pipe.
  it("is that of water in a pipe where the air has no end", () => {
    const endless = rowConductance(coil, 1e9, 35);
    const resistance = 1 / (35 * coil.outsideRow) + coil.wallRow + 1 / (200 * coil.insideRow);
    expect(endless * resistance).toBeCloseTo(1, 4);
    const held = (1000 * 4210 * coil.tubeVolume) / 2;
    expect(firstIce(held, endless, 10, -15, 0) / (held * resistance * Math.log(25 / 15))).toBeCloseTo(1, 4);
  });

  it("is longer in less air, in warmer air, from a warmer start, and with glycol", () => {
    const { first } = times();
    expect(times({ airCapacity: driftThroughOpenDampers * running }).first).toBeGreaterThan(first);
    expect(times({ airCapacity: leakThroughShutDampers * running }).first).toBeGreaterThan(5 * first);
    expect(times({ air: -5 }).first).toBeGreaterThan(first);
    expect(times({ start: 40 }).first).toBeGreaterThan(first);
    const liquid = { substance: "propylene glycol", massFraction: 0.2 } as never;
    expect(times({ liquid, freezePoint: -7 }).first).toBeGreaterThan(first);
  });

  it("has begun where the liquid is no warmer than its freezing point", () => {
    expect(times({ start: 0 }).first).toBe(0);
  });
});
