import { sectionKinds } from "@oncethrough/engine/section/kinds";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BenchState, isStale, openedBench, sectionPath } from "./bench-state.ts";
import { dayMoved, dayNudged, dayPoints } from "./day-edits.ts";
import { catalogue, demoText, sampleBench, sampleFile, sampleText } from "./sample-job.test-data.ts";
import {
  addWords,
  lengthTried,
  moveWords,
  sectionAdded,
  sectionMoved,
  sectionRemoved,
  sectionResized,
} from "./section-edits.ts";
import { fieldEdited, stepBack, stepForward } from "./transitions.ts";

const demoBench = () => openedBench({ ...sampleFile, storedText: demoText }, catalogue, "ip");
const namesOf = (state: BenchState) => state.sound?.job.unit.sections.map(({ name }) => name);

describe("sections in the drawing", () => {
  it("are moved with their lines, picked where they land, and moved back to the same bytes", () => {
    const bench = sectionMoved(sampleBench(), 0, 1, catalogue);
    expect(namesOf(bench)).toEqual(["access", "filters", "fan"]);
    expect(bench.text.length).toBe(sampleText.length);
    expect(bench.picked).toBe(sectionPath(1));
    expect(bench.history.past.at(-1)?.name).toBe("filters between access and fan");
    expect(sectionMoved(bench, 1, 0, catalogue).text).toBe(sampleText);
    expect(stepBack(bench, catalogue).text).toBe(sampleText);
  });

  it("are added with a name of their own and taken out again, byte for byte", () => {
    const bench = sectionAdded(sampleBench(), 2, "access", catalogue);
    expect(namesOf(bench)).toEqual(["filters", "access", "access 2", "fan"]);
    expect(bench.picked).toBe(sectionPath(2));
    expect(sectionRemoved(bench, 2, catalogue).text).toBe(sampleText);
  });

  it("take their clear length as typed", () => {
    const bench = sectionResized(sampleBench(), 1, "36 in", catalogue);
    expect(bench.text).toBe(sampleText.replace("    - kind: access\n", "    - kind: access\n      length: 36 in\n"));
    expect(bench.sound?.job.unit.sections[1]?.layout.length).toBeCloseTo(0.9144, 9);
  });

  it("are tried at a length before anything is written, and given up without a trace", () => {
    const bench = sampleBench();
    const trial = lengthTried(bench, 1, "48 in", catalogue);
    expect(trial.text).toBe(sampleText);
    expect(trial.history).toBe(bench.history);
    expect(trial.sound).toBe(bench.sound);
    // Four feet by definition.
    expect(trial.trial?.job.unit.sections[1]?.layout.length).toBeCloseTo(1.2192, 9);
    expect(lengthTried(trial, 1, undefined, catalogue)).toEqual(bench);
    expect(lengthTried(bench, 1, "many apples", catalogue).trial).toBeUndefined();
    expect(sectionResized(trial, 1, "48 in", catalogue).trial).toBeUndefined();
  });

  it("stay as they are where an act gives no machine, and the words say why", () => {
    const bench = demoBench();
    const fan = namesOf(bench)!.indexOf("fan");
    const refused: [BenchState, RegExp][] = [
      [sectionRemoved(bench, fan, catalogue), /not fan removed: the unit has no fan/],
      [sectionMoved(bench, 2, fan, catalogue), /mixing box stands behind the fan/],
      [sectionMoved(bench, 0, 1, catalogue), /hood hangs outside before the intake/],
      [sectionAdded(bench, fan, "fan", catalogue), /a second fan/],
      [sectionAdded(bench, fan, "hot-water coil", catalogue), /needs heating water, and the duty gives none/],
      [sectionResized(bench, 2, "1 in", catalogue), /not mixing box 1 in long/],
    ];
    for (const [state, words] of refused) {
      expect(state.text).toBe(bench.text);
      expect(state.notice?.text).toMatch(words);
      expect(state.notice?.weight).toBe("caution");
    }
  });

  it("say what an order costs that can be built, before and after the act", () => {
    const bench = demoBench();
    const sections = bench.sound!.job.unit.sections;
    const [filters, coil] = ["filters", "cooling coil"].map((name) => namesOf(bench)!.indexOf(name)) as [
      number,
      number,
    ];
    expect(moveWords(sections, filters, coil)).toMatchObject({ weight: "unwise", words: /would get wet/ });
    expect(sectionMoved(bench, filters, coil, catalogue).notice?.text).toMatch(/would get wet/);
    expect(moveWords(sections, 0, 3)).toMatchObject({ weight: "impossible" });
    expect(addWords(bench.sound!.job.duty, sections, coil + 1, "moisture eliminator")).toBeUndefined();
    expect(addWords(bench.sound!.job.duty, sections, filters, "hot-water coil")?.weight).toBe("impossible");
  });

  it("can be of every kind that the duty and the order allow", () => {
    const bench = demoBench();
    const { duty, unit } = bench.sound!.job;
    const behind = namesOf(bench)!.indexOf("access");
    const added = sectionKinds.filter(
      ({ name }) => addWords(duty, unit.sections, behind, name)?.weight !== "impossible",
    );
    expect(added.length).toBeGreaterThan(9);
    for (const { name } of added) {
      const state = sectionAdded(bench, behind, name, catalogue);
      expect(state.notice?.text ?? "", name).not.toMatch(/^not /);
      expect(state.sound?.job.unit.sections[behind]?.kind, name).toBe(name);
    }
  });
});

