import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Condition } from "#duty/condition";
import { shippedCatalogue } from "#section/shipped.test-data";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import { readJob } from "./read-job.ts";

const folder = new URL("../../../../examples/", import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith(".yaml"));

/** Every number of a rating by its path, but for the walks that it took and the rest of a balance. */
function numbersOf(thing: object, path = "", out = new Map<string, number>()): Map<string, number> {
  for (const [key, value] of Object.entries(thing)) {
    if (key === "condition" || key === "walks" || key === "returnImbalance") continue;
    if (typeof value === "number") out.set(path + key, value);
    else if (typeof value === "object" && value !== null) numbersOf(value, `${path}${key}.`, out);
  }
  return out;
}

describe.each(names)("the example %s", (name) => {
  const { job } = readJob(readFileSync(new URL(name, folder), "utf8"), shippedCatalogue);
  if (job === undefined) throw new Error(`${name} does not read`);
  const { unit, conditions } = job;
  const alone = new Map<Condition, Map<string, number>>();
  for (const condition of conditions) {
    alone.set(condition, numbersOf(rateUnit(unit, condition, createUnitRating(unit, condition))));
  }

  it.each([
    ["as they stand", conditions],
    ["from the last to the first", [...conditions].reverse()],
    [
      "every second, then the others",
      [...conditions].sort((a, b) => (conditions.indexOf(a) % 2) - (conditions.indexOf(b) % 2)),
    ],
  ])("gives one answer for its conditions, %s, whatever was rated before in the same record", (_, order) => {
    const rating: UnitRating = createUnitRating(unit, conditions[0] as Condition);
    for (const condition of order) {
      rateUnit(unit, condition, rating);
      expect(rating.solved, condition.key).toBe(true);
      const found = numbersOf(rating);
      const figures = alone.get(condition) as Map<string, number>;
      for (const [path, value] of figures) {
        // What the frost limit gives up is the difference of two heats: it is as sure as they are.
        const whole = path.endsWith("frostGivenUp") ? figures.get(path.replace("frostGivenUp", "fullCapacity")) : value;
        // A coil's march ends at 5e-6 of its heat; a small share of bypass, or latent heat, sees some multiple of that.
        const room = 3e-5 * Math.abs(whole as number) + 1e-7;
        expect(Math.abs((found.get(path) as number) - value), `${condition.key}: ${path}`).toBeLessThan(room);
      }
    }
  });
});
