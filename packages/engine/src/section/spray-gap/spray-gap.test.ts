import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { sprayGap } from "./kind.ts";

const design = (text = "length: 12 in") => sprayGap.prepare(valuesOfText(sprayGap.fields, text), sampleFrame);

describe("spray gap", () => {
  it("has the friction of its walls and nothing else", () => {
    const at = sampleSectionCondition();
    const out = rateAndCheck(sprayGap, design(), sampleAir(at.condition, 9), at);
    // Darcy: 0.02 × length over hydraulic diameter, by hand for 2.4 × 2.2 m.
    const diameter = (2 * 2.4 * 2.2) / 4.6;
    expect(out.totalPressureLoss).toBeCloseTo(
      ((0.02 * 0.3048) / diameter) * 0.5 * out.density * out.faceVelocity ** 2,
      9,
    );
    expect(out.leaving.dryBulb).toBe(out.entering.dryBulb);
  });

  it("balances at small and large flow", () => {
    const at = sampleSectionCondition();
    for (const flow of [0.05, 14])
      rateAndCheck(sprayGap, design(), sampleAir(at.condition, flow, { freeLiquid: 0.01 }), at);
  });

  it("refuses a hatch larger than the gap", () => {
    expect(() => design("hatch width: 20 in")).toThrow(expect.objectContaining({ field: "hatchWidth" }));
    expect(() => design("hatch height: 8 ft")).toThrow(expect.objectContaining({ field: "hatchHeight" }));
  });
});