describe("a design day on the chart", () => {
  it("is written as its job tells it, in round figures, as one step", () => {
    const bench = demoBench();
    const { duty } = bench.sound!.job;
    const day = dayPoints(duty, "ip").find(({ key }) => key === "wet-bulb-day")!;
    expect(day.words).toBe("88 °F, wet bulb 81 °F");
    const nudged = dayNudged(day, { dryBulb: 1, moisture: -2 }, 101325, "ip");
    expect(nudged.words).toBe("88.5 °F, wet bulb 80 °F");
    const state = dayMoved(bench, day.key, nudged, catalogue);
    expect(state.text).toBe(
      bench.text.replace("{ dry bulb: 88 °F, wet bulb: 81 °F }", "{ dry bulb: 88.5 °F, wet bulb: 80 °F }"),
    );
    expect(state.history.past.at(-1)?.name).toBe("wet-bulb day 88.5 °F, wet bulb 80 °F");
    expect(stepBack(state, catalogue).text).toBe(bench.text);
  });

  it("is never wetter than saturated air", () => {
    const { duty } = demoBench().sound!.job;
    for (const day of dayPoints(duty, "si")) {
      const wet = dayNudged(day, { dryBulb: -40, moisture: 200 }, 101325, "si");
      const again = dayNudged({ ...day, ...wet.state }, { dryBulb: 0, moisture: 200 }, 101325, "si");
      expect(again.state.humidityRatio).toBeCloseTo(wet.state.humidityRatio, 9);
    }
  });
});

describe("any acts in any order", () => {
  const act = fc.oneof(
    fc.record({ act: fc.constant("move" as const), from: fc.nat(11), to: fc.nat(11) }),
    fc.record({ act: fc.constant("add" as const), at: fc.nat(11), kind: fc.nat(sectionKinds.length - 1) }),
    fc.record({ act: fc.constant("remove" as const), index: fc.nat(11) }),
    fc.record({ act: fc.constant("resize" as const), index: fc.nat(11), inches: fc.integer({ min: 1, max: 90 }) }),
    fc.record({
      act: fc.constant("day" as const),
      day: fc.nat(3),
      dry: fc.integer({ min: -9, max: 9 }),
      wet: fc.integer({ min: -9, max: 9 }),
    }),
    fc.record({ act: fc.constant("field" as const), typed: fc.constantFrom("96 in", "2 m", "wide", "") }),
    fc.record({ act: fc.constant("undo" as const) }),
    fc.record({ act: fc.constant("redo" as const) }),
  );

  function done(state: BenchState, each: typeof act extends fc.Arbitrary<infer Act> ? Act : never): BenchState {
    switch (each.act) {
      case "move":
        return sectionMoved(state, each.from, each.to, catalogue);
      case "add":
        return sectionAdded(state, Math.min(each.at, namesOf(state)!.length), sectionKinds[each.kind]!.name, catalogue);
      case "remove":
        return sectionRemoved(state, each.index, catalogue);
      case "resize":
        return sectionResized(state, each.index, `${each.inches} in`, catalogue);
      case "day": {
        const day = dayPoints(state.sound!.job.duty, "ip")[each.day]!;
        const by = { dryBulb: each.dry, moisture: each.wet };
        return dayMoved(state, day.key, dayNudged(day, by, 101325, "ip"), catalogue);
      }
      case "field":
        return fieldEdited(state, "unit.casing.width", each.typed, catalogue);
      case "undo":
        return stepBack(state, catalogue);
      case "redo":
        return stepForward(state, catalogue);
    }
  }

  it("end where they began when all are undone, and where they ended when all are done again", () => {
    fc.assert(
      fc.property(fc.array(act, { maxLength: 14 }), (acts) => {
        const first = demoBench();
        let bench = first;
        for (const each of acts) bench = done(bench, each);
        const last = bench;
        if (!isStale(last)) expect(last.sound?.text).toBe(last.text);
        let undos = 0;
        while (bench.history.past.length > 0) {
          bench = stepBack(bench, catalogue);
          undos += 1;
        }
        expect(bench.text).toBe(first.text);
        expect(namesOf(bench)).toEqual(namesOf(first));
        for (; undos > 0; undos -= 1) bench = stepForward(bench, catalogue);
        expect(bench.text).toBe(last.text);
        expect(namesOf(bench)).toEqual(namesOf(last));
      }),
      { numRuns: 12 },
    );
  });
});
