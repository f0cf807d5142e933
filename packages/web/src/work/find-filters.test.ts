import { describe, expect, it } from "vitest";
import { openedBench, sectionPath } from "#state/bench-state";
import { filterChoices } from "#state/filter-choices";
import { catalogue, catalogueFiles, profileFiles, shopFiles } from "#state/sample-job.test-data";
import * as transition from "#state/transitions";
import { BookShelf } from "./book-shelf.ts";
import { perform } from "./perform.ts";
import type { FilterAlternatives, Task } from "./task.ts";

const texts = import.meta.glob<string>("../../../../examples/marine-biology-wing.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});
const bench = openedBench(
  { name: "a", origin: "example", version: undefined, storedText: Object.values(texts)[0]! },
  catalogue,
  "ip",
);
const index = bench.sound!.job.unit.sections.findIndex(({ kind }) => kind === "filter bank");
const shelf = new BookShelf({ records: catalogueFiles, profiles: profileFiles, shop: shopFiles });

function found(limits: string, condition: string | undefined): FilterAlternatives {
  const task: Task = { kind: "filter alternatives", text: bench.text, index, limits, condition };
  const steps = perform(task, shelf);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value as FilterAlternatives;
}

describe("other filters for a bank", { timeout: 120_000 }, () => {
  const held = found("rack: flat\nprefilter: with\n", "wet-bulb-day-0.5");
  const choices = filterChoices(bench.sound!.job.unit.sections[index]!, held);

  it("keep the class of the present medium, hold what was asked, and count what was looked at", () => {
    expect(held.looked).toBe(held.filters.length + held.refused);
    expect(held.filters.length).toBeGreaterThan(3);
    for (const each of held.filters) {
      expect(each.efficiencyClass).toBeGreaterThanOrEqual(held.present!.efficiencyClass);
      expect(each.rack).toBe("flat");
      expect(each.prefilter).toBeDefined();
      expect(each.changeOutLoss).toBeGreaterThan(each.cleanLoss);
    }
  });

  it("have the present bank among them, at no difference to itself", () => {
    expect(choices.present).toBeDefined();
    const same = held.filters.filter(({ massChange, priceChange }) => massChange === 0 && priceChange === 0);
    expect(same.map(({ medium }) => medium)).toContain(held.present!.medium);
    expect(choices.list.find(({ key }) => key === choices.present!.key)?.changes).toEqual([]);
  });

  it("taken, give the losses that were promised, and undo brings the bank back", () => {
    const other = choices.list.find(({ changes }) => changes.length > 0)!;
    const path = sectionPath(index);
    const changes = other.changes.map(({ field, typed }) => ({ path: `${path}.${field}`, typed }));
    const after = transition.fieldsEdited(bench, `take ${other.name}`, changes, catalogue);
    const record = after.sound!.book.rating("wet-bulb-day-0.5")!.sections[index] as unknown as Record<string, number>;
    // Two ways to the same point of the unit agree as the search for it ends: to some millionths.
    expect(record.cleanLoss! / Number(other.figures.clean)).toBeCloseTo(1, 3);
    expect(record.changeOutLoss! / Number(other.figures.changeOut)).toBeCloseTo(1, 3);
    expect(transition.stepBack(after, catalogue).text).toBe(bench.text);
  });

  it("say what cannot be read", () => {
    expect(() => found("rack: round\n", undefined)).toThrow(/rack/);
  });
});
