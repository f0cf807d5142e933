import { describe, expect, it } from "vitest";
import { weightedLevel } from "#component/fan-sound";
import type { CircleItem, TextItem } from "#section/display";
import type { SoundOutlet, UnitSound } from "#unit/sound";
import { octaveBandChart } from "./octave-bands.ts";
import { listText } from "./sample-unit.test-data.ts";

function outlet(levels: readonly number[], uncertainty: number): SoundOutlet {
  return { levels, weighted: weightedLevel(levels), uncertainty };
}

/** Levels invented, round, so that every point can be read off. */
const discharge = [100, 98, 96, 92, 88, 82, 78, 72];
const sound: UnitSound = {
  intake: outlet([96, 95, 93, 88, 84, 78, 74, 68], 6),
  discharge: outlet(discharge, 6),
  casing: outlet([88, 82, 76, 66, 54, 40, 30, 26], 8),
  returnOpening: outlet([90, 89, 88, 84, 80, 74, 70, 64], 6),
  endReflection: Array<number>(8).fill(0),
  fan: {
    upstream: discharge,
    downstream: discharge,
    inside: discharge,
    tone: 250,
    uncertainty: 5,
    source: "",
    certainty: "",
  },
  steps: [],
  uncounted: [
    { section: "filters", velocity: 2, isBounded: true },
    { section: "preheat coil", velocity: 3.3, isBounded: false },
  ],
};
const chart = octaveBandChart(sound, "Sound power, sample", {
  width: 640,
  height: 320,
  limits: { discharge: 85, casing: 75 },
});

describe("octave bands", () => {
  it("put every level on one scale", () => {
    const dots = chart.items.filter((item): item is CircleItem => item.shape === "circle");
    expect(dots).toHaveLength(32);
    const yOf = (key: string) => dots.find((item) => item.key === key)!.y;
    // Ten decibels are as many points anywhere: 98 to 88 as 82 to 72, and from curve to curve.
    const ten = yOf("sound-discharge-1000") - yOf("sound-discharge-125");
    expect(yOf("sound-discharge-8000") - yOf("sound-discharge-2000")).toBeCloseTo(ten, 9);
    expect(yOf("sound-return-63") - yOf("sound-discharge-63")).toBeCloseTo(ten, 9);
    for (const item of chart.items) {
      const points = item.shape === "line" ? item.points : [item.x, item.y];
      points.forEach((value, index) => {
        expect(value, item.key).toBeGreaterThanOrEqual(0);
        expect(value, item.key).toBeLessThanOrEqual(index % 2 === 0 ? 640 : 320);
      });
    }
  });

  it("say what is not counted, and where what the trade holds of it ends", () => {
    const lines = chart.items.filter((item): item is TextItem => item.key.startsWith("sound-uncounted"));
    const said = lines.map(({ text }) => text).join("\n");
    // A source 10 dB below another adds 10 log 1.1 = 0.41 dB to it.
    expect(said).toContain("at most 0.4 dB");
    expect(said).toContain("preheat coil: faster than that holds for");
    expect(said).not.toContain("filters:");
  });

  it("say the A-weighted sums, and what that means for a limit", () => {
    const texts = chart.items.filter((item): item is TextItem => item.shape === "text");
    const sum = (key: string) => texts.find((item) => item.key === `sound-${key}-sum`)!;
    expect(sum("discharge").text).toMatch(/^9\d dB\(A\) ±6, limit 85: exceeded$/);
    expect(sum("discharge").ink).toBe("fail");
    expect(sum("casing").text).toMatch(/limit 75: not certain$/);
    expect(sum("intake").text).not.toContain("limit");
    // Names keep apart, whatever their curves do.
    const rows = texts.filter((item) => item.key.endsWith("-name")).map((item) => item.y);
    for (const [index, y] of rows.entries())
      if (index > 0) expect(y - rows[index - 1]!).toBeGreaterThanOrEqual(30 - 1e-9);
  });

  it("stay as they were drawn", async () => {
    await expect(listText(chart)).toMatchFileSnapshot("./octave-bands.list.txt");
  });
});
