import type { Catalogue } from "#catalogue/read-catalogue";
import type { FanWheel } from "#component/fan-wheel";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { isChosenCoil, isRatedCoil } from "./choosable.ts";
import type { CoilTask } from "./coil-alternative.ts";
import type { LiquidCoilValues } from "./coil-choice.ts";
import type { CoilLimitValues } from "./coil-limits.ts";
import { coilTask } from "./coil-task.ts";
import type { FanLimitValues } from "./fan-limits.ts";
import type { FanTask } from "./fan-selection.ts";
import type { RatedCoilValues, SectionCoilTask } from "./section-alternatives.ts";
import { allCooling, allHeating, sectionCoilTask } from "./section-coil-task.ts";

/**
 * The search for other coils of a section at a solved condition: its own air, liquid and set point. Undefined where the
 * section is no coil with liquid, or where it has no work at that condition.
 */
export function coilSectionTask(
  unit: Unit,
  index: number,
  rating: UnitRating,
  limits: CoilLimitValues,
  catalogue: Catalogue,
): CoilTask | undefined {
  const section = unit.sections[index];
  const record = rating.sections[index];
  if (section === undefined || record === undefined || !isChosenCoil(section.kind)) return undefined;
  const { operation, condition } = rating;
  const cools = section.kind === "chilled-water coil";
  const supply = cools ? condition.utilities.chilledWater : condition.utilities.heatingWater;
  const wanted = cools ? operation.coolingLeaving : operation.heatingLeaving;
  if (supply === undefined || wanted === undefined || record.heatToAir === 0) return undefined;
  const values = { ...section.values, kind: section.kind } as unknown as LiquidCoilValues;
  return coilTask({ values, frame: unit.frame, air: () => record.entering, supply, wanted, limits }, catalogue);
}

/**
 * The search for other coils on steam, or of a loop, at a solved condition. A loop is to give what the present one gives, a
 * coil on steam what the controls ask. Undefined where the section is no such coil, or has no work at that condition.
 */
export function ratedCoilSectionTask(
  unit: Unit,
  index: number,
  rating: UnitRating,
  limits: CoilLimitValues,
  catalogue: Catalogue,
): SectionCoilTask | undefined {
  const section = unit.sections[index];
  const record = rating.sections[index];
  if (section === undefined || record === undefined || !isRatedCoil(section.kind)) return undefined;
  if (record.heatToAir === 0) return undefined;
  const { operation, condition } = rating;
  const heats = record.heatToAir > 0;
  const at = (leaving: number | undefined) => ({
    condition,
    operation: heats
      ? { ...operation, heatingLeaving: leaving ?? allHeating }
      : { ...operation, coolingLeaving: leaving ?? allCooling },
  });
  const values = { ...section.values, kind: section.kind } as unknown as RatedCoilValues;
  const wanted = section.kind === "recovery coil" ? undefined : operation.heatingLeaving;
  return sectionCoilTask({ values, frame: unit.frame, air: () => record.entering, at, wanted, limits }, catalogue);
}

/** The search for other fans of a section at a solved condition; undefined where the fan stands. */
export function fanSectionTask(
  unit: Unit,
  index: number,
  rating: UnitRating,
  limits: FanLimitValues,
  catalogue: Catalogue,
): FanTask | undefined {
  const record = rating.sections[index] as FanSectionRating | undefined;
  if (record === undefined || !(record.fanSpeed > 0)) return undefined;
  const { fewestFans, mostFans, drive, pressureToPeak } = limits;
  return {
    frame: unit.frame,
    air: record.entering,
    at: { condition: rating.condition, operation: rating.operation },
    rise: record.totalPressureRise,
    values: unit.sections[index]!.design as FanDesign,
    wheels: catalogue.names("fan wheel").map((name) => catalogue.component("fan wheel", name) as FanWheel),
    counts: Array.from({ length: mostFans - fewestFans + 1 }, (_, k) => fewestFans + k),
    drives: drive === "either" ? ["belt", "direct"] : [drive],
    pressureToPeak,
  };
}
