import { describe, expect, it } from "vitest";
import type { RecordHead } from "./family.ts";
import { fanPressureFromFlow, fanShaftPowerFromFlow } from "./fan-performance.ts";
import { fanInletVelocity, fanStartingTime, fanWheelFamily, massFromDiameter } from "./fan-wheel.ts";

const head: RecordHead = {
  name: "tested wheel",
  typical: false,
  basis: "tested",
  source: "test report of our own invention",
  date: "2026-11-25",
  note: "",
};
const body = {
  arrangement: "housed single inlet",
  smallestDiameter: 0.3,
  largestDiameter: 2,
  inletDiameter: 0.72,
  outletWidth: 0.8,
  outletHeight: 1.06,
  blastArea: 0.8,
  housingWidth: 0.8,
  wheelWidth: 0.4,
  blades: 10,
  stoppedLoss: 3,
  classes: [{ name: "II", tipSpeed: 73 }],
  referenceDiameter: 0.762,
  wheelMass: 40,
  fanMass: 220,
  gyrationRadius: 0.36,
} as const;
const test = {
  kind: "tested points",
  testDiameter: 0.762,
  testSpeed: 20,
  testDensity: 1.2,
  stableShare: 0.6,
  points: [
    { flow: 2, staticPressure: 1000, shaftPower: 4500 },
    { flow: 4, staticPressure: 980, shaftPower: 5800 },
    { flow: 6, staticPressure: 800, shaftPower: 6600 },
    { flow: 8, staticPressure: 430, shaftPower: 6500 },
  ],
} as const;

describe("fan wheel record", () => {
  it("gives a test table back at the test's own diameter, speed and density", () => {
    const wheel = fanWheelFamily.build({ ...body, performance: test }, head);
    for (const point of test.points) {
      expect(fanPressureFromFlow(wheel.curve, 0.762, 20, 1.2, point.flow)).toBeCloseTo(point.staticPressure, 8);
      expect(fanShaftPowerFromFlow(wheel.curve, 0.762, 20, 1.2, point.flow)).toBeCloseTo(point.shaftPower, 8);
    }
    // Standing still: three velocity pressures in the inlet's throat.
    const velocity = fanInletVelocity(3, 0.762, 0.72, 1);
    expect(fanPressureFromFlow(wheel.curve, 0.762, 0, 1.2, 3)).toBeCloseTo(-3 * 0.6 * velocity * velocity, 8);
  });

  it("refuses a housed fan without an outlet and a series upside down", () => {
    expect(() => fanWheelFamily.build({ ...body, outletWidth: 0, performance: test }, head)).toThrow(/outlet/);
    expect(() => fanWheelFamily.build({ ...body, smallestDiameter: 3, performance: test }, head)).toThrow(/smallest/);
  });

  it("scales mass and starting time", () => {
    expect(massFromDiameter(100, 0.5, 1)).toBeCloseTo(100 * 2 ** 2.5, 9);
    // Kinetic energy over power: 8 kg m² at 20 rev/s stores 63.2 kJ; twice the power takes half the time.
    expect(fanStartingTime(8, 20, 10_000, 1)).toBeCloseTo((8 * (40 * Math.PI) ** 2) / 10_000, 9);
    expect(fanStartingTime(8, 20, 20_000, 1)).toBeCloseTo(fanStartingTime(8, 20, 10_000, 1) / 2, 9);
  });
});
