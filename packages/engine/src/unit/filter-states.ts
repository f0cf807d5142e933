import type { Condition } from "#duty/condition";
import { pressureLedger } from "./ledger.ts";
import { createUnitRating, rateUnit } from "./rate-unit.ts";
import type { Unit } from "./unit.ts";

/** What the unit costs the fan with its filters loaded so far, everything else as a condition has it. */
export interface FilterState {
  /** 0 clean … 1 at change-out. */
  readonly filterLoading: number;
  readonly solved: boolean;
  /** Pa of total pressure lost in each section, in airflow order; of the fan's its inlet and outlet. */
  readonly sections: readonly { readonly section: string; readonly loss: number }[];
  readonly losses: number;
  readonly fanTotal: number;
  readonly fanStatic: number;
  /** rev/s, W from the mains, m³/s of standard air that leaves the unit. */
  readonly fanSpeed: number;
  readonly electricPower: number;
  readonly standardAirflow: number;
}

/** The unit with filters clean, half loaded and at change-out, solved anew each time: to be read side by side. */
export function filterStates(unit: Unit, condition: Condition): readonly FilterState[] {
  const rating = createUnitRating(unit, condition);
  return [0, 0.5, 1].map((filterLoading): FilterState => {
    rateUnit(unit, { ...condition, filterLoading }, rating);
    const { lines, losses, fanTotal, fanStatic } = pressureLedger(unit, rating);
    const lossIn = (section: string) =>
      lines
        .filter((line) => line.section === section && line.isBeside === undefined && line.isFan === undefined)
        .reduce((sum, line) => sum + line.pressure, 0);
    return {
      filterLoading,
      solved: rating.solved,
      sections: unit.sections.map(({ name }) => ({ section: name, loss: lossIn(name) })),
      losses,
      fanTotal,
      fanStatic,
      fanSpeed: rating.operation.fanSpeed,
      electricPower: rating.fanElectricPower,
      standardAirflow: rating.supplyStandardAirflow,
    };
  });
}
