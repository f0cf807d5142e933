import { scaledFanCurve } from "#component/fan-curve";
import type { FanWheel } from "#component/fan-wheel";
import type { FinnedSurface } from "#component/finned-surface/family";
import type { Duty } from "#duty/duty";
import type { Reset } from "#duty/schedule";
import { normalQuantile } from "#numerics/normal-quantile";
import { judgeBefore } from "#rule/judge";
import { assembleUnit } from "#unit/assemble";
import type { Unit } from "#unit/unit";
import { planYear, type YearPlan } from "./plan.ts";

/** Something of which nobody knows exactly how it will be, and how far it may be off. */
export interface Tolerance {
  readonly key: string;
  readonly name: string;
  /** How it is spread, for a person. */
  readonly spread: string;
  readonly source: string;
  /** The value drawn by a share 0…1 of its distribution. */
  readonly draw: (share: number) => number;
}

/** Normal, cut off at three deviations. */
const normal = (mean: number, deviation: number) => (share: number) =>
  mean + deviation * Math.max(-3, Math.min(3, normalQuantile(share)));
const even = (from: number, to: number) => (share: number) => from + share * (to - from);

/** What is drawn for every trial, in the order of the dimensions of the quasi-random points. */
export const tolerances = [
  {
    key: "coilHeat",
    name: "heat transfer of the fins",
    spread: "normal, ±10 % in 95 of 100",
    source: "common-practice",
    draw: normal(1, 0.05),
  },
  {
    key: "coilFriction",
    name: "air resistance of the coils",
    spread: "normal, ±15 % in 95 of 100",
    source: "common-practice",
    draw: normal(1, 0.075),
  },
  {
    key: "fanPressure",
    name: "pressure of the fan",
    spread: "even, −5 to +2.5 %",
    source: "common-practice",
    draw: even(0.95, 1.025),
  },
  {
    key: "fanPower",
    name: "shaft power of the fan",
    spread: "even, −2 to +5 %",
    source: "common-practice",
    draw: even(0.98, 1.05),
  },
  {
    key: "fouling",
    name: "fouling inside the tubes",
    spread: "even, from none to twice what the job says",
    source: "common-practice",
    draw: even(0, 2),
  },
  {
    key: "filters",
    name: "filters on 1 January",
    spread: "even, from clean to change-out",
    source: "definition",
    draw: even(0, 1),
  },
  {
    key: "chilledWater",
    name: "chilled-water supply",
    spread: "normal, ±1 K in 95 of 100",
    source: "common-practice",
    draw: normal(0, 0.5),
  },
  {
    key: "heating",
    name: "heating-water supply and steam pressure",
    spread: "normal, ±4 K and ±15 % in 95 of 100",
    source: "common-practice",
    draw: normal(0, 1),
  },
] as const satisfies readonly Tolerance[];

/** A value of each tolerance. */
export type Draw = Readonly<Record<(typeof tolerances)[number]["key"], number>>;

/** The values that a point of as many shares draws. */
export function drawOf(point: readonly number[]): Draw {
  return Object.fromEntries(tolerances.map(({ key, draw }, at) => [key, draw(point[at]!)])) as Draw;
}

/** The year of the unit as it may come out: the same hours, rules and schedule. */
export function planWithDraw(plan: YearPlan, draw: Draw): YearPlan {
  const unit = unitWithDraw(plan.unit, draw);
  const duty = dutyWithDraw(plan.duty, draw);
  const judge = plan.judge === undefined ? {} : { judge: judgeBefore(plan.judge, unit, duty) };
  return planYear({ unit, duty, weather: plan.weather, ...judge });
}

function unitWithDraw(unit: Unit, draw: Draw): Unit {
  const written = unit.sections.map(({ name, behaviour, values }) => {
    const { surface, wheel, foulingInside } = values as {
      readonly surface?: FinnedSurface;
      readonly wheel?: FanWheel;
      readonly foulingInside?: number;
    };
    const changed = {
      ...values,
      ...(surface === undefined ? {} : { surface: surfaceWithDraw(surface, draw) }),
      ...(wheel === undefined
        ? {}
        : { wheel: { ...wheel, curve: scaledFanCurve(wheel.curve, draw.fanPressure, draw.fanPower) } }),
      ...(foulingInside === undefined ? {} : { foulingInside: foulingInside * draw.fouling }),
    };
    return { name, kind: behaviour, values: changed };
  });
  const assembly = assembleUnit(unit.casing, written);
  if (assembly.unit === undefined)
    throw new Error(`a unit within its tolerances cannot be built: ${assembly.problems[0]!.problem}`);
  return assembly.unit;
}

function surfaceWithDraw(surface: FinnedSurface, { coilHeat, coilFriction }: Draw): FinnedSurface {
  return {
    ...surface,
    heatFactor: surface.heatFactor * coilHeat,
    frictionFactor: surface.frictionFactor * coilFriction,
  };
}

/** K of heating water, and share of steam pressure above the atmosphere, by a deviation. */
const heatingStep = { water: 2, steam: 0.075 } as const;

function dutyWithDraw(duty: Duty, draw: Draw): Duty {
  const { chilledWater, heatingWater, steam } = duty.utilities;
  const { chilledWaterReset, heatingWaterReset } = duty.schedule;
  const warmer = heatingStep.water * draw.heating;
  return {
    ...duty,
    schedule: {
      ...duty.schedule,
      filterLoadingAtStart: draw.filters,
      chilledWaterReset: shifted(chilledWaterReset, draw.chilledWater),
      heatingWaterReset: shifted(heatingWaterReset, warmer),
    },
    utilities: {
      ...duty.utilities,
      chilledWater: chilledWater && { ...chilledWater, supply: chilledWater.supply + draw.chilledWater },
      heatingWater: heatingWater && { ...heatingWater, supply: heatingWater.supply + warmer },
      steam: steam && { ...steam, pressureAtCoil: steam.pressureAtCoil * (1 + heatingStep.steam * draw.heating) },
    },
  };
}

function shifted(points: Reset | undefined, by: number): Reset | undefined {
  return points && { ...points, whenCold: points.whenCold + by, whenWarm: points.whenWarm + by };
}
