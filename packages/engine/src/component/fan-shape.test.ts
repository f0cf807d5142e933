import { describe, expect, it } from "vitest";
import cases from "../../../../reference/cases/fans.json" with { type: "json" };
import { genericEfficiencyRatio, genericFlowRatio, genericFreeFlowRatio } from "./fan-shape.ts";

describe("generic fan shape", () => {
  // EnergyPlus engineering reference, fan component model: values computed from its equation and coefficients, printed
  // to five figures; half a unit of the last figure is allowed.
  it.each(cases.lbnl_eta.vectors)("efficiency at x = $x_log10_Eu_over_Eu_at_peak", (vector) => {
    const got = genericEfficiencyRatio(vector.x_log10_Eu_over_Eu_at_peak);
    expect(Math.abs(got - vector.eta_ratio) / vector.eta_ratio).toBeLessThan(2e-5);
  });

  it("flow falls as resistance rises, from free delivery to almost none, and joins at best efficiency", () => {
    expect(genericFlowRatio(0)).toBe(1);
    expect(genericFlowRatio(1e-9)).toBeCloseTo(1, 8);
    let before = genericFreeFlowRatio();
    for (let x = -4; x <= 5; x += 0.05) {
      const flow = genericFlowRatio(x);
      expect(flow).toBeLessThan(before);
      before = flow;
    }
    expect(before).toBeLessThan(0.005);
  });

  // A published field supply fan (Englander & Norford 1992), none of the fans of the fit, of another blade shape: within
  // 0.04 of the efficiency ratio from 70 to 125 % of best flow, where fans are chosen, and within 0.09 elsewhere. This is
  // what a generic shape is worth, and the page on the fan says so.
  it("meets a published field fan within 0.04 near best efficiency, within 0.09 elsewhere", () => {
    const points = cases.fan_curves.curves.EnglanderNorford1992;
    const best = points.reduce((top, point) => (point.eta > top.eta ? point : top));
    const bestEuler = best.dp_Pa / best.V_m3_s ** 2;
    for (const point of points) {
      const got = genericEfficiencyRatio(Math.log10(point.dp_Pa / point.V_m3_s ** 2 / bestEuler));
      const share = point.V_m3_s / best.V_m3_s;
      const allowed = share > 0.69 && share < 1.25 ? 0.04 : 0.09;
      expect(Math.abs(got - point.eta / best.eta), `at ${share.toFixed(2)} of best flow`).toBeLessThan(allowed);
    }
  });
});
