import { describe, expect, it } from "vitest";
import { fanPressureFromFlow, fanShaftPowerFromFlow } from "#component/fan-performance";
import type { CircleItem, LineItem } from "#section/display";
import { fanFields } from "#section/fan/fields";
import { fan } from "#section/fan/kind";
import { valuesOfText } from "#section/shipped.test-data";
import { fanChart } from "./fan-chart.ts";
import type { FanChartPoint } from "./fan-system.ts";
import { listText } from "./sample-unit.test-data.ts";

const design = fan.prepare(valuesOfText(fanFields, "diameter: 30 in\nmotor power: 20 hp"), {
  width: 3,
  height: 2.6,
  hand: "right",
});
const { curve } = design.wheel;

function pointAt(key: string, flow: number, speed: number, density: number): FanChartPoint {
  const staticPressure = fanPressureFromFlow(curve, design.diameter, speed, density, flow);
  const shaftPower = fanShaftPowerFromFlow(curve, design.diameter, speed, density, flow);
  return { key, name: `the ${key} point`, flow, staticPressure, shaftPower, density, speed };
}

const points = [pointAt("dense", 9, 20, 1.32), pointAt("picked", 9, 21, 1.2), pointAt("low", 5, 13, 1.18)];
const systems = ["filters clean", "half loaded", "at change-out"].map((words, index) => ({
  words,
  points: [2, 5, 9, 11].map((flow) => ({
    ...pointAt("system", flow, 20, 1.2),
    staticPressure: 60 + (8 + index) * flow * flow,
  })),
}));
const options = { design, section: "fan", points, systems, picked: "picked", width: 560, height: 600 } as const;

describe.each(["ip", "si"] as const)("fan chart in %s", (system) => {
  const list = fanChart({ ...options, system });
  const item = (key: string) => {
    const found = list.items.find((each) => each.key === key);
    expect(found, key).toBeDefined();
    return found!;
  };
  /** The way back from the page: m³/s and the value in SI. */
  const valuesOf = (panel: keyof typeof list.panels, x: number, y: number) => {
    const { axis, most, top, bottom } = list.panels[panel];
    return [((x - axis.left) / (axis.right - axis.left)) * axis.most, ((bottom - y) / (bottom - top)) * most] as const;
  };

  it("has its curves where the laws of density, speed and size put them", () => {
    for (const [key, panel] of [
      ["speed-picked", "pressure"],
      ["power-picked", "power"],
    ] as const) {
      const curvePoints = (item(key) as LineItem).points;
      expect(curvePoints.length).toBeGreaterThan(80);
      for (let index = 0; index < curvePoints.length; index += 2) {
        const [flow, value] = valuesOf(panel, curvePoints[index]!, curvePoints[index + 1]!);
        // φ, ψ and λ by their definitions, read from the wheel's own table.
        const tip = Math.PI * design.diameter * 21;
        const expected = pointAt("", flow, 21, 1.2);
        expect(value / (0.5 * 1.2 * tip * tip)).toBeCloseTo(
          (panel === "pressure" ? expected.staticPressure : expected.shaftPower) / (0.5 * 1.2 * tip * tip),
          6,
        );
      }
    }
  });

  it("brings points of other densities onto the line of their own speed", () => {
    for (const { key, flow, speed } of points) {
      const { x, y } = item(`pressure-at-${key}`) as CircleItem;
      const [shownFlow, shown] = valuesOf("pressure", x, y);
      expect(shownFlow).toBeCloseTo(flow, 9);
      expect(shown).toBeCloseTo(fanPressureFromFlow(curve, design.diameter, speed, 1.2, flow), 6);
      const power = item(`power-at-${key}`) as CircleItem;
      expect(valuesOf("power", power.x, power.y)[1]).toBeCloseTo(
        fanShaftPowerFromFlow(curve, design.diameter, speed, 1.2, flow),
        4,
      );
    }
  });

  it("ends the region that may surge at the flow at which every speed's curve has its smallest steady flow", () => {
    const { points: limit } = item("unsteady-limit") as LineItem;
    for (let index = 2; index < limit.length; index += 2) {
      const [flow, pressure] = valuesOf("pressure", limit[index]!, limit[index + 1]!);
      const speed = (4 * flow) / (Math.PI * design.diameter ** 2) / (curve.stableFlow * Math.PI * design.diameter);
      const onCurve = fanPressureFromFlow(curve, design.diameter, speed, 1.2, flow);
      if (onCurve < list.panels.pressure.most) expect(pressure).toBeCloseTo(onCurve, 5);
    }
  });

  it("keeps all that is drawn within its box", () => {
    for (const each of list.items) {
      if (each.shape !== "line") continue;
      for (let index = 0; index < each.points.length; index += 2) {
        expect(each.points[index], each.key).toBeLessThanOrEqual(list.box.width);
        expect(each.points[index], each.key).toBeGreaterThanOrEqual(0);
        expect(each.points[index + 1], each.key).toBeGreaterThanOrEqual(list.panels.pressure.top - 1e-6);
        expect(each.points[index + 1], each.key).toBeLessThanOrEqual(list.panels.efficiency.bottom + 1e-6);
      }
    }
  });
});

describe("fan chart", () => {
  it("stays as it was drawn", async () => {
    await expect(listText(fanChart({ ...options, system: "ip" }))).toMatchFileSnapshot("./fan-chart.list.txt");
  });

  it("has nothing to draw when the fan stands at every condition", () => {
    expect(() => fanChart({ ...options, system: "si", points: [] })).toThrow("stands at every condition");
  });
});
