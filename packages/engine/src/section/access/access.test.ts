import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { access } from "./kind.ts";

const design = (text = "door width: 24 in") => access.prepare(valuesOfText(access.fields, text), sampleFrame);

describe("access", () => {
  it("lets the door feel the compartment's pressure: half of pressure times area at the handle (moments)", () => {
    const at = sampleSectionCondition();
    const out = rateAndCheck(
      access,
      design(),
      sampleAir(at.condition, 9, { totalPressure: -500, staticPressure: -503 }),
      at,
    );
    expect(out.doorPressure).toBeCloseTo(out.leaving.staticPressure, 12);
    expect(out.handleForce).toBeCloseTo(0.5 * Math.abs(out.doorPressure) * 0.6096 * 1.8288, 9);
    const notes = access.notes?.(design(), out, at) ?? [];
    expect(notes[0]?.what).toMatch(/holds this door shut/);
  });

  it("warns of a door that pressure throws open", () => {
    const at = sampleSectionCondition();
    const out = rateAndCheck(
      access,
      design(),
      sampleAir(at.condition, 9, { totalPressure: 900, staticPressure: 897 }),
      at,
    );
    expect((access.notes?.(design(), out, at) ?? [])[0]?.what).toMatch(/throws this door open/);
    const inward = design("swing: inward");
    expect((access.notes?.(inward, out, at) ?? [])[0]?.what).toMatch(/holds this door shut/);
  });

  it("takes next to no pressure", () => {
    const at = sampleSectionCondition();
    for (const flow of [0.05, 9, 14]) {
      expect(rateAndCheck(access, design(), sampleAir(at.condition, flow), at).totalPressureLoss).toBeLessThan(0.2);
    }
  });

  it("refuses a door larger than its section", () => {
    expect(() => design("length: 20 in")).toThrow(expect.objectContaining({ field: "doorWidth" }));
    expect(() => design("door height: 9 ft")).toThrow(expect.objectContaining({ field: "doorHeight" }));
  });
});
