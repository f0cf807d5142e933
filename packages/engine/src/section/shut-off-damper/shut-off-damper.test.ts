import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { shutOffDamperFields } from "./design.ts";
import { shutOffDamper } from "./kind.ts";

const design = (text: string) => shutOffDamper.prepare(valuesOfText(shutOffDamperFields, text), sampleFrame);
const damper = "damper: typical airfoil opposed class 1A\nwidth: 2 m\nheight: 1.6 m\n";

describe("shut-off damper", () => {
  it("open, takes blades and wall at the velocity in its face", () => {
    const at = sampleSectionCondition();
    const out = rateAndCheck(shutOffDamper, design(damper), sampleAir(at.condition, 10), at);
    // By hand: open loss 0.35, wall 0.5 (1 − σ) + (1 − σ)² with σ = 3.2/5.28 (sharp contraction, Borda and Carnot).
    const rest = 1 - 3.2 / 5.28;
    const expected = (0.35 + 0.5 * rest + rest * rest) * 0.5 * out.density * out.faceVelocity ** 2;
    expect(out.totalPressureLoss).toBeCloseTo(expected, 9);
  });

  it("at 45 degrees, has the published law's loss: exp(−1.51 + 0.105 × 45) (ASHRAE 825-RP)", () => {
    const at = sampleSectionCondition();
    const out = rateAndCheck(shutOffDamper, design(`${damper}blade angle: 45 deg`), sampleAir(at.condition, 5), at);
    expect(out.bladeLoss).toBeCloseTo(Math.exp(-1.51 + 0.105 * 45), 9);
  });

  it("closed, holds against the fan: doubles of leakage need four times the pressure", () => {
    const at = sampleSectionCondition({}, { dampers: "closed", fansRunning: false });
    const loss = (flow: number) => rateAndCheck(shutOffDamper, design(damper), sampleAir(at.condition, flow), at);
    expect(loss(0.04).totalPressureLoss / loss(0.02).totalPressureLoss).toBeCloseTo(4, 2);
    expect(loss(0.04).bladeAngle).toBe(0);
  });

  it("balances from 0.5 % to 150 % of flow", () => {
    const at = sampleSectionCondition();
    for (const flow of [0.05, 1, 10, 15])
      rateAndCheck(shutOffDamper, design(damper), sampleAir(at.condition, flow), at);
  });

  it("refuses a damper larger than the cabinet", () => {
    expect(() => design(damper.replace("2 m", "2.5 m"))).toThrow(expect.objectContaining({ field: "width" }));
    expect(() => design(`${damper}length: 3 in`)).toThrow(expect.objectContaining({ field: "length" }));
  });
});
