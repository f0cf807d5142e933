import fc from "fast-check";
import { describe, expect, it } from "vitest";
import cases from "../../../../reference/cases/fans.json" with { type: "json" };
import { type FanCurvePoint, fanCurveFromPoints, fanCurveFromShape } from "./fan-curve.ts";
import {
  fanPeakPower,
  fanPeakPressure,
  fanPressureFromFlow,
  fanShaftPowerFromFlow,
  fanSpeedFromPressure,
  flowCoefficientFromFlow,
  sampleFanCurve,
} from "./fan-performance.ts";

const curves = fc
  .record({
    flow: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
    pressure: fc.double({ min: 0.3, max: 1, noNaN: true }),
    efficiency: fc.double({ min: 0.5, max: 0.85, noNaN: true }),
    stopped: fc.double({ min: 1, max: 20, noNaN: true }),
  })
  .map((of) => fanCurveFromShape(of.flow, of.pressure, of.efficiency, 0.7, of.stopped));
const diameters = fc.double({ min: 0.3, max: 2, noNaN: true });
const speeds = fc.double({ min: 1, max: 50, noNaN: true });
const densities = fc.double({ min: 0.7, max: 1.35, noNaN: true });

interface FanState {
  readonly diameter: number;
  readonly speed: number;
  readonly density: number;
}

/** The fan laws, written by themselves. */
function scaleFanPoint(
  point: { readonly flow: number; readonly pressure: number; readonly power: number },
  from: FanState,
  to: FanState,
) {
  const size = to.diameter / from.diameter;
  const speed = to.speed / from.speed;
  const density = to.density / from.density;
  return {
    flow: point.flow * speed * size ** 3,
    pressure: point.pressure * density * (speed * size) ** 2,
    power: point.power * density * speed ** 3 * size ** 5,
  };
}

