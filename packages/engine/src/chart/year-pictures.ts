import type { UnitSystem } from "#quantity/kind";
import type { DisplayList } from "#section/display";
import type { YearHours } from "#year/year-hours";
import type { YearReport } from "#year/year-report";
import { loadDuration } from "./load-duration.ts";
import { coilLoadCarpet, freezeMarginCarpet, leavingAirCarpet } from "./year-carpets.ts";
import { yearMonths } from "./year-months.ts";
import { yearStates } from "./year-states.ts";

/** A picture of a year, with the name under which it is kept. */
export interface YearPicture {
  readonly key: string;
  readonly list: DisplayList;
}

/** All pictures of a year, at a width in pt. */
export function yearPictures(
  year: YearHours,
  report: YearReport,
  system: UnitSystem,
  width: number,
): readonly YearPicture[] {
  const options = { year, system, width };
  return [
    { key: "leaving-air", list: leavingAirCarpet(options) },
    { key: "coil-load", list: coilLoadCarpet(options) },
    { key: "freeze-margin", list: freezeMarginCarpet(options) },
    { key: "load-duration", list: loadDuration(options, report) },
    { key: "states", list: yearStates(options) },
    { key: "months", list: yearMonths(report, { system, width }) },
  ];
}
