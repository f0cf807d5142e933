import { saturationHumidityRatio } from "#fluid/saturation";
import type { QuantityKind, UnitSystem } from "#quantity/kind";
import { fromDisplay, toDisplay } from "#quantity/print";
import { type NiceRange, niceRange } from "./ticks.ts";

/** The plane of a psychrometric chart: dry bulb to the right, humidity ratio upwards, in points with y down. */
export interface PsychrometricFrame {
  readonly pressure: number;
  readonly system: UnitSystem;
  /** °C and kg/kg at the corners. */
  readonly coldest: number;
  readonly warmest: number;
  readonly wettest: number;
  /** In the units of the system. */
  readonly dryBulbs: NiceRange;
  readonly humidityRatios: NiceRange;
  /** pt, of the plane inside its scales. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly x: (dryBulb: number) => number;
  readonly y: (humidityRatio: number) => number;
}

/** A state on the chart. */
export interface ChartState {
  /** °C. */
  readonly dryBulb: number;
  /** kg/kg. */
  readonly humidityRatio: number;
}

/** Room for the scales around the plane, pt. */
const margins = { left: 30, top: 24, right: 50, bottom: 40 } as const;

/** The plane that holds all states with some room around them, at the pressure (Pa absolute) of the site. */
export function psychrometricFrame(
  pressure: number,
  system: UnitSystem,
  states: readonly ChartState[],
  size: { readonly width: number; readonly height: number },
): PsychrometricFrame {
  const dryBulbs = dryBulbRange(system, states);
  const coldest = fromDisplay(dryBulbs.low, "temperature", system);
  const warmest = fromDisplay(dryBulbs.high, "temperature", system);
  const humidityRatios = humidityRange(pressure, system, states, warmest);
  const wettest = fromDisplay(humidityRatios.high, "humidityRatio", system);
  const left = margins.left;
  const top = margins.top;
  const right = size.width - margins.right;
  const bottom = size.height - margins.bottom;
  return {
    pressure,
    system,
    coldest,
    warmest,
    wettest,
    dryBulbs,
    humidityRatios,
    left,
    top,
    right,
    bottom,
    x: (dryBulb) => left + ((dryBulb - coldest) / (warmest - coldest)) * (right - left),
    y: (humidityRatio) => bottom - (humidityRatio / wettest) * (bottom - top),
  };
}

/** Values of a quantity at nice ticks, both as read on the scale and in SI. */
export function niceValues(
  kind: QuantityKind,
  system: UnitSystem,
  low: number,
  high: number,
  step: number,
): readonly { readonly reading: number; readonly value: number }[] {
  const first = Math.ceil(toDisplay(low, kind, system) / step - 1e-9);
  const last = Math.floor(toDisplay(high, kind, system) / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const reading = Number(((first + index) * step).toPrecision(12));
    return { reading, value: fromDisplay(reading, kind, system) };
  });
}

/** °C: states beyond these, such as the air in a steam coil when the fan stands still, do not stretch the chart. */
const shown = { coldest: -50, warmest: 52 } as const;

/** At least 35…105 °F (0…40 °C), so that charts of different jobs look alike. */
function dryBulbRange(system: UnitSystem, states: readonly ChartState[]): NiceRange {
  const usual = system === "ip" ? [35, 105] : [0, 40];
  const readings = states
    .filter((state) => state.dryBulb >= shown.coldest && state.dryBulb <= shown.warmest)
    .map((state) => toDisplay(state.dryBulb, "temperature", system));
  const low = Math.min(usual[0]!, ...readings.map((reading) => reading - 2));
  const high = Math.max(usual[1]!, ...readings.map((reading) => reading + 4));
  return niceRange(low, high, 10, 1);
}

/** Up to the wettest state with a fifth to spare; never above what the warmest air can hold. */
function humidityRange(
  pressure: number,
  system: UnitSystem,
  states: readonly ChartState[],
  warmest: number,
): NiceRange {
  const inside = states.filter((state) => state.dryBulb <= warmest);
  const wettest = Math.max(0.0125, ...inside.map((state) => state.humidityRatio * 1.18));
  const most = Math.min(wettest, saturationHumidityRatio(warmest, pressure));
  return niceRange(0, toDisplay(most, "humidityRatio", system), 6, 1e-3);
}
