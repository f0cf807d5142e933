import { describe, expect, it } from "vitest";
import { fastenerMass } from "#standard/fastener";
import { fastenersOf } from "./finish-schedule.ts";
import type { Part } from "./part.ts";
import { exampleJob, exampleNames, handWorkedText, jobOf } from "./weigh.test-data.ts";
import { arrangeRunning } from "./weigh.ts";

function arranged({ unit, duty, conditions }: ReturnType<typeof jobOf>) {
  return arrangeRunning(unit, duty, conditions);
}

function setsOf(whole: Part): readonly Part[] {
  return whole.children.find(({ key }) => key === "fasteners")?.children ?? [];
}

describe("fasteners", () => {
  it("weigh what tables of bolts say", () => {
    // Tables of hexagon bolts, pounds for a hundred, from memory: 3/8 by 3 in 11.2, nut 1.6, washer 1.4, of which two.
    const pound = 0.453_592_37;
    const table = ((11.2 + 1.6 + 2 * 1.4) / 100) * pound;
    // Proportions stand for the forms: within an eighth.
    expect(Math.abs(fastenerMass("joint bolt with nut", "steel") / table - 1)).toBeLessThan(0.125);
  });

  it("are counted by their pitch: by hand, around the joint and the rail of a small unit", () => {
    const split = handWorkedText.replace("frame: steel tube", "frame: steel tube, splits before: [fan]");
    const counts = new Map(fastenersOf(arranged(jobOf(split))).map(({ what, count }) => [what, count]));
    // 240 in around a clear cabinet of 60 by 60 in is 6096 mm: 41 bolts at 150 mm.
    expect(counts.get("zinc-plated joint bolt with nut, 3/8 × 3 in")).toBe(41);
  });

  it("are stainless in the wet, and each set has a count, a mass and a section or the whole unit", () => {
    for (const name of exampleNames) {
      const { whole, sections } = arranged(exampleJob(name));
      const known = new Set(sections.map(({ section }) => section.name));
      for (const { key, wet, material, count, mass, section } of setsOf(whole)) {
        if (wet) expect(material, key).toBe("stainless steel 304");
        expect(count, key).toBeGreaterThan(0);
        expect(mass, key).toBeGreaterThan(0);
        if (section !== undefined) expect(known, key).toContain(section);
      }
      const coil = setsOf(whole).filter(({ section }) => section === "cooling coil");
      expect(coil.length).toBeGreaterThan(0);
      expect(coil.map(({ material }) => material)).not.toContain("steel");
    }
  });
});
