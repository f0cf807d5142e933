import { describe, expect, it } from "vitest";
import type { SectionRating } from "#section/contract";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import { conditionOf, jobOf } from "./example-job.test-data.ts";

const summer = "season: cooling, outdoor: { dry bulb: 95 °F, wet bulb: 77 °F }";
const job = jobOf(
  "large-vivarium",
  (text) => `${text}
conditions:
  - { name: recovered, ${summer} }
  - { name: not recovered, ${summer}, exhaust: stopped }
`,
);

/** W out of the air in every section of a role's kind. */
function heatOf(key: string, kind: string): number {
  const condition = conditionOf(job, key);
  const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
  expect(rating.solved).toBe(true);
  const index = job.unit.sections.findIndex((section) => section.kind === kind);
  return Math.abs((rating.sections[index] as SectionRating & { readonly capacity: number }).capacity);
}

describe("a condition with the exhaust stopped", () => {
  it("shows the cooling coil at full load without recovery, as a schedule of coils asks for both", () => {
    expect(heatOf("own-recovered", "recovery coil")).toBeGreaterThan(10_000);
    expect(heatOf("own-not-recovered", "recovery coil")).toBeLessThan(1);
    expect(heatOf("own-not-recovered", "chilled-water coil")).toBeGreaterThan(
      heatOf("own-recovered", "chilled-water coil") + 10_000,
    );
  });
});
