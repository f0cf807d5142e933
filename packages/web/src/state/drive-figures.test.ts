import { describe, expect, it } from "vitest";
import { driveFigures } from "./drive-figures.ts";
import { sampleBench } from "./sample-job.test-data.ts";

describe("drive and connection of a fan", () => {
  const { sound } = sampleBench();
  const fan = sound!.job.unit.sections.findIndex(({ behaviour }) => behaviour.role === "fan");

  it("are told with motor, drive, circuit and who decides", () => {
    const drive = driveFigures(sound!, fan, "wet-bulb-day-0.5", "ip")!;
    const names = drive.rows.map(([name]) => name).join("; ");
    expect(names).toMatch(/may give at this altitude.*service factor.*ramp of the speed control.*circuit ampacity/);
    expect(drive.cautions[0]).toContain("local electrical code and a licensed person decide");
    // NFPA 70 article 430: a single motor's circuit carries at least 125 % of its full-load current.
    const figure = (words: RegExp) => Number.parseFloat(drive.rows.find(([name]) => words.test(name))![1]);
    const { count } = sound!.job.unit.sections[fan]!.design as { readonly count: number };
    expect(figure(/circuit ampacity/) / figure(/full-load current/)).toBeCloseTo(count + 0.25, 1);
  });

  it("are not told of other sections, nor while the fan stands", () => {
    expect(driveFigures(sound!, fan - 1, "wet-bulb-day-0.5", "ip")).toBeUndefined();
    expect(driveFigures(sound!, fan, "fan-stopped-dampers-closed", "ip")).toBeUndefined();
  });
});
