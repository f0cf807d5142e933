import { expect } from "vitest";
import type { Fields } from "#form/field";
import type { Air } from "./air.ts";
import type { MixingRating, SectionCondition, SectionKind, SectionRating, WorkingLine } from "./contract.ts";
import { rateSection } from "./rate-section.ts";
import { enthalpyFlow, waterFlow } from "./station.ts";

const flowTolerance = 1e-9;

/** Dry air, water, energy and pressure of a rating close to 1e-9 relative; a mixing box has its second stream besides. */
export function expectBalances(out: SectionRating): void {
  const { entering, leaving } = out;
  const { returnDryAirFlow = 0, returnWaterFlow = 0, returnEnthalpyFlow = 0 } = out as Partial<MixingRating>;
  const expectEqual = (got: number, wanted: number, scale: number) =>
    expect(Math.abs(got - wanted)).toBeLessThanOrEqual(flowTolerance * scale);
  expectEqual(leaving.dryAirFlow, entering.dryAirFlow + returnDryAirFlow, entering.dryAirFlow);
  const water = waterFlow(entering) + returnWaterFlow + out.waterToAir;
  expectEqual(waterFlow(leaving), water, Math.abs(water) + 1e-3 * entering.dryAirFlow);
  const enthalpy = enthalpyFlow(entering) + returnEnthalpyFlow + out.heatToAir + out.waterEnthalpyToAir;
  expectEqual(enthalpyFlow(leaving), enthalpy, Math.abs(enthalpy) + 1e3 * entering.dryAirFlow);
  const pressure = entering.totalPressure - out.totalPressureLoss;
  expectEqual(leaving.totalPressure, pressure, Math.abs(pressure) + Math.abs(out.totalPressureLoss) + 1);
  expect(leaving.coldestFilament).toBeLessThanOrEqual(leaving.dryBulb + 1e-9);
  expect(leaving.peakToMeanVelocity).toBeGreaterThanOrEqual(1);
  expect(leaving.freeLiquid).toBeGreaterThanOrEqual(0);
  for (const value of Object.values(leaving)) expect(Number.isFinite(value)).toBe(true);
}

/** Rates and checks the balances and every line of the working; gives the rating. */
export function rateAndCheck<F extends Fields, Design, Rating extends SectionRating>(
  kind: SectionKind<string, F, Design, Rating>,
  design: Design,
  air: Air,
  at: SectionCondition,
): Rating {
  const out = kind.createRating();
  rateSection(kind, design, air, at, out);
  expectBalances(out);
  for (const line of kind.working) expectReevaluates(line, out, design);
  for (const { figure } of kind.figures) expect(typeof out[figure], figure).toBe("number");
  return out;
}

function expectReevaluates<Design, Rating>(line: WorkingLine<Design, Rating>, out: Rating, design: Design): void {
  const figure = out[line.figure] as number;
  const got = line.evaluate(out, design);
  expect(Math.abs(got - figure), `${line.figure}: ${got} against ${figure}`).toBeLessThanOrEqual(
    1e-12 * Math.abs(figure),
  );
  for (const term of line.terms) expect(Number.isFinite(term.value(out, design)), term.name).toBe(true);
}
