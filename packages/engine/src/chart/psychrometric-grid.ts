import {
  dryBulbFromEnthalpy,
  enthalpyFromHumidityRatio,
  humidityRatioFromRelativeHumidity,
  specificVolume,
} from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { humidityRatioFromWetBulb } from "#fluid/wet-bulb";
import { findRoot } from "#numerics/find-root";
import type { DisplayItem, Ink } from "#section/display";
import { line, words } from "./items.ts";
import { pointsInside, samples } from "./psychrometric-curve.ts";
import { type ChartState, niceValues, type PsychrometricFrame } from "./psychrometric-frame.ts";
import { niceStep } from "./ticks.ts";

/** The curves of constant relative humidity, 10 % to 90 %, each with its figure. */
export function relativeHumidityCurves(frame: PsychrometricFrame): readonly DisplayItem[] {
  const items: DisplayItem[] = [];
  for (let percent = 10; percent < 100; percent += 10) {
    const states = dryBulbSamples(frame).map((dryBulb) => ({
      dryBulb,
      humidityRatio: humidityRatioFromRelativeHumidity(dryBulb, percent / 100, frame.pressure),
    }));
    const label = `relative humidity ${percent} %`;
    items.push(line(`relative-humidity-${percent}`, "hairline", pointsInside(frame, states), { label }));
    const end = lastInside(frame, states);
    if (end !== undefined && percent % 20 === 0 && frame.y(end.humidityRatio) > frame.top + 8) {
      const at = [frame.x(end.dryBulb) - 4, frame.y(end.humidityRatio) + 10] as const;
      items.push(words(`relative-humidity-${percent}-figure`, "quiet", at, `${percent} %`, small("end")));
    }
  }
  return items;
}

/** The saturation curve. */
export function saturationCurve(frame: PsychrometricFrame): DisplayItem {
  const states = dryBulbSamples(frame).map((dryBulb) => ({
    dryBulb,
    humidityRatio: saturationHumidityRatio(dryBulb, frame.pressure),
  }));
  return line("saturation", "outline", pointsInside(frame, states), { label: "saturation" });
}

/** Lines of constant wet bulb, from saturation down to dry air or the warm edge. */
export function wetBulbLines(frame: PsychrometricFrame): readonly DisplayItem[] {
  const { pressure, system } = frame;
  const step = frame.dryBulbs.step / (frame.dryBulbs.step >= 10 ? 2 : 1);
  return niceValues("temperature", system, frame.coldest, frame.warmest, step).flatMap(({ reading, value }) => {
    // Below this the line is a short stroke along the foot of the chart and only darkens it.
    if (saturationHumidityRatio(value, pressure) < frame.wettest / 40) return [];
    const states = samples(value, frame.warmest, 24).map((dryBulb) => ({
      dryBulb,
      humidityRatio: humidityRatioFromWetBulb(dryBulb, value, pressure),
    }));
    const points = pointsInside(frame, states);
    if (points.length < 4) return [];
    return [line(`wet-bulb-${reading}`, "hairline", points, { dash: "long", label: `wet bulb ${reading}°` })];
  });
}

/** Lines of constant specific volume of dry air, with their figures at the foot. */
export function volumeLines(frame: PsychrometricFrame): readonly DisplayItem[] {
  const { pressure, system } = frame;
  const low = specificVolume(frame.coldest, 0, pressure);
  const high = specificVolume(frame.warmest, frame.wettest, pressure);
  const step = system === "ip" ? 0.5 : 0.02;
  return niceValues("specificVolume", system, low, high, step).flatMap(({ reading, value }) => {
    const states = samples(0, frame.wettest, 16).map((humidityRatio) => ({
      dryBulb: dryBulbOfVolume(frame, value, humidityRatio),
      humidityRatio,
    }));
    const moist = states.filter((state) => state.humidityRatio <= saturationHumidityRatio(state.dryBulb, pressure));
    const points = pointsInside(frame, moist);
    if (points.length < 4) return [];
    const unit = system === "ip" ? "ft³/lb" : "m³/kg";
    const text = system === "ip" ? reading.toFixed(1) : reading.toFixed(2);
    const [x = 0, y = 0, x2 = 0, y2 = 0] = points;
    const turn = (Math.atan2(y - y2, x2 - x) * 180) / Math.PI;
    const curve = line(`volume-${reading}`, "hairline", points, {
      dash: "short",
      label: `specific volume ${text} ${unit}`,
    });
    if (y < frame.top + 40) return [curve];
    return [curve, words(`volume-${reading}-figure`, "quiet", [x + 3, y - 5], text, { ...small("start"), turn })];
  });
}

