import fc from "fast-check";
import { describe, expect, it } from "vitest";
import cases from "../../../../reference/cases/air_path.json" with { type: "json" };
import {
  angleFromLoss,
  type DamperCurve,
  damperCurve,
  damperLeakage,
  lossFromCurve,
  lossFromLeakage,
} from "./damper.ts";

const curves: Record<string, DamperCurve> = {
  opposed: damperCurve("opposed", 0.45, 1e6),
  parallel: damperCurve("parallel", 0.45, 1e6),
};

describe("damper", () => {
  it.each(cases.damper_installed.cases)("installed flow, $blades blades, ratio $ratio (ASHRAE 825-RP)", (published) => {
    const curve = curves[published.blades]!;
    const rest = 0.45 / published.ratio;
    cases.damper_installed.openings.forEach((opening, index) => {
      const got = Math.sqrt((0.45 + rest) / (lossFromCurve(curve, 90 * opening) + rest));
      // Four printed digits of a share: half of the last one.
      expect(Math.abs(got - published.flow_share[index]!)).toBeLessThan(6e-5);
    });
  });

  it("leaks as the published classes of smoke dampers do at higher pressures (UL 555S)", () => {
    const { pressures_inwg, classes } = cases.smoke_damper_leakage;
    for (const name of ["1", "2", "3"] as const) {
      pressures_inwg.forEach((pressure, index) => {
        const got = damperLeakage(name, pressure * 249.08891) / 0.00508;
        // The table is rounded to half a cfm/ft² and follows the root of pressure within 3.5 % of the value.
        expect(Math.abs(got / classes[name][index]! - 1)).toBeLessThan(0.035);
      });
    }
  });

  it("passes its class's leakage when it is closed at the class's pressure", () => {
    const closed = lossFromLeakage(3 * 0.00508, 249.08891);
    const velocity = Math.sqrt(249.08891 / (0.5 * 1.201384 * closed));
    expect(velocity / 0.00508).toBeCloseTo(3, 4);
  });

  it.each(["opposed", "parallel"] as const)("%s: the curve falls without kink or jump", (blades) => {
    const curve = curves[blades]!;
    for (const joint of [curve.lowest, curve.highest]) {
      const slope = (from: number) => Math.log(lossFromCurve(curve, from + 1e-4) / lossFromCurve(curve, from)) / 1e-4;
      expect(slope(joint - 2e-4)).toBeCloseTo(slope(joint + 1e-4), 3);
    }
    for (let angle = 1; angle <= 90; angle++) {
      expect(lossFromCurve(curve, angle)).toBeLessThan(lossFromCurve(curve, angle - 1));
    }
    expect(lossFromCurve(curve, 0)).toBeCloseTo(1e6, 3);
    expect(lossFromCurve(curve, 90)).toBeCloseTo(0.45, 12);
  });

  it("finds the angle back from the loss", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("opposed" as const, "parallel" as const),
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.double({ min: 0.2, max: 0.5, noNaN: true }),
        (blades, angle, open) => {
          const curve = damperCurve(blades, open, 1.8e6);
          expect(angleFromLoss(curve, lossFromCurve(curve, angle))).toBeCloseTo(angle, 5);
        },
      ),
    );
  });

  it("refuses an open loss to which the curve cannot fall", () => {
    expect(() => damperCurve("parallel", 0.8, 1e6)).toThrow(/open loss coefficient.*0\.63/);
  });
});
