import { saturationHumidityRatio } from "#fluid/saturation";
import type { UnitSystem } from "#quantity/kind";
import { displayUnit, printQuantity } from "#quantity/print";
import type { DisplayItem, DisplayList, Ink } from "#section/display";
import type { AirPath } from "./air-path.ts";
import { circle, line, words } from "./items.ts";
import { LabelRoom, placesAround } from "./label-room.ts";
import { isShown, pointsInside, samples } from "./psychrometric-curve.ts";
import { type ChartState, type PsychrometricFrame, psychrometricFrame } from "./psychrometric-frame.ts";
import {
  enthalpyScale,
  relativeHumidityCurves,
  saturationCurve,
  squareGrid,
  volumeLines,
  wetBulbLines,
} from "./psychrometric-grid.ts";

/** What a psychrometric chart shows. */
export interface PsychrometricChartOptions {
  /** Pa absolute at the site. */
  readonly pressure: number;
  readonly system: UnitSystem;
  readonly paths: readonly AirPath[];
  /** Key of the path that is drawn strong, with its states named. */
  readonly picked: string | undefined;
  /** pt. */
  readonly width: number;
  readonly height: number;
}

/** The chart, with the plane it stands on. */
export interface PsychrometricList extends DisplayList {
  readonly frame: PsychrometricFrame;
}

/** A psychrometric chart at the pressure of the site, with the air path of every condition given. */
export function psychrometricChart(options: PsychrometricChartOptions): PsychrometricList {
  const { pressure, system, paths, picked, width, height } = options;
  const states = paths.flatMap((path) => path.states);
  const frame = psychrometricFrame(pressure, system, states, { width, height });
  const others = paths.filter((path) => path.key !== picked);
  const strong = paths.filter((path) => path.key === picked);
  const curves = relativeHumidityCurves(frame);
  const enthalpies = enthalpyScale(frame);
  return {
    title: `Psychrometric chart at ${printQuantity(pressure, "absolutePressure", system)}`,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height },
    frame,
    items: [
      ...squareGrid(frame),
      ...volumeLines(frame),
      ...wetBulbLines(frame),
      ...curves,
      saturationCurve(frame),
      ...enthalpies,
      ...scaleNames(frame),
      ...others.map((path) => pathLine(frame, path, false)),
      ...strong.flatMap((path) => [
        pathLine(frame, path, true),
        ...pathStates(frame, path, [...curves, ...enthalpies]),
      ]),
    ],
  };
}

function scaleNames(frame: PsychrometricFrame): readonly DisplayItem[] {
  const { system } = frame;
  const middle = (frame.left + frame.right) / 2;
  const dryBulb = `dry bulb, ${displayUnit("temperature", system)}`;
  const ratio = displayUnit("humidityRatio", system);
  const enthalpy = `enthalpy, ${displayUnit("enthalpy", system)}`;
  return [
    words("dry-bulb-name", "quiet", [middle, frame.bottom + 32], dryBulb, { size: "small", anchor: "middle" }),
    words("humidity-name", "quiet", [frame.right + 46, frame.top - 12], ratio, { size: "small", anchor: "end" }),
    words("enthalpy-name", "quiet", [frame.left, frame.top + 8], enthalpy, { size: "small" }),
  ];
}

/** What ink a path has: the picked one is what the hand chose, the others show their season. */
function inkOf(path: AirPath, strong: boolean): Ink {
  if (strong) return "choice";
  return path.season === "cooling" ? "water" : "heat";
}

/** The path, as far as it lies on the chart. */
function pathLine(frame: PsychrometricFrame, path: AirPath, strong: boolean): DisplayItem {
  const states = path.states.flatMap((state, index) => {
    const before = path.states[index - 1];
    return before === undefined ? [state] : between(frame.pressure, before, state);
  });
  const options = strong ? { label: path.name } : { label: path.name, dash: "long" as const };
  return line(`path-${path.key}`, inkOf(path, strong), pointsInside(frame, states), options);
}

/**
 * From one state to the next: straight, as mixing and a constant surface temperature would go, and along saturation
 * wherever the straight way would leave the states that air can have.
 */
function between(pressure: number, from: ChartState, to: ChartState): readonly ChartState[] {
  return samples(0, 1, 24)
    .slice(1)
    .map((share) => {
      const dryBulb = from.dryBulb + share * (to.dryBulb - from.dryBulb);
      const straight = from.humidityRatio + share * (to.humidityRatio - from.humidityRatio);
      const most = share === 1 ? straight : saturationHumidityRatio(dryBulb, pressure);
      return { dryBulb, humidityRatio: Math.min(straight, most) };
    });
}

/** The states of a path with their names, which keep off the figures that stand there already. */
function pathStates(
  frame: PsychrometricFrame,
  path: AirPath,
  standing: readonly DisplayItem[],
): readonly DisplayItem[] {
  const room = new LabelRoom();
  for (const item of standing) if (item.shape === "text") room.takeText(item);
  const shown = path.states.filter((state) => isShown(frame, state));
  for (const state of shown) {
    const [x, y] = onPage(frame, state);
    room.take(x - 4, y - 4, x + 4, y + 4);
  }
  return shown.flatMap((state, index) => {
    const [x, y] = onPage(frame, state);
    const place = room.place(x, y, state.name, "normal", placesAround);
    const reference = state.section === undefined ? {} : { section: state.section };
    const label = `${state.name}: ${printQuantity(state.dryBulb, "temperature", frame.system)}, ${printQuantity(state.humidityRatio, "humidityRatio", frame.system)}`;
    return [
      circle(`state-${index}`, "choice", [x, y], 4, { fill: "paper", label, reference }),
      words(`state-${index}-name`, "strong", [x + place.dx, y + place.dy], state.name, {
        anchor: place.anchor,
        reference,
      }),
    ];
  });
}

function onPage(frame: PsychrometricFrame, state: ChartState): readonly [number, number] {
  return [frame.x(state.dryBulb), frame.y(state.humidityRatio)];
}
