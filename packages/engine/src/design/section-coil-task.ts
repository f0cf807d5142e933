import type { Catalogue } from "#catalogue/read-catalogue";
import type { Air } from "#section/air";
import type { CoilBlock } from "#section/coil/block";
import type { Frame, SectionCondition } from "#section/contract";
import type { CoilLimitValues } from "./coil-limits.ts";
import { catalogueSurfaces, limitsOf, wholeFins, wholeRows } from "./coil-task.ts";
import type { RatedCoilValues, SectionCoilTask } from "./section-alternatives.ts";

/** What a coil on steam or of a loop is chosen for. */
export interface SectionCoilDuty {
  readonly values: RatedCoilValues;
  readonly frame: Frame;
  readonly air: (present: CoilBlock) => Air;
  /** The condition at a leaving dry bulb (all that the coil has when left out) and kg/s of the section's own dry air. */
  readonly at: (leaving: number | undefined, dryAirFlow: number) => SectionCondition;
  /** °C behind the coil; what the present coil reaches when left out. */
  readonly wanted: number | undefined;
  readonly limits: CoilLimitValues;
}

/** °C behind a coil that ask for all that it has. */
export const allCooling = -60;
export const allHeating = 300;

/** Most rows that a coil on steam, and one of a loop, is built with. */
const mostSteamRows = 4;
const mostLoopRows = 12;

/** The search for other ways to build a coil on steam or of a loop, over whole rows and whole fins per inch. */
export function sectionCoilTask(duty: SectionCoilDuty, catalogue: Catalogue): SectionCoilTask {
  const { values, limits, wanted } = duty;
  const onSteam = values.kind !== "recovery coil";
  return {
    values,
    frame: duty.frame,
    air: duty.air,
    at: duty.at,
    wanted,
    surfaces: limits.surfaces ?? catalogueSurfaces(catalogue, onSteam),
    rows: wholeRows(limits, onSteam ? mostSteamRows : mostLoopRows),
    fins: wholeFins(limits),
    limits: limitsOf(limits, values.length as number | undefined),
  };
}
