import type { Condition } from "@oncethrough/engine/duty/condition";
import { describe, expect, it } from "vitest";
import { choiceOf, conditionSets, nearestLoading } from "./condition-choices.ts";

const named = (key: string, name: string, filterLoading = 0.5) => ({ key, name, filterLoading }) as Condition;
const conditions = [
  named("winter-1", "winter, filters at change-out", 1),
  named("winter-0", "winter, filters clean", 0),
  named("winter-0.5", "winter, filters half loaded", 0.5),
  named("minimum-flow-winter", "minimum flow, winter"),
  named("one-fan-out", "one fan out, wet-bulb day, filters at change-out", 1),
  named("fan-stopped-dampers-closed", "fan stopped in winter, dampers closed"),
  named("own-storm", "storm, wind from the sea", 0.2),
];

describe("conditions to pick", () => {
  it("stand by day with their filter loadings in order, and by what they are", () => {
    const sets = conditionSets(conditions);
    expect(sets.map((set) => [set.name, set.choices.map((choice) => choice.name)])).toEqual([
      ["design", ["winter"]],
      ["minimum flow", ["winter"]],
      ["one fan out", ["wet-bulb day"]],
      ["fan stopped", ["dampers closed"]],
      ["own", ["storm, wind from the sea"]],
    ]);
    expect(sets[0]?.choices[0]?.loadings.map((each) => each.key)).toEqual(["winter-0", "winter-0.5", "winter-1"]);
  });

  it("keep the loading when the day changes", () => {
    const sets = conditionSets(conditions);
    const winter = choiceOf(sets, "winter-0.5")!;
    expect(nearestLoading(winter, 0.9)).toBe("winter-1");
    expect(nearestLoading(choiceOf(sets, "own-storm")!, 0.9)).toBe("own-storm");
    expect(choiceOf(sets, "nothing")).toBeUndefined();
  });
});