describe("fan laws", () => {
  // Worked example of the fan laws in the reference cases: 5 m³/s, 1000 Pa, 7 kW at 1200 rpm and 1.2 kg/m³, put in as one
  // of the points of a test table and read again at another speed and density.
  it("carry a tested point to another speed and density as the worked example does", () => {
    const { base, new: to, result } = cases.fan_law_example;
    const scale = 0.25 * Math.PI * base.D ** 2;
    const tip = Math.PI * base.D * (base.n / 60);
    const point = (flow: number, pressure: number, power: number): FanCurvePoint => ({
      flow: flow / (scale * tip),
      pressure: pressure / (0.5 * base.rho * tip ** 2),
      power: power / (0.5 * base.rho * scale * tip ** 3),
    });
    const curve = fanCurveFromPoints(
      [point(3, 1200, 6000), point(4, 1120, 6600), point(base.Q, base.p, base.P), point(6, 800, 7200)],
      0,
      10,
    );
    expect(fanPressureFromFlow(curve, to.D, to.n / 60, to.rho, result.Q)).toBeCloseTo(result.p, 1);
    expect(fanShaftPowerFromFlow(curve, to.D, to.n / 60, to.rho, result.Q)).toBeCloseTo(result.P, 0);
    expect(base.Q * (to.n / base.n)).toBeCloseTo(result.Q, 4);
  });

  it("hold for pressure and power of any curve: similarity in diameter, speed and density", () => {
    fc.assert(
      fc.property(
        curves,
        diameters,
        speeds,
        densities,
        diameters,
        speeds,
        densities,
        fc.double({ min: 0, max: 1.3, noNaN: true }),
        (curve, d1, n1, r1, d2, n2, r2, share) => {
          const flow = share * curve.freeFlow * 0.25 * Math.PI ** 2 * d1 ** 3 * n1;
          const point = {
            flow,
            pressure: fanPressureFromFlow(curve, d1, n1, r1, flow),
            power: fanShaftPowerFromFlow(curve, d1, n1, r1, flow),
          };
          const scaled = scaleFanPoint(
            point,
            { diameter: d1, speed: n1, density: r1 },
            { diameter: d2, speed: n2, density: r2 },
          );
          const pressure = fanPressureFromFlow(curve, d2, n2, r2, scaled.flow);
          const power = fanShaftPowerFromFlow(curve, d2, n2, r2, scaled.flow);
          expect(Math.abs(pressure - scaled.pressure)).toBeLessThan(1e-9 * fanPeakPressure(curve, d2, n2, r2));
          expect(Math.abs(power - scaled.power)).toBeLessThan(1e-9 * scaled.power);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("fan performance", () => {
  it("gives positive power and no more useful power than shaft power, anywhere", () => {
    fc.assert(
      fc.property(
        curves,
        diameters,
        speeds,
        densities,
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        (curve, d, n, r, share) => {
          const flow = share * curve.freeFlow * 0.25 * Math.PI ** 2 * d ** 3 * n;
          const power = fanShaftPowerFromFlow(curve, d, n, r, flow);
          const pressure = fanPressureFromFlow(curve, d, n, r, flow);
          expect(power).toBeGreaterThan(0);
          expect(power).toBeLessThanOrEqual(fanPeakPower(curve, d, n, r) * (1 + 1e-12));
          expect(pressure).toBeLessThanOrEqual(fanPeakPressure(curve, d, n, r) * (1 + 1e-12));
          // Within a hundredth of the best efficiency that the curve was built on.
          expect(flow * pressure).toBeLessThan(power * (curve.bestEfficiency + 0.01));
        },
      ),
      { numRuns: 300 },
    );
  });

  it("finds the speed for any pressure and flow, and the pressure of that speed is the one wanted", () => {
    fc.assert(
      fc.property(
        curves,
        diameters,
        densities,
        fc.double({ min: 0.05, max: 30, noNaN: true }),
        fc.double({ min: -400, max: 3000, noNaN: true }),
        (curve, d, r, flow, wanted) => {
          const speed = fanSpeedFromPressure(curve, d, r, flow, wanted);
          const got = fanPressureFromFlow(curve, d, speed, r, flow);
          if (speed === 0) expect(got).toBeGreaterThanOrEqual(wanted - 1e-9);
          else
            expect(Math.abs(got - wanted)).toBeLessThan(
              1e-6 * Math.max(Math.abs(wanted), fanPeakPressure(curve, d, speed, r)),
            );
        },
      ),
      { numRuns: 500 },
    );
  });

  it("is continuous at free delivery and goes over to the loss of the wheel standing still", () => {
    const { freeFlow } = sampleFanCurve;
    const flow = freeFlow * 0.25 * Math.PI ** 2 * 0.762 ** 3 * 20;
    expect(fanPressureFromFlow(sampleFanCurve, 0.762, 20, 1.2, flow * (1 - 1e-9))).toBeCloseTo(0, 4);
    expect(fanPressureFromFlow(sampleFanCurve, 0.762, 20, 1.2, flow * (1 + 1e-9))).toBeCloseTo(0, 4);
    const slow = fanPressureFromFlow(sampleFanCurve, 0.762, 1e-9, 1.2, 6);
    expect(slow).toBeCloseTo(fanPressureFromFlow(sampleFanCurve, 0.762, 0, 1.2, 6), 9);
    expect(slow).toBeLessThan(0);
  });
});

describe("tested points", () => {
  const fan = cases.fan_curves.curves.EnglanderNorford1992;
  const points: FanCurvePoint[] = fan.map((point) => ({
    flow: point.V_m3_s / 100,
    pressure: point.dp_Pa / 2000,
    power: point.P_W / 200_000,
  }));

  it("are met exactly by the curve", () => {
    const curve = fanCurveFromPoints(points, 0, 10);
    for (const point of points) {
      // Coefficients become figures at a diameter and speed where both scales are one.
      const speed = 1 / (Math.PI * (4 / Math.PI) ** 0.5);
      const diameter = (4 / Math.PI) ** 0.5;
      expect(flowCoefficientFromFlow(point.flow, diameter, speed)).toBeCloseTo(point.flow, 12);
      expect(fanPressureFromFlow(curve, diameter, speed, 2, point.flow)).toBeCloseTo(point.pressure, 10);
      expect(fanShaftPowerFromFlow(curve, diameter, speed, 2, point.flow)).toBeCloseTo(point.power, 10);
    }
    expect(curve.bestEfficiency).toBeCloseTo(0.74, 2);
    expect(curve.smallestFlow).toBe(points[0]!.flow);
    expect(curve.largestFlow).toBe(points[points.length - 1]!.flow);
  });

  it.each([
    ["a single point", points.slice(0, 1), /four or more/],
    ["flow that does not rise", [points[1]!, points[0]!, ...points.slice(2)], /flow must rise/],
    ["negative power", points.map((point, i) => (i === 3 ? { ...point, power: -1 } : point)), /point 4: shaft power/],
    ["negative pressure", points.map((point, i) => (i === 2 ? { ...point, pressure: -0.1 } : point)), /point 3/],
    ["wrong units of power", points.map((point) => ({ ...point, power: point.power / 1.341 / 1.2 })), /units/],
    [
      "a curve that one system crosses twice",
      points.map((point, i) => (i === 4 ? { ...point, pressure: 1.2, power: 0.4 } : point)),
      /cross the curve twice/,
    ],
    [
      "pressure that never falls",
      points.slice(0, 4).map((point) => ({ ...point, pressure: 0.5, power: 0.3 })),
      /must fall/,
    ],
  ])("refuse %s", (_, bad, message) => {
    expect(() => fanCurveFromPoints(bad, 0, 10)).toThrow(message);
  });
});
