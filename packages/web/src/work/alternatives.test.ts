/// <reference types="vite/client" />
import { describe, expect, it } from "vitest";
import { openedBench, sectionPath } from "#state/bench-state";
import { axisFigure, type Choice, type Choices, choicesAsTabs, choiceText, sortedChoices } from "#state/choices";
import { coilChoices } from "#state/coil-choices";
import { fanChoices } from "#state/fan-choices";
import { catalogue, catalogueFiles, shopFiles } from "#state/sample-job.test-data";
import * as transition from "#state/transitions";
import { BookShelf } from "./book-shelf.ts";
import { perform } from "./perform.ts";
import type { CoilAlternatives, FanAlternatives, Task } from "./task.ts";

const texts = import.meta.glob<string>("../../../../examples/marine-biology-wing.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});
const text = Object.values(texts)[0]!;
const bench = openedBench({ name: "a", origin: "example", version: undefined, storedText: text }, catalogue, "ip");
const sections = bench.sound!.job.unit.sections;
const coil = sections.findIndex((section) => section.kind === "chilled-water coil");
const fan = sections.findIndex((section) => section.kind === "fan");
const shelf = new BookShelf({ records: catalogueFiles, profiles: [], shop: shopFiles });

/** Does a task to its end. */
function done(task: Task): { readonly result: unknown; readonly shares: readonly number[] } {
  const steps = perform(task, shelf);
  const shares: number[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { result: step.value, shares };
    shares.push(step.value);
  }
}

const limits =
  "most rows: 9\nfewest rows: 7\nfewest fins: 10 per in\nmost fins: 12 per in\nsurfaces: [typical plain 5/8 in]\n";
const coils = { kind: "coil alternatives", text, index: coil, condition: "wet-bulb-day-0.5", limits } as const;

/** The job after taking a choice. */
function taken(choice: Choice, index: number) {
  const changes = choice.changes.map(({ field, typed }) => ({ path: `${sectionPath(index)}.${field}`, typed }));
  return transition.fieldsEdited(bench, `take ${choice.name}`, changes, catalogue);
}

describe("other coils for the demo's cooling coil", () => {
  const { result } = done(coils);
  const found = result as CoilAlternatives;
  const choices: Choices = coilChoices(sections[coil]!, found, "ip");

  it("are found within the limits typed", () => {
    expect(choices.list.length).toBeGreaterThan(3);
    for (const { figures } of choices.list) {
      expect(figures.rows).toBeGreaterThanOrEqual(7);
      expect(figures.rows).toBeLessThanOrEqual(9);
      expect(figures.surface).toBe("plain 5/8 in");
    }
    expect(found.at.name).toBe("wet-bulb day, filters half loaded");
    expect(choices.found).toMatch(/^\d+ of \d+ ways leave the air at 53\.\d °F at wet-bulb day/);
  });

  it("know the present one, at price 100 and with nothing to change", () => {
    expect(choices.present?.figures).toMatchObject({ rows: 8, circuits: 92, price: 100 });
    expect(choices.present?.changes).toEqual([]);
  });

  it("are taken as one step that writes the fields that differ and nothing else, and can be undone", () => {
    const other = choices.list.find((choice) => choice.figures.rows === 9)!;
    const next = taken(other, coil);
    expect(next.history.past).toHaveLength(1);
    expect(next.history.past[0]?.name).toBe(`take ${other.name}`);
    const lines = (of: string) => of.split("\n");
    const changed = lines(next.text).filter((line, index) => line !== lines(text)[index]);
    expect(changed.map((line) => line.trim().split(":")[0])).toEqual(other.changes.map((each) => each.field));
    expect(transition.stepBack(next, catalogue).text).toBe(text);
    // The job so written holds the very coil that was chosen.
    const again = coilChoices(next.sound!.job.unit.sections[coil]!, found, "ip");
    expect(again.present?.key).toBe(other.key);
    expect(again.present?.figures.price).toBe(100);
    expect(again.present?.changes).toEqual([]);
  });

  it("are found by steps that only go on, and write wire and another surface in words that the job reads", () => {
    const wide = done({
      ...coils,
      limits: "fewest rows: 8\nmost rows: 10\nfewest fins: 8 per in\nmost fins: 12 per in\n",
    });
    expect(wide.shares.length).toBeGreaterThan(3);
    expect(wide.shares).toEqual(wide.shares.toSorted((a, b) => a - b));
    const list = coilChoices(sections[coil]!, wide.result as CoilAlternatives, "ip").list;
    const odd = list.find(({ figures }) => figures.turbulators === "wire" && figures.surface !== "plain 5/8 in")!;
    const next = taken(odd, coil);
    expect(next.reading.problems.filter((problem) => problem.severity === "error")).toEqual([]);
    const now = coilChoices(next.sound!.job.unit.sections[coil]!, wide.result as CoilAlternatives, "ip");
    expect(now.present?.key).toBe(odd.key);
  });

  it("sort by any column, either way, and keep the order of what is alike", () => {
    const up = sortedChoices(choices.list, { column: "air", way: "ascending" });
    const drops = up.map((choice) => Number(choice.figures.air));
    expect(drops).toEqual(drops.toSorted((a, b) => a - b));
    const down = sortedChoices(choices.list, { column: "rows", way: "descending" });
    expect(down[0]?.figures.rows).toBeGreaterThanOrEqual(Number(down.at(-1)?.figures.rows));
    const alike = sortedChoices(choices.list, { column: "surface", way: "ascending" });
    expect(alike).toEqual(choices.list);
  });

  it("go to a spreadsheet as tabs, a line each, in the units shown, the present one named", () => {
    const sheet = choicesAsTabs(choices, choices.list, "ip").trimEnd().split("\n");
    expect(sheet).toHaveLength(choices.list.length + 1);
    const cells = sheet.map((line) => line.split("\t"));
    expect(new Set(cells.map((line) => line.length)).size).toBe(1);
    expect(cells[0]).toContain("capacity [MBH]");
    const at = cells[0]!.indexOf("capacity [MBH]");
    // 1 W is 3.412142 Btu/h.
    expect(Number(cells[1]![at])).toBeCloseTo((Number(choices.list[0]!.figures.capacity) * 3.412142) / 1000, 1);
    expect(cells.filter((line) => line[0] === "present")).toHaveLength(1);
    const capacity = choices.columns.find(({ key }) => key === "capacity")!;
    expect(choiceText(choices.list[0]!, capacity, "ip")).toMatch(/^\d,\d{3}\.\d$/);
  });

  it("lie on the axes of their plot by quantities, and by nothing else", () => {
    expect(axisFigure(choices, choices.plot.x)).toMatchObject({ quantity: "pressureDifference", better: "less" });
    expect(() => axisFigure(choices, { column: "surface", better: "less" })).toThrow(/no column surface/);
  });
});

describe("other fans for the demo", () => {
  const task = { kind: "fan alternatives", text, index: fan, condition: undefined, limits: "{}\n" } as const;
  const found = done(task).result as FanAlternatives;
  const record = bench.sound!.book.rating(found.at.key)?.sections[fan];
  const choices = fanChoices(sections[fan]!, found, record as never);

  it("are judged where the fan takes most, and the present one stands beside them", () => {
    const powers = bench.sound!.job.conditions.map(({ key }) => bench.sound!.book.rating(key)!.fanElectricPower);
    expect(bench.sound!.book.rating(found.at.key)!.fanElectricPower).toBe(Math.max(...powers));
    expect(choices.present?.figures.power).toBeCloseTo(Math.max(...powers), 6);
    expect(choices.present?.changes).toEqual([]);
  });

  it("are taken as fields that the job reads, and are then the present ones", () => {
    for (const choice of choices.list.slice(0, 6)) {
      const next = taken(choice, fan);
      expect(next.sound?.text, choice.name).toBe(next.text);
      const now = next.sound!.job.unit.sections[fan]!;
      const rated = next.sound!.book.rating(found.at.key)?.sections[fan];
      const again = fanChoices(now, found, rated as never);
      expect(again.present?.key).toBe(choice.key);
      expect(again.list.find(({ key }) => key === choice.key)?.changes).toEqual([]);
    }
  });

  it("keep the limits typed", () => {
    const direct = done({ ...task, limits: "drive: direct\nmost fans: 1\nlength: 80 in\n" }).result as FanAlternatives;
    expect(direct.candidates.length).toBeGreaterThan(0);
    for (const each of direct.candidates) {
      expect(each.drive).toBe("direct");
      expect(each.count).toBe(1);
      expect(each.length).toBeLessThanOrEqual(80 * 0.0254);
    }
    expect(direct.candidates.length).toBeLessThan(found.candidates.length);
  });
});

describe("tasks that cannot be done", () => {
  it.each<[string, Task, RegExp]>([
    ["a text that is no job", { ...coils, text: "tag: x" }, /no sound job/],
    ["a coil that rests", { ...coils, condition: "winter-0.5" }, /the coil rests at winter/],
    [
      "limits that contradict",
      { ...coils, limits: "fewest rows: 9\nmost rows: 3\n" },
      /lower limit is above the upper/,
    ],
    ["limits without units", { ...coils, limits: "air pressure drop: 2\n" }, /air pressure drop/],
    ["no such condition", { kind: "system curves", text, condition: "never" }, /no condition never/],
  ])("say why: %s", (_, task, words) => {
    expect(() => done(task)).toThrow(words);
  });
});
