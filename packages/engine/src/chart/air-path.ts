import type { Air } from "#section/air";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import type { ChartState } from "./psychrometric-frame.ts";

/** A state on an air path, with the words for it and the section that the air leaves there. */
export interface NamedState extends ChartState {
  readonly name: string;
  readonly section: string | undefined;
}

/** The way of the air through a unit at one condition, from outdoors to supply. */
export interface AirPath {
  readonly key: string;
  readonly name: string;
  readonly season: "cooling" | "heating";
  readonly states: readonly NamedState[];
}

/** Changes smaller than these are not worth a point on a chart: 0.15 K, 0.05 g/kg. */
const leastChange = { dryBulb: 0.15, humidityRatio: 5e-5 } as const;

/** The air path of a rating; sections that do not change the state leave no point. */
export function airPath(unit: Unit, rating: UnitRating): AirPath {
  const states: NamedState[] = [named("outside air", undefined, rating.outdoors)];
  unit.sections.forEach((section, index) => {
    const record = rating.sections[index];
    if (record === undefined || !differs(record.leaving, states.at(-1)!)) return;
    const words = section.behaviour.role === "mixing" ? "mixed air" : `after ${section.name}`;
    states.push(named(words, section.name, record.leaving));
  });
  if (states.length === 1 || differs(rating.supply, states.at(-1)!)) {
    states.push(named("supply", undefined, rating.supply));
  }
  const { key, name, season } = rating.condition;
  return { key, name, season, states };
}

function named(name: string, section: string | undefined, air: Air): NamedState {
  return { name, section, dryBulb: air.dryBulb, humidityRatio: air.humidityRatio };
}

function differs(air: Air, state: ChartState): boolean {
  return (
    Math.abs(air.dryBulb - state.dryBulb) > leastChange.dryBulb ||
    Math.abs(air.humidityRatio - state.humidityRatio) > leastChange.humidityRatio
  );
}
