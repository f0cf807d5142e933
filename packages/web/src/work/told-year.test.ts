import { syntheticYearOfDuty } from "@oncethrough/engine/year/synthetic-duty";
import { startYear, stepYear } from "@oncethrough/engine/year/year-hours";
import { describe, expect, it } from "vitest";
import { catalogueFiles, profileFiles, sampleBench, shopFiles } from "#state/sample-job.test-data";
import { BookShelf } from "./book-shelf.ts";
import { perform } from "./perform.ts";
import { piecesOf } from "./pieces.ts";
import type { Task, UncertaintyResult, YearResult } from "./task.ts";

const { text, sound } = sampleBench();

function done(task: Task, shelf: BookShelf): unknown {
  const steps = perform(task, shelf);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/** Does a task by so many workers, who take its pieces in turn, the later ones first. */
function shared(task: Task, workers: number): unknown {
  const pieces = piecesOf(task)!;
  const shelves = Array.from(
    { length: workers },
    () => new BookShelf({ records: catalogueFiles, profiles: profileFiles, shop: shopFiles }),
  );
  const order = Array.from({ length: pieces.count }, (_, index) => index).reverse();
  const results = order.map((index) => done(pieces.piece(index), shelves[index % workers]!));
  return done(pieces.whole(structuredClone(results)), shelves[0]!);
}

describe("a year on the page", { timeout: 300_000 }, () => {
  it("is the same, to the last digit, for one worker and for three, and as the engine solves it in one go", () => {
    const task = { kind: "year", text, weather: undefined } as const;
    const alone = shared(task, 1) as YearResult;
    expect(shared(task, 3)).toEqual(alone);
    const { unit, duty } = sound!.job;
    const year = stepYear(startYear({ unit, duty, weather: syntheticYearOfDuty(duty) }), Number.POSITIVE_INFINITY)!;
    expect(alone.year.lists.supplyDryBulb).toEqual(year.lists.supplyDryBulb);
    expect(structuredClone(alone)).toEqual(alone);
    expect(alone.representative.hours).toHaveLength(48);
  });

  it("within tolerances is the same for any number of workers, and another for another seed", () => {
    const task = { kind: "uncertainty", text, weather: undefined, trials: 6, seed: 3 } as const;
    const alone = shared(task, 1) as UncertaintyResult;
    expect(shared(task, 2)).toEqual(alone);
    expect(structuredClone(alone)).toEqual(alone);
    expect(alone).toMatchObject({ trials: 6, seed: 3, hours: 48 });
    expect((shared({ ...task, seed: 4 }, 1) as UncertaintyResult).cost).not.toEqual(alone.cost);
  });
});
