import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bearingLife, bearingLoad, bearingRatingFromLife } from "./bearing-life.ts";
import { beltArc, beltLengthFromCentres, beltRating, beltRunFromPower } from "./belt-life.ts";
import { maximumOvercurrentProtection, minimumCircuitAmpacity, overloadTrip } from "./motor-circuit.ts";

const inch = 0.0254;
const hp = 745.699_871_582_27;
const pound = 4.448_221_615_26;

// Worked example 17-4 of Shigley's Mechanical Engineering Design, from memory: 10 hp motor of 1750 rpm, sheaves 7.4 and
// 11 in, belts B112. Its steps: pitch length 113.8 in, centres 42.4 in, 3390 fpm, arc 3.057 rad, 4.88 hp allowed for
// each belt, 12.6 hp of design power on 3 belts, tight side 62.8 lbf, slack side 21.9 lbf, bending 77.8 and 52.4 lbf,
// 11e9 passes. It rounds at every step to three figures, and its table is read by eye.
describe("the textbook's drive", () => {
  const [small, large, centres, speed] = [7.4 * inch, 11 * inch, 42.4 * inch, (3390 * 0.3048) / 60] as const;
  const run = beltRunFromPower((12.6 / 3) * hp, small, large, centres, speed);

  it("has its length, arc and rating", () => {
    expect(beltLengthFromCentres(small, large, centres) / inch).toBeCloseTo(113.8, 1);
    expect(beltArc(small, large, centres)).toBeCloseTo(3.057, 3);
    expect(beltRating(small, large, centres, speed) / hp).toBeGreaterThan(4.85);
    expect(beltRating(small, large, centres, speed) / hp).toBeLessThan(4.91);
  });

  it("has its tensions and passes", () => {
    expect(Math.abs(run.tightForce / pound - 62.8)).toBeLessThan(0.2);
    expect(Math.abs(run.slackForce / pound - 21.9)).toBeLessThan(0.2);
    // The eleventh power makes two percent of a rounded tension a fifth of the passes.
    expect(run.passes).toBeGreaterThan(9e9);
    expect(run.passes).toBeLessThan(13e9);
    expect(run.life).toBeCloseTo((run.passes * 113.8 * inch) / speed, -9);
  });

  it("lasts longer with less power and with larger sheaves", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 5000, noNaN: true }),
        fc.double({ min: 0.11, max: 0.3, noNaN: true }),
        (power, sheave) => {
          const here = beltRunFromPower(power, sheave, 0.3, 1, 15);
          expect(beltRunFromPower(0.9 * power, sheave, 0.3, 1, 15).life).toBeGreaterThan(here.life);
          expect(beltRunFromPower(power, 1.1 * sheave, 0.33, 1, 15).life).toBeGreaterThan(here.life);
          expect(here.tightForce - here.slackForce).toBeCloseTo(power / 15, 9);
        },
      ),
    );
  });
});

describe("bearings", () => {
  it("last an eighth as long under twice the load and half as long at twice the speed", () => {
    const life = bearingLife(40_000, 4000, 20);
    expect(bearingLife(40_000, 8000, 20) / life).toBeCloseTo(1 / 8, 12);
    expect(bearingLife(40_000, 4000, 40) / life).toBeCloseTo(1 / 2, 12);
  });

  it("are chosen by the life that they then have", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e7, max: 1e9, noNaN: true }),
        fc.double({ min: 50, max: 20_000, noNaN: true }),
        fc.double({ min: 2, max: 60, noNaN: true }),
        (life, load, speed) => {
          expect(bearingLife(bearingRatingFromLife(life, load, speed), load, speed) / life).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it("carry the weight by halves and the belts by the lever", () => {
    expect(bearingLoad(100, 0, 0.25)).toBeCloseTo(490.3, 1);
    expect(bearingLoad(0, 1000, 0.25)).toBe(1250);
  });
});

// Article 430 of the National Electrical Code, from memory; a common classroom case: motors of 40, 28 and 14 A on one
// feeder want wires for 40 × 1.25 + 28 + 14 = 92 A and a breaker of at most 40 × 2.5 + 28 + 14 = 142 A, so 125 A.
describe("a motor circuit", () => {
  it("has the classroom's wires and breaker", () => {
    expect(minimumCircuitAmpacity([28, 40, 14])).toBeCloseTo(92, 12);
    expect(maximumOvercurrentProtection([28, 40, 14])).toBe(125);
    expect(overloadTrip(40, 1)).toBeCloseTo(46, 12);
  });

  it("is never protected below what its wires must carry", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 240, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (currents) => {
          const rating = maximumOvercurrentProtection(currents);
          expect(rating).toBeGreaterThanOrEqual(minimumCircuitAmpacity(currents));
        },
      ),
    );
  });
});
