import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sampleCondition } from "#section/sample.test-data";
import { actualAirflow } from "#section/station";
import { externalStaticNeeded, reserveAt } from "./external-static.ts";
import { pressureLedger } from "./ledger.ts";
import { casing, randomCondition, randomSections, unitOrNothing } from "./random-unit.test-data.ts";
import { createUnitRating, rateUnit } from "./rate-unit.ts";

describe("the pressure ledger", () => {
  it("sums to the fan's total and static pressure, section by section and as a whole, to 1e-9", {
    timeout: 120_000,
  }, () => {
    let solved = 0;
    fc.assert(
      fc.property(
        randomSections,
        randomCondition,
        fc.double({ min: 0, max: 250, noNaN: true }),
        (sections, at, reserve) => {
          const unit = unitOrNothing(casing, sections);
          if (unit === undefined) return;
          const condition = { ...at, externalStatic: { ...at.externalStatic, reserve } };
          const rating = rateUnit(unit, condition, createUnitRating(unit, condition));
          if (!rating.solved) return;
          solved++;
          const ledger = pressureLedger(unit, rating);
          const scale = ledger.fanTotal + ledger.losses;
          const near = (got: number, wanted: number) => expect(Math.abs(got - wanted)).toBeLessThan(1e-9 * scale);
          const served = ledger.losses + ledger.ductSystem + ledger.reserve + ledger.velocityPressure - ledger.intake;
          near(served, ledger.fanTotal);
          near(served - ledger.fanOutletVelocityPressure, ledger.fanStatic);
          unit.sections.forEach(({ name }, index) => {
            const own = ledger.lines.filter((line) => line.section === name && line.isBeside === undefined);
            const record = rating.sections[index]!;
            near(
              own.reduce((sum, line) => sum + line.pressure, 0),
              record.totalPressureLoss,
            );
            near(own.at(-1)!.behind, record.leaving.totalPressure);
          });
          // No velocity carries more air through its area than passes the unit; a rating that mixed up areas would.
          const most = Math.max(
            ...rating.between.map(actualAirflow),
            ...rating.sections.map((each) => actualAirflow(each.entering)),
          );
          for (const line of ledger.lines.filter(
            ({ isBeside, plane }) => isBeside === undefined && !plane.startsWith("fan"),
          )) {
            expect(line.velocity * line.area, line.part).toBeLessThanOrEqual(1.1 * most);
            expect(line.source, line.part).not.toBe("");
            if (line.span !== undefined) {
              expect(line.pressure).toBeGreaterThanOrEqual(line.span.least - 1e-9);
              expect(line.pressure).toBeLessThanOrEqual(line.span.most + 1e-9);
            }
          }
        },
      ),
      { numRuns: 120, seed: 11 },
    );
    expect(solved).toBeGreaterThan(50);
  });
});

describe("the reserve", () => {
  const condition = sampleCondition({
    externalStatic: { atDesign: 600, fixed: 200, designDryAirFlow: 10, reserve: 100 },
  });

  it("is part of the static needed, goes with the square of flow, and falls away when the fan stands", () => {
    expect(externalStaticNeeded(condition, 10)).toBeCloseTo(700, 9);
    // Half the flow: 200 + 400/4 of the duct system, 100/4 of reserve.
    expect(externalStaticNeeded(condition, 5)).toBeCloseTo(325, 9);
    expect(reserveAt(condition, 5)).toBeCloseTo(25, 9);
    const stopped = { ...condition, flow: { mode: "fan stopped", dampers: "as set", stackHeight: 10 } as const };
    expect(externalStaticNeeded(stopped, 5)).toBeCloseTo(150, 9);
  });
});
