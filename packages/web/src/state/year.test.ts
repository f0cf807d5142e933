import { createHourLists } from "@oncethrough/engine/year/hour-figures";
import { syntheticYearOfDuty } from "@oncethrough/engine/year/synthetic-duty";
import { describe, expect, it } from "vitest";
import { openedBench } from "./bench-state.ts";
import { hourAt, hourConditions, hourOfKey } from "./hour-in-hand.ts";
import { catalogue, sampleText } from "./sample-job.test-data.ts";
import * as transition from "./transitions.ts";
import { wrongKinds, wrongRuns } from "./wrong-hours.ts";

/** A day and a night in which all is well. */
function quietLists(hours = 48) {
  const lists = createHourLists(hours);
  lists.running.fill(1);
  lists.solved.fill(1);
  lists.freezeMargin.fill(Number.POSITIVE_INFINITY);
  lists.springRatio.fill(5);
  lists.fanSteadiness.fill(2);
  return lists;
}

describe("hours in which something is wrong", () => {
  it("are none where all is held", () => {
    expect(wrongRuns({ lists: quietLists(), hours: 48 })).toEqual([]);
  });

  it("are told as runs with their worst hour, the gravest kind first and the longest run of a kind first", () => {
    const lists = quietLists();
    lists.freezeMargin.set([-1, -4, -2], 6);
    lists.missed.set([1], 3);
    lists.missed.set([1, 2, 1], 30);
    const runs = wrongRuns({ lists, hours: 48 });
    expect(runs.map(({ what, first, count, worst }) => [what, first, count, worst])).toEqual([
      ["a coil wall below freezing", 6, 3, 7],
      ["asked and not held", 3, 1, 3],
      ["asked and not held", 30, 3, 31],
    ]);
    expect(wrongKinds(runs).map(({ what, hours, runs: own }) => [what, hours, own[0]?.first])).toEqual([
      ["a coil wall below freezing", 3, 6],
      ["asked and not held", 4, 30],
    ]);
  });

  it("count frost only while the fan runs, and reach to the last hour", () => {
    const lists = quietLists();
    lists.freezeMargin.fill(-1, 46);
    expect(wrongRuns({ lists, hours: 48 })).toMatchObject([{ first: 46, count: 2 }]);
    lists.running.fill(0, 46);
    expect(wrongRuns({ lists, hours: 48 })).toEqual([]);
  });
});

describe("an hour in hand", () => {
  const bench = openedBench(
    { name: "a", origin: "example", version: undefined, storedText: sampleText },
    catalogue,
    "ip",
  );
  const { job } = bench.sound!;
  const weather = syntheticYearOfDuty(job.duty);
  const conditionOf = hourConditions(job, weather, new Float64Array(8760));

  it("is drawn as a condition of its own, solved, with the outdoor air of the file, and edits keep it", () => {
    const picked = transition.pickedHour(bench, conditionOf(100));
    const rating = picked.sound!.book.rating(picked.condition)!;
    expect(hourOfKey(picked.condition)).toBe(100);
    expect(rating.solved).toBe(true);
    expect(rating.condition.outdoor.dryBulb).toBe(weather.dryBulb[100]);
    expect(rating.condition.name).toBe("5 Jan 05:00");
    expect(picked.sound!.book.rating(picked.condition)).toBe(rating);
    const edited = transition.edited(picked, "a remark", `${picked.text}\n# seen\n`, catalogue);
    expect(edited.sound!.book.rating(edited.condition)?.condition.outdoor.dryBulb).toBe(weather.dryBulb[100]);
    // The job's own conditions are as they were.
    expect(picked.sound!.book.rating(bench.condition)?.condition.key).toBe(bench.condition);
    expect(picked.sound!.book.all()).toHaveLength(job.conditions.length);
  });

  it("gives way to the next: only one is kept", () => {
    const first = transition.pickedHour(bench, conditionOf(10));
    const second = transition.pickedHour(first, conditionOf(11));
    expect(second.sound!.book.rating("hour-10")).toBeUndefined();
    expect(second.sound!.book.rating("hour-11")?.solved).toBe(true);
  });

  it("lies in a carpet where its day and its time are, and never outside the year", () => {
    const frame = { left: 40, right: 405, top: 30, bottom: 150 };
    expect(hourAt(frame, 40.5, 149, 8760)).toBe(0);
    expect(hourAt(frame, 404.5, 31, 8760)).toBe(8759);
    expect(hourAt(frame, 41.5, 150 - 5 * 6.5, 8760)).toBe(24 + 6);
    expect(hourAt(frame, -100, 900, 8760)).toBe(0);
    expect(hourAt(frame, 900, -100, 8760)).toBe(8759);
  });
});
