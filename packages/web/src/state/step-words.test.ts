import { describe, expect, it } from "vitest";
import { catalogue, sampleBench } from "./sample-job.test-data.ts";
import { stepsInWords } from "./step-words.ts";
import * as transition from "./transitions.ts";

describe("steps in words", () => {
  const first = sampleBench();
  const one = transition.fieldEdited(first, "unit.casing.panelThickness", "3 in", catalogue);
  const two = transition.fieldEdited(one, "duty.tag", "T-9", catalogue);

  it("say what each step did, the latest first, and where a click on it leads", () => {
    const steps = stepsInWords(two.text, two.history);
    expect(steps.map(({ name, count, isDone }) => [name, count, isDone])).toEqual([
      ["tag T-9", 2, true],
      ["panel thickness 3 in", 1, true],
    ]);
    expect(steps[0]!.before).toHaveLength(1);
    expect(steps[0]!.before[0]).toMatch(/^tag: /);
    expect(steps[0]!.after).toEqual(["tag: T-9"]);
  });

  it("keep what was undone in sight, and lead back to it and to the beginning", () => {
    const back = transition.steppedTo(two, 0, catalogue);
    expect(back.text).toBe(first.text);
    const steps = stepsInWords(back.text, back.history);
    expect(steps.map(({ name, count, isDone }) => [name, count, isDone])).toEqual([
      ["tag T-9", 2, false],
      ["panel thickness 3 in", 1, false],
    ]);
    for (const { count } of steps) {
      const there = transition.steppedTo(back, count, catalogue);
      expect(there.history.past).toHaveLength(count);
    }
    expect(transition.steppedTo(back, 2, catalogue).text).toBe(two.text);
    expect(transition.steppedTo(two, 2, catalogue)).toBe(two);
  });
});
