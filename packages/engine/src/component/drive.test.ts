import fc from "fast-check";
import { describe, expect, it } from "vitest";
import cases from "../../../../reference/cases/fans.json" with { type: "json" };
import motors from "../../../../reference/cases/motors.json" with { type: "json" };
import { beltEfficiencyFromPower, sheavePairFromSpeed } from "./belt-drive.ts";
import {
  motorAllowedPower,
  motorFullLoadCurrent,
  motorInputPower,
  motorNominalEfficiency,
  motorPoles,
  standardMotorPower,
} from "./motor.ts";
import { speedControlInputPower } from "./speed-control.ts";

const hp = 745.699_871_582_27;

describe("motor", () => {
  it.each(motors.rows)("has the efficiency of 10 CFR 431.25 at $hp hp", (row) => {
    for (const enclosure of ["enclosed", "open"] as const) {
      for (const poles of motorPoles) {
        expect(100 * motorNominalEfficiency(enclosure, poles, row.hp * hp)).toBeCloseTo(row[enclosure][poles], 9);
      }
    }
  });

  // Share of best efficiency by load: table computed from the coefficients of the EnergyPlus engineering reference, four
  // figures; here the same curve over its value at full load, whose last printed figure is worth 5e-4.
  it.each(cases.motor_part_load.table)("follows the published part load of $motor_hp hp", (row) => {
    for (const [load, key] of [
      [0.1, "L10"],
      [0.25, "L25"],
      [0.5, "L50"],
      [0.75, "L75"],
    ] as const) {
      const rated = row.motor_hp * hp;
      const efficiency = (load * rated) / motorInputPower(rated, 0.9, load * rated);
      expect(Math.abs(efficiency / 0.9 - row[key] / row.L100)).toBeLessThan(6e-4);
    }
  });

  it("takes power when idling, more with load, and never gives more than it takes", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...motors.rows.map((row) => row.hp)),
        fc.double({ min: 0, max: 1.15, noNaN: true }),
        (size, load) => {
          const rated = size * hp;
          const nominal = motorNominalEfficiency("enclosed", "4", rated);
          const input = motorInputPower(rated, nominal, load * rated);
          expect(input).toBeGreaterThan(load * rated);
          expect(input).toBeGreaterThan(0);
          expect(motorInputPower(rated, nominal, (load + 0.05) * rated)).toBeGreaterThan(input);
        },
      ),
    );
  });

  it("comes in standard sizes", () => {
    expect(standardMotorPower(0)! / hp).toBeCloseTo(1, 9);
    expect(standardMotorPower(10 * hp)! / hp).toBeCloseTo(10, 9);
    expect(standardMotorPower(10.01 * hp)! / hp).toBeCloseTo(15, 9);
    expect(standardMotorPower(201 * hp)).toBeUndefined();
  });

  it("loses its service factor on a speed control and power at altitude", () => {
    expect(motorAllowedPower(10_000, 1.15, false, 0)).toBeCloseTo(11_500, 9);
    expect(motorAllowedPower(10_000, 1.15, true, 0)).toBe(10_000);
    expect(motorAllowedPower(10_000, 1.15, false, 1860)).toBe(10_000);
    expect(motorAllowedPower(10_000, 1, true, 1860)).toBeLessThan(10_000);
  });

  // Table 430.250 of the National Electrical Code at 460 V, from memory: 27 A for 20 hp, 65 A for 50 hp. The code's
  // currents are kept high for safety, so a computed one lies below, not more than a fifth.
  it.each([
    [20, 27],
    [50, 65],
  ])("%d hp draws somewhat less than the code's %d A", (size, amperes) => {
    const current = motorFullLoadCurrent(size * hp, 460, motorNominalEfficiency("enclosed", "4", size * hp), 0.84);
    expect(current).toBeLessThan(amperes);
    expect(current).toBeGreaterThan(0.8 * amperes);
  });
});

describe("belt drive", () => {
  // Computed from the coefficients in the EnergyPlus engineering reference, a fit of the chart of AMCA 203; four figures.
  it.each(cases.belt.table)("has the published efficiency at $hp hp", (row) => {
    for (const band of ["high", "medium", "low"] as const) {
      expect(Math.abs(beltEfficiencyFromPower(band, row.hp * hp) - row[band])).toBeLessThan(6e-5);
    }
  });

  it("finds stocked sheaves for a fan speed within a few percent and within the belt's limits", () => {
    fc.assert(
      fc.property(fc.double({ min: 8, max: 35, noNaN: true }), (speed) => {
        const pair = sheavePairFromSpeed(29.4, speed, 0.107, 33)!;
        expect(Math.abs(pair.fanSpeed / speed - 1)).toBeLessThan(0.03);
        expect(pair.beltSpeed).toBeLessThanOrEqual(33);
        expect(Math.min(pair.motorSheave, pair.fanSheave)).toBeGreaterThanOrEqual(0.1066);
      }),
    );
    expect(sheavePairFromSpeed(29.4, 1, 0.107, 33)).toBeUndefined();
  });
});

describe("speed control", () => {
  // Computed from the coefficients of the EnergyPlus engineering reference, four figures.
  it.each(cases.vfd.table)("has the published efficiency at $vfd_hp hp", (row) => {
    for (const [share, key] of [
      [0.05, "P5"],
      [0.125, "P12.5"],
      [0.25, "P25"],
      [0.42, "P42"],
      [0.5, "P50"],
      [0.75, "P75"],
      [1, "P100"],
    ] as const) {
      const rated = row.vfd_hp * hp;
      expect(Math.abs((share * rated) / speedControlInputPower(rated, share * rated) - row[key])).toBeLessThan(6e-5);
    }
  });
});
