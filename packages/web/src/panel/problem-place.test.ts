import type { Problem } from "@oncethrough/engine/form/problem";
import { expect, it } from "vitest";
import { problemSpan } from "./problem-place.ts";

const text = "duty:\n  tag: A\n  altitude: high\n";
const at = (line: number, column: number, value: string): Problem => ({
  line,
  column,
  value,
  path: "",
  field: "",
  problem: "",
  allowed: "",
  severity: "error",
});
const cut = (problem: Problem) => {
  const { from, to } = problemSpan(text, problem);
  return text.slice(from, to);
};

it("shows a problem at its value, else at the rest of its line, and never outside the text", () => {
  expect(cut(at(3, 13, "high"))).toBe("high");
  expect(cut(at(3, 3, ""))).toBe("altitude: high");
  expect(cut(at(1, 99, ""))).toBe("");
  expect(problemSpan(text, at(99, 1, "")).to).toBeLessThanOrEqual(text.length);
  expect(problemSpan("", at(1, 1, "x"))).toEqual({ from: 0, to: 0 });
});
