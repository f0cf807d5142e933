import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import type { FanDesign } from "@oncethrough/engine/section/fan/design";
import { fanElectrical } from "@oncethrough/engine/section/fan/electrical";
import { fanMechanics } from "@oncethrough/engine/section/fan/mechanics";
import type { FanSectionRating } from "@oncethrough/engine/section/fan/rate";
import { printFigure } from "./figures.ts";
import type { SoundJob } from "./sound-job.ts";

/** Drive and connection of the fans, in words and figures. */
export interface DriveFigures {
  readonly rows: readonly (readonly [name: string, value: string])[];
  /** What it rests on, and who decides. */
  readonly cautions: readonly string[];
}

/**
 * Drive and electrical connection of the section at `index` at a condition; undefined where it is no fan or its fans
 * stand. Sheaves are those for the fastest speed of all conditions known so far.
 */
export function driveFigures(
  { job, book }: SoundJob,
  index: number,
  key: string,
  system: UnitSystem,
): DriveFigures | undefined {
  const section = job.unit.sections[index];
  const rating = book.rating(key);
  if (section?.behaviour.role !== "fan" || rating?.solved !== true) return undefined;
  const design = section.design as FanDesign;
  const record = rating.sections[index] as FanSectionRating;
  const fastest = Math.max(record.fanSpeed, book.told?.fastest ?? 0);
  const mechanics = fanMechanics(design, record, fastest);
  if (mechanics === undefined) return undefined;
  const electrical = fanElectrical(design, record, job.duty.utilities.electricity.voltage);
  const say = (value: number, quantity: Parameters<typeof printFigure>[1]) => printFigure(value, quantity, system);
  const amperes = (value: number) => `${value.toFixed(1)} A`;
  const { belts, bearings, startedBy, startingTime } = mechanics;
  const start = startedBy === "line" ? "to speed on the line, about" : "ramp of the speed control, at least";
  return {
    rows: [
      ["each motor may give at this altitude and supply", say(electrical.allowedPower, "shaftPower")],
      ["service factor that counts", electrical.serviceFactor.toFixed(2)],
      [start, say(startingTime, "time")],
      ...beltRows(belts, say),
      ...bearingRows(bearings, say),
      [`full-load current at ${electrical.voltage.toFixed(0)} V, each`, amperes(electrical.fullLoadCurrent)],
      ["circuit ampacity, at least", amperes(electrical.minimumCircuitAmpacity)],
      ["overcurrent protection, at most", `${electrical.maximumOvercurrentProtection.toFixed(0)} A`],
      ["overload trip, at most, each", amperes(electrical.overloadTrip)],
    ],
    cautions: [`${electrical.caution} [${electrical.source}]`, `${mechanics.certainty} [${mechanics.source}]`],
  };
}

type Say = (value: number, quantity: "length" | "velocity" | "force") => string;
type Mechanics = NonNullable<ReturnType<typeof fanMechanics>>;

function beltRows(belts: Mechanics["belts"], say: Say): DriveFigures["rows"] {
  if (belts === undefined) return [];
  return [
    ["belts of section B", String(belts.count)],
    ["sheave on the motor", say(belts.motorSheave, "length")],
    ["sheave on the fan", say(belts.fanSheave, "length")],
    ["between the shafts", say(belts.centreDistance, "length")],
    ["rim speed", say(belts.beltSpeed, "velocity")],
    [`belts last ${belts.lastsLonger ? "more than" : "about"}`, hours(belts.life)],
  ];
}

function bearingRows(bearings: Mechanics["bearings"], say: Say): DriveFigures["rows"] {
  if (bearings === undefined) return [["bearings", "the motor's own"]];
  const { load, life, lifeWanted, ratingWanted } = bearings;
  return [
    ["on the bearing beside the sheave", say(load, "force")],
    life === undefined
      ? [`load rating for ${hours(lifeWanted)} (L10)`, say(ratingWanted, "force")]
      : [`bearing life (L10); ${hours(lifeWanted)} wanted`, hours(life)],
  ];
}

function hours(seconds: number): string {
  return `${Number((seconds / 3600).toPrecision(2)).toLocaleString("en-US")} h`;
}
