import { solidsOf } from "@oncethrough/engine/drawing/solids";
import { describe, expect, it } from "vitest";
import { arrangementOf } from "./arranged.ts";
import { sampleBench } from "./sample-job.test-data.ts";
import { solidWords } from "./solid-words.ts";

describe("the machine in words", () => {
  it("tells each section's place and what is in it, in airflow order", () => {
    const sound = sampleBench().sound!;
    const words = solidWords(sound.job.unit, solidsOf(arrangementOf(sound)));
    expect(words.map(({ section }) => section)).toEqual(["filters", "access", "fan"]);
    for (const [index, { start, length }] of words.entries()) {
      const next = words[index + 1];
      if (next !== undefined) expect(start + length).toBeCloseTo(next.start, 9);
    }
    expect(words[0]?.parts.map(({ name }) => name)).toContain("filters");
    const springs = words[2]?.parts.find(({ name }) => name === "spring");
    expect(springs?.count).toBe(4);
  });
});
