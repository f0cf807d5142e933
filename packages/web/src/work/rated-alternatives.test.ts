/// <reference types="vite/client" />
import { describe, expect, it } from "vitest";
import { openedBench, sectionPath } from "#state/bench-state";
import type { Choice } from "#state/choices";
import { ratedCoilChoices } from "#state/rated-coil-choices";
import { catalogue, catalogueFiles, shopFiles } from "#state/sample-job.test-data";
import * as transition from "#state/transitions";
import { BookShelf } from "./book-shelf.ts";
import { perform } from "./perform.ts";
import type { RatedCoilAlternatives, Task } from "./task.ts";

const texts = import.meta.glob<string>("../../../../examples/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});
const textOf = (name: string) => Object.entries(texts).find(([path]) => path.endsWith(`${name}.yaml`))![1];
const shelf = new BookShelf({ records: catalogueFiles, profiles: [], shop: shopFiles });

function done(task: Task): { readonly result: RatedCoilAlternatives; readonly shares: readonly number[] } {
  const steps = perform(task, shelf);
  const shares: number[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { result: step.value as RatedCoilAlternatives, shares };
    shares.push(step.value);
  }
}

/** The coils that may stand for a section of an example, and the job with one of them taken. */
function searched(example: string, kind: string, limits: string) {
  const text = textOf(example);
  const origin = { name: "a", origin: "example", version: undefined, storedText: text } as const;
  const bench = openedBench(origin, catalogue, "ip");
  const index = bench.sound!.job.unit.sections.findIndex((section) => section.kind === kind);
  const section = bench.sound!.job.unit.sections[index]!;
  const { result, shares } = done({ kind: "rated coil alternatives", text, index, condition: undefined, limits });
  const take = (choice: Choice) => {
    const changes = choice.changes.map(({ field, typed }) => ({ path: `${sectionPath(index)}.${field}`, typed }));
    return transition.fieldsEdited(bench, `take ${choice.name}`, changes, catalogue).sound!.job.unit.sections[index]!;
  };
  return { result, shares, choices: ratedCoilChoices(section, result, "ip"), take };
}

describe("other coils on steam for the demo's preheat", () => {
  const limits = "most rows: 2\nfewest fins: 6 per in\nmost fins: 12 per in\n";
  const { result, shares, choices, take } = searched("marine-biology-wing", "steam coil with face and bypass", limits);

  it("are judged where the coil has most to give, and each holds the leaving air", () => {
    expect(choices.list.length).toBeGreaterThan(2);
    for (const { figures } of choices.list) {
      expect(Number(figures.leaving)).toBeGreaterThanOrEqual(result.ratedChoice.wanted - 0.011);
      expect(Number(figures.surplus)).toBeGreaterThanOrEqual(0);
    }
    expect(choices.present?.figures.price).toBeCloseTo(100, 6);
    expect(choices.present?.changes).toEqual([]);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  });

  it("are taken as fields that the job reads", () => {
    const other = choices.list.find(({ key }) => key !== choices.present?.key)!;
    expect(ratedCoilChoices(take(other), result, "ip").list.find(({ key }) => key === other.key)?.changes).toEqual([]);
  });
});

describe("other loops for the vivarium's recovery", () => {
  const limits =
    "fewest rows: 6\nmost rows: 8\nfewest fins: 10 per in\nmost fins: 11 per in\nsurfaces: [typical plain 5/8 in]\n";
  const { choices, take } = searched("large-vivarium", "recovery coil", limits);

  it("give at least what the present one gives, whose flow they keep", () => {
    expect(choices.list.length).toBeGreaterThan(1);
    for (const { figures } of choices.list) {
      expect(Number(figures.effectiveness)).toBeGreaterThan(0);
      expect(Number(figures.effectiveness)).toBeLessThan(1);
    }
    const other = choices.list.find(({ key }) => key !== choices.present?.key)!;
    const flow = (section: { readonly design: unknown }) =>
      (section.design as { loopVolumeFlow: number }).loopVolumeFlow;
    const now = take({ ...other, changes: [] });
    expect(flow(take(other)) / flow(now)).toBeCloseTo(1, 3);
  });
});
