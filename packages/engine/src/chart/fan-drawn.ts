import { fanPressureFromFlow, fanShaftPowerFromFlow, flowFromFlowCoefficient } from "#component/fan-performance";
import { printQuantity, toDisplay } from "#quantity/print";
import type { FanDesign } from "#section/fan/design";
import { type FanPanel, flowPoint, valuePoint } from "./fan-panel.ts";
import type { FanChartPoint } from "./fan-system.ts";

/** The three panels of a fan chart, from above. */
export interface FanPanels {
  readonly pressure: FanPanel;
  readonly power: FanPanel;
  readonly efficiency: FanPanel;
}

/** All that the parts of the chart draw from. */
export interface Drawn {
  readonly design: FanDesign;
  readonly section: string;
  readonly density: number;
  readonly panels: FanPanels;
  /** rev/s: lines, the strong one, and where the fan may not go. */
  readonly speeds: readonly number[];
  readonly speed: number;
  readonly limit: number;
}

/** The point at another density and the same speed. */
export function atDensity(point: FanChartPoint, density: number): FanChartPoint {
  const share = density / point.density;
  return { ...point, density, staticPressure: share * point.staticPressure, shaftPower: share * point.shaftPower };
}

/** Points of a curve from no flow to the end of the axis or `most`, whichever comes first. */
export function curvePoints(panel: FanPanel, most: number, value: (flow: number) => number): number[] {
  const end = Math.min(most, panel.axis.most);
  const steps = 60;
  return Array.from({ length: steps + 1 }, (_, index) => (end * index) / steps).flatMap((flow) => [
    flowPoint(panel.axis, flow),
    valuePoint(panel, value(flow)),
  ]);
}

/** m³/s at which no static pressure is left. */
export function freeFlowAt({ design }: Drawn, speed: number): number {
  return flowFromFlowCoefficient(design.wheel.curve.freeFlow, design.diameter, speed);
}

/** Pa of static pressure, not below 0. */
export function pressureAt({ design, density }: Drawn, speed: number, flow: number): number {
  return Math.max(0, fanPressureFromFlow(design.wheel.curve, design.diameter, speed, density, flow));
}

/** W at the shaft. */
export function powerAt({ design, density }: Drawn, speed: number, flow: number): number {
  return fanShaftPowerFromFlow(design.wheel.curve, design.diameter, speed, density, flow);
}

/** A speed as it is said. */
export function speedText({ panels }: Drawn, speed: number): string {
  return printQuantity(speed, "rotationalSpeed", panels.pressure.axis.system);
}

/** A speed as part of a key. */
export function speedKey({ panels }: Drawn, speed: number): string {
  return toDisplay(speed, "rotationalSpeed", panels.pressure.axis.system).toFixed(0);
}
