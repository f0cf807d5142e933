import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isDirty, isStale, sectionIndex, sectionPath } from "./bench-state.ts";
import { catalogue, sampleBench, sampleFile, sampleText } from "./sample-job.test-data.ts";
import { errorsOf } from "./sound-job.ts";
import * as transition from "./transitions.ts";

const filterPath = sectionPath(0);

describe("a bench", () => {
  it("opens a sound job, clean, with its ratings at hand", () => {
    const bench = sampleBench();
    expect(errorsOf(bench.reading)).toEqual([]);
    expect(bench.sound?.job.unit.sections.map((section) => section.name)).toEqual(["filters", "access", "fan"]);
    expect(isDirty(bench)).toBe(false);
    expect(bench.sound?.book.rating("wet-bulb-day-0.5")?.solved).toBe(true);
    expect(bench.sound?.book.rating("no such condition")).toBeUndefined();
  });

  it("splices a field where it stands: all other bytes stay, and undo gives them back", () => {
    const first = sampleBench();
    const bench = transition.fieldEdited(first, "duty.supplyAirflow.design", "7,000 cfm", catalogue);
    expect(bench.text).toBe(sampleText.replace("6000 cfm", "7,000 cfm"));
    expect(bench.sound?.text).toBe(bench.text);
    expect(isDirty(bench)).toBe(true);
    expect(transition.stepBack(bench, catalogue).text).toBe(sampleText);
    expect(transition.stepForward(transition.stepBack(bench, catalogue), catalogue).text).toBe(bench.text);
  });

  it("writes a field that was by default, and gives it back to its default when it is emptied", () => {
    const bench = transition.fieldEdited(sampleBench(), `${filterPath}.rack`, "angled", catalogue);
    expect(bench.text).toContain("rack: angled");
    const back = transition.fieldEdited(bench, `${filterPath}.rack`, " ", catalogue);
    expect(back.text).toBe(sampleText);
    expect(transition.fieldEdited(back, `${filterPath}.rack`, "", catalogue)).toBe(back);
  });

  it("keeps the last sound job when the text has an error, and says so", () => {
    const first = sampleBench();
    const broken = transition.fieldEdited(first, `${sectionPath(2)}.diameter`, "wide", catalogue);
    expect(broken.text).toContain("diameter: wide");
    expect(broken.sound).toBe(first.sound);
    expect(isStale(broken)).toBe(true);
    const [problem] = errorsOf(broken.reading);
    expect(broken.text.split("\n")[problem!.line - 1]).toContain("diameter: wide");
    expect(isStale(transition.stepBack(broken, catalogue))).toBe(false);
  });

  it("follows the picked section when another is written before it", () => {
    const picked = transition.pickedPart(sampleBench(), sectionPath(2));
    const text = sampleText.replace(
      "  sections:\n",
      "  sections:\n    - kind: louver\n      louver: typical drainable 6 in\n",
    );
    const bench = transition.edited(picked, "a louver", text, catalogue);
    expect(errorsOf(bench.reading)).toEqual([]);
    expect(bench.sound?.job.unit.sections[sectionIndex(bench.picked)!]?.name).toBe("fan");
  });

  it("picks only what is there, and stops at both ends of the airflow", () => {
    const bench = sampleBench();
    expect(transition.pickedPart(bench, sectionPath(9))).toBe(bench);
    expect(transition.pickedPart(bench, "elsewhere")).toBe(bench);
    const last = transition.pickedPart(bench, sectionPath(2));
    expect(transition.pickedBeside(last, 1)).toBe(last);
    expect(transition.pickedBeside(last, -1).picked).toBe(sectionPath(1));
    expect(transition.pickedBeside(transition.pickedPart(bench, "duty"), 1).picked).toBe(sectionPath(0));
  });

  it("is clean when what was saved is what stands there", () => {
    const bench = transition.fieldEdited(sampleBench(), "duty.tag", "T-2", catalogue);
    const file = { ...sampleFile, storedText: bench.text };
    expect(isDirty(transition.saved(bench, file))).toBe(false);
    expect(isDirty(transition.stepBack(transition.saved(bench, file), catalogue))).toBe(true);
  });

  it("ends where it began after any edits and as many undos", () => {
    const values = fc.array(
      fc.tuple(
        fc.constantFrom("duty.tag", "unit.casing.width", `${filterPath}.length`, `${sectionPath(2)}.motorPower`),
        fc.constantFrom("", "40 in", "80 in", "15 hp", "x: y", "'", "# no"),
      ),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(values, (edits) => {
        let bench = sampleBench();
        for (const [path, value] of edits) bench = transition.fieldEdited(bench, path, value, catalogue);
        while (bench.history.past.length > 0) bench = transition.stepBack(bench, catalogue);
        expect(bench.text).toBe(sampleText);
        expect(bench.sound?.text).toBe(sampleText);
      }),
      { numRuns: 20 },
    );
  });
});
