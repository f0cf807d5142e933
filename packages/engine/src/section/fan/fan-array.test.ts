import { describe, expect, it } from "vitest";
import type { SectionCondition } from "../contract.ts";
import type { SectionPart } from "../part.ts";
import { rateSection } from "../rate-section.ts";
import { sampleAir, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import type { FanDesign } from "./design.ts";
import { fanFields } from "./fields.ts";
import { fan } from "./kind.ts";
import { plenumFans } from "./plenum-parts.ts";
import { createFanRating, type FanSectionRating } from "./rate.ts";
import { fanSpeedForPressure } from "./rise.ts";

const frame = { width: 3, height: 2.6, hand: "right" } as const;

function designOf(text: string): FanDesign {
  return fan.prepare(valuesOfText(fanFields, text), frame);
}

function rated(design: FanDesign, flow: number, at: SectionCondition): FanSectionRating {
  const out = createFanRating();
  rateSection(fan, design, sampleAir(at.condition, flow), at, out);
  return out;
}

describe("an array with a failed fan", () => {
  const text = "wheel: typical airfoil plenum wheel\ndiameter: 22.25 in\ncount: 6\nmotor power: 7.5 hp";
  const open = designOf(text);
  const damped = designOf(`${text}\nbackdraft dampers: yes`);
  const at = (fanSpeed: number, fansFailed: number) => sampleSectionCondition({}, { fanSpeed, fansFailed });

  it("shares the flow among those that turn, and what flows back besides when nothing closes", () => {
    const all = rated(damped, 9, at(30, 0));
    const five = rated(damped, 9, at(30, 1));
    expect(five.fansRunning).toBe(5);
    expect(five.backflow).toBe(0);
    expect(five.flowPerFan / all.flowPerFan).toBeCloseTo(6 / 5, 9);
    const leaky = rated(open, 9, at(30, 1));
    expect(leaky.backflow).toBeGreaterThan(0);
    expect(leaky.flowPerFan * 5 - leaky.backflow).toBeCloseTo(all.flowPerFan * 6, 9);
    // What flows back is driven by the very pressure that the others hold, through the loss of a standing wheel.
    const velocity = leaky.backflow / open.inletArea;
    const loss = (open.wheel.stoppedLoss + open.inletLoss) * 0.5 * leaky.density * velocity ** 2;
    expect(loss / leaky.totalPressureRise).toBeCloseTo(1, 6);
    expect(leaky.totalPressureRise).toBeLessThan(five.totalPressureRise + five.backdraftLossPressure);
  });

  it("takes one velocity pressure on the face of an open damper, one and a half throats wide before a wheel", () => {
    const each = rated(damped, 9, at(30, 0));
    const side = 1.5 * damped.wheel.inletDiameter * damped.diameter;
    const velocity = each.flowPerFan / side ** 2;
    // From memory: open blades of such dampers take about one velocity pressure of the stream on their face.
    expect(each.backdraftLossPressure / (0.5 * each.density * velocity ** 2)).toBeCloseTo(1, 9);
    expect(each.backdraftLossPressure).toBeLessThan(0.25 * 0.5 * each.density * each.inletVelocity ** 2);
    expect(rated(open, 9, at(30, 0)).backdraftLossPressure).toBe(0);
  });

  it("needs room for the dampers before the inlets, and says how much", () => {
    expect(() => designOf(`${text}\nbackdraft dampers: yes\nupstream space: 2 in`)).toThrow(/find no room/);
    expect(() => designOf(`${text}\nupstream space: 2 in`)).not.toThrow();
  });

  it("has a damper before every wheel, bought as such", () => {
    const names = (design: FanDesign) => {
      const found: string[] = [];
      const visit = (part: SectionPart): void => {
        if (part.bought?.startsWith("backdraft damper") && part.kind === "blades") found.push(part.name);
        part.children?.forEach(visit);
      };
      plenumFans(design, frame).forEach(visit);
      return found;
    };
    expect(names(damped)).toHaveLength(6);
    expect(names(open)).toHaveLength(0);
  });

  it("is led to the speed that holds pressure and flow", () => {
    for (const design of [open, damped]) {
      const whole = rated(design, 9, at(30, 0));
      const speed = fanSpeedForPressure(design, whole.flowPerFan * 6, whole.totalPressureRise, whole.density, 1);
      expect(speed).toBeGreaterThan(30);
      expect(rated(design, 9, at(speed, 1)).totalPressureRise).toBeCloseTo(whole.totalPressureRise, 4);
    }
  });
});
