import { describe, expect, it } from "vitest";
import { arrangementOf } from "./arranged.ts";
import { catalogue, sampleBench } from "./sample-job.test-data.ts";
import { tellConditions } from "./tell-conditions.ts";
import { edited, fieldEdited } from "./transitions.ts";

describe("the machine in hand", () => {
  const first = sampleBench();

  it("is one arrangement for everything that asks, made for how the job runs at all its conditions", () => {
    const sound = first.sound!;
    const arrangement = arrangementOf(sound);
    expect(arrangementOf(sound)).toBe(arrangement);
    expect(sound.book.tried).toBe(sound.job.conditions.length);
    expect(arrangement.running.shutOff.pressure).toBeGreaterThan(0);
  });

  it("stands with an edit at once, on what the job before it felt, and is made anew when all conditions are solved", () => {
    const wider = fieldEdited(first, "unit.casing.width", "84 in", catalogue);
    const { book } = wider.sound!;
    const early = arrangementOf(wider.sound!);
    expect(book.tried).toBe(0);
    expect(early.running).toBe(arrangementOf(first.sound!).running);
    expect(early.outside.width).toBeGreaterThan(arrangementOf(first.sound!).outside.width);
    book.take(tellConditions(book));
    const late = arrangementOf(wider.sound!);
    expect(late).not.toBe(early);
    // A wider filter bank takes less pressure, and the fan's pressure at no flow falls with its speed.
    expect(late.running.shutOff.pressure).toBeLessThan(early.running.shutOff.pressure);
    expect(arrangementOf(wider.sound!)).toBe(late);
  });

  it("solves at once where sections come or go", () => {
    const text = first.text.replace("    - kind: access\n", "    - { kind: access, name: walk in, length: 40 in }\n");
    const other = edited(first, "typing", text, catalogue);
    arrangementOf(other.sound!);
    expect(other.sound!.book.tried).toBe(other.sound!.job.conditions.length);
  });
});
