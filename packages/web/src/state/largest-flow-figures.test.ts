import { describe, expect, it } from "vitest";
import { openedBench } from "./bench-state.ts";
import { largestFlowFigures } from "./largest-flow-figures.ts";
import { catalogue, sampleFile, sampleText } from "./sample-job.test-data.ts";
import { tellConditions } from "./tell-conditions.ts";

describe("what the intake meets at the largest flow", () => {
  const louvered = sampleText.replace(
    "  sections:\n",
    "  sections:\n    - { kind: louver, louver: typical drainable 6 in }\n",
  );
  const sound = openedBench({ ...sampleFile, storedText: louvered }, catalogue, "ip").sound!;
  const { sections } = sound.job.unit;
  const fan = sections.findIndex(({ behaviour }) => behaviour.role === "fan");
  const louver = sections.findIndex(({ kind }) => kind === "louver");

  it("waits until every condition is solved, as the fastest of them decides", () => {
    expect(largestFlowFigures(sound, fan, "wet-bulb-day-1", "ip")).toEqual([]);
    sound.book.take(tellConditions(sound.book));
    const [speed, share] = largestFlowFigures(sound, fan, "wet-bulb-day-1", "ip");
    const speeds = sound.job.conditions.map(({ key }) => sound.book.known(key)!.operation.fanSpeed);
    expect(Number.parseFloat(speed!.value.replace(",", ""))).toBeCloseTo(60 * Math.max(...speeds), -1);
    expect(Number.parseFloat(share!.value)).toBeGreaterThan(100);
  });

  it("tells the louver's margin there, less than at the condition in hand", () => {
    const figures = largestFlowFigures(sound, louver, "wet-bulb-day-1", "ip");
    const margin = Number.parseFloat(figures.find(({ name }) => name.startsWith("margin"))!.value);
    const record = sound.book.known("wet-bulb-day-1")!.sections[louver] as unknown as { marginToOnset: number };
    expect(margin).toBeLessThan(100 * record.marginToOnset);
    expect(figures.at(-1)!.fails).toBe(margin < 0);
  });

  it("is nothing of other sections, nor while the fan stands", () => {
    const filters = sections.findIndex(({ kind }) => kind === "filter bank");
    expect(largestFlowFigures(sound, filters, "wet-bulb-day-1", "ip")).toEqual([]);
    expect(largestFlowFigures(sound, fan, "fan-stopped-dampers-closed", "ip")).toEqual([]);
  });
});