/** The oblique scale of enthalpy outside the saturation curve: ticks along lines of constant enthalpy. */
export function enthalpyScale(frame: PsychrometricFrame): readonly DisplayItem[] {
  const { pressure, system } = frame;
  const low = enthalpyFromHumidityRatio(frame.coldest, saturationHumidityRatio(frame.coldest, pressure));
  const high = enthalpyFromHumidityRatio(frame.warmest, frame.wettest);
  const step = system === "ip" ? 5 : 10;
  return niceValues("enthalpy", system, low, high, step).flatMap(({ reading, value }) => {
    const foot = saturatedState(frame, value);
    if (foot === undefined) return [];
    // The direction of constant enthalpy on the page, upwards to the left.
    const drier = { humidityRatio: foot.humidityRatio * 0.9, dryBulb: 0 };
    drier.dryBulb = dryBulbFromEnthalpy(value, drier.humidityRatio);
    const [x, y] = [frame.x(foot.dryBulb), frame.y(foot.humidityRatio)];
    const [dx, dy] = [x - frame.x(drier.dryBulb), y - frame.y(drier.humidityRatio)];
    const length = Math.hypot(dx, dy);
    const along = (distance: number) => [x + (dx / length) * distance, y + (dy / length) * distance] as const;
    const [from, to, figure] = [along(4), along(10), along(13)];
    const unit = system === "ip" ? "Btu/lb" : "kJ/kg";
    return [
      line(`enthalpy-${reading}`, "quiet", [...from, ...to], { label: `enthalpy ${reading} ${unit}` }),
      words(`enthalpy-${reading}-figure`, "quiet", figure, String(reading), small("end")),
    ];
  });
}

/** Isotherms and lines of constant humidity ratio, with the two scales. */
export function squareGrid(frame: PsychrometricFrame): readonly DisplayItem[] {
  const { pressure, system } = frame;
  const dryBulbs = niceValues("temperature", system, frame.coldest, frame.warmest, frame.dryBulbs.step);
  const isotherms = dryBulbs.flatMap(({ reading, value }) => {
    const x = frame.x(value);
    const top = frame.y(Math.min(saturationHumidityRatio(value, pressure), frame.wettest));
    return [
      line(`dry-bulb-${reading}`, "hairline", [x, frame.bottom, x, top], { label: `dry bulb ${reading}°` }),
      words(`dry-bulb-${reading}-figure`, "quiet", [x, frame.bottom + 15], minus(reading), small("middle")),
    ];
  });
  const step = niceStep(frame.humidityRatios.high, 8);
  const ratios = niceValues("humidityRatio", system, 0, frame.wettest, step).flatMap(({ reading, value }) => {
    const y = frame.y(value);
    const from = value === 0 ? frame.left : Math.max(frame.left, frame.x(saturatedDryBulb(frame, value)));
    const ink: Ink = value === 0 ? "outline" : "hairline";
    return [
      line(`humidity-${reading}`, ink, [from, y, frame.right, y], { label: `humidity ratio ${reading}` }),
      words(`humidity-${reading}-figure`, "quiet", [frame.right + 7, y + 4], minus(reading), small("start")),
    ];
  });
  return [...isotherms, ...ratios];
}

/** °C at which air of this humidity ratio is saturated, not below the chart's cold edge. */
export function saturatedDryBulb(frame: PsychrometricFrame, humidityRatio: number): number {
  if (saturationHumidityRatio(frame.coldest, frame.pressure) >= humidityRatio) return frame.coldest;
  const excess = (dryBulb: number) => saturationHumidityRatio(dryBulb, frame.pressure) - humidityRatio;
  return findRoot(excess, frame.coldest, frame.warmest + 40, 1e-6);
}

function saturatedState(frame: PsychrometricFrame, enthalpy: number): ChartState | undefined {
  const enthalpyAt = (dryBulb: number) =>
    enthalpyFromHumidityRatio(dryBulb, saturationHumidityRatio(dryBulb, frame.pressure));
  if (enthalpyAt(frame.coldest) > enthalpy || enthalpyAt(frame.warmest) < enthalpy) return undefined;
  const dryBulb = findRoot((each) => enthalpyAt(each) - enthalpy, frame.coldest, frame.warmest, 1e-6);
  const humidityRatio = saturationHumidityRatio(dryBulb, frame.pressure);
  return humidityRatio > frame.wettest ? undefined : { dryBulb, humidityRatio };
}

/** °C; specific volume grows with temperature, and within this bracket every line of the chart is met. */
function dryBulbOfVolume({ coldest, warmest, pressure }: PsychrometricFrame, volume: number, ratio: number): number {
  const excess = (dryBulb: number) => specificVolume(dryBulb, ratio, pressure) - volume;
  return findRoot(excess, Math.max(-99, coldest - 60), warmest + 60, 1e-6);
}

function dryBulbSamples(frame: PsychrometricFrame): readonly number[] {
  return samples(frame.coldest, frame.warmest, 96);
}

function lastInside(frame: PsychrometricFrame, states: readonly ChartState[]): ChartState | undefined {
  return states.findLast((state) => state.humidityRatio <= frame.wettest);
}

function small(anchor: "start" | "middle" | "end") {
  return { size: "small", anchor } as const;
}

function minus(reading: number): string {
  return String(reading).replace("-", "−");
}
