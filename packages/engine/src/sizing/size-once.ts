import type { Duty } from "#duty/duty";
import type { Problem } from "#form/problem";
import type { Job } from "#job/job";
import type { Bench } from "#mending/smallest-fix";
import type { Finding } from "#rule/finding";
import type { Frame } from "#section/contract";
import { type Attempt, sizeFor } from "./attempt.ts";
import { type CabinetChoice, cabinetChoices, largestCabinet } from "./cabinet.ts";
import { type Contradiction, contradictionsOf } from "./contradiction.ts";
import { type Draft, type FixedUnit, noUnitFixed } from "./draft.ts";
import { readDutyFile } from "./duty-file.ts";
import { chooseFirst } from "./first-choice.ts";
import { dutyContradictions, noCabinet } from "./misfit.ts";
import { openQuestions, type Question } from "./question.ts";
import { type Aims, relaxedLimitsOf, type SizeLimits, sizeLimitsOf } from "./size-limits.ts";
import { sectionTrain } from "./train.ts";
import type { Choice, Workroom } from "./workroom.ts";

/** A unit that holds its duty and keeps its owner's rules. */
export interface FoundUnit {
  readonly outcome: "unit";
  /** The complete job file. */
  readonly text: string;
  readonly job: Job;
  readonly choices: readonly Choice[];
  readonly questions: readonly Question[];
}

/** Why no unit was found for a duty. */
export type Failure =
  | { readonly outcome: "contradiction"; readonly duty: Duty; readonly contradictions: readonly Contradiction[] }
  | { readonly outcome: "no cabinet"; readonly duty: Duty; readonly misfit: Contradiction; readonly room: Room }
  | { readonly outcome: "no unit"; readonly duty: Duty; readonly nearest: Attempt; readonly room: Room };

/** The cross-section that the duty needs, as far as was seen; undefined where none that is built is large enough. */
export interface Room {
  readonly needed: Frame | undefined;
  /** m² of the largest one that site and road take. */
  readonly most: number;
}

/** What one search for a duty comes to. */
export type Once = FoundUnit | Failure | { readonly outcome: "not read"; readonly problems: readonly Problem[] };

/** What every search of one sizing is made with. */
export interface SizingBench extends Bench {
  readonly readings: Workroom["readings"];
}

/** Cross-sections looked at. */
const mostCabinets = 6;
/** Whole units solved for one set of limits. */
const mostSolved = 50;

/** Sizes without looking for other duties. */
export function sizeOnce(text: string, bench: SizingBench): Once {
  const { catalogue, profile } = bench;
  const { duty, fixed, defaults, problems } = readDutyFile(text, catalogue);
  if (duty === undefined) return { outcome: "not read", problems };
  const contradictions = [...contradictionsOf(duty), ...dutyContradictions(duty, profile)];
  if (contradictions.length > 0) return { outcome: "contradiction", duty, contradictions };
  const task = { text, duty, fixed, bench };
  let nearest: Attempt | undefined;
  let leastArea = 0;
  // What only advice asks gives way where nothing is found otherwise.
  for (const limits of [sizeLimitsOf(profile), relaxedLimitsOf(profile)]) {
    const { nearest: found, aims } = search(task, limits);
    leastArea = aims.leastArea;
    if (found?.obstacles.length === 0 && found.job !== undefined) {
      const questions = openQuestions(duty, defaults);
      return { outcome: "unit", text: found.text, job: found.job, choices: found.choices, questions };
    }
    if (found !== undefined) nearest = nearer(nearest, found);
    if (found !== undefined && !found.failing.some(isOfRoom)) break;
  }
  const room = roomOf(task, { ...relaxedLimitsOf(profile), leastArea });
  if (nearest !== undefined) return { outcome: "no unit", duty, nearest, room };
  return { outcome: "no cabinet", duty, misfit: { words: noCabinet(room.needed), nearest: [] }, room };
}

/** True where what road or site take is too little. */
function isOfRoom({ entry }: Finding): boolean {
  return / piece$|^unit fits the site/.test(entry.rule.id);
}

interface Task {
  readonly text: string;
  readonly duty: Duty;
  readonly fixed: FixedUnit;
  readonly bench: SizingBench;
}

function nearer(one: Attempt | undefined, other: Attempt): Attempt {
  return one === undefined || other.obstacles.length < one.obstacles.length ? other : one;
}

/** Goes through cross-sections until a unit does; else the attempt that came nearest, undefined when nothing is built. */
function search(
  { text, duty, fixed, bench }: Task,
  limits: SizeLimits,
): { readonly nearest: Attempt | undefined; readonly aims: Aims } {
  const tried: CabinetChoice[] = [];
  let aims: Aims = { ...limits };
  let nearest: Attempt | undefined;
  let roomNeeded = 0;
  const effort = { left: mostSolved };
  let alike = 0;
  let last: string | undefined;
  for (let count = 0; count < mostCabinets && effort.left > 0; count++) {
    const room = workroom(duty, bench, aims, fixed, effort);
    const cabinet = nextCabinet(cabinetChoices(room), tried, roomNeeded);
    if (cabinet === undefined) break;
    const { leastArea, mostWidth, mostHeight } = aims;
    const sized = sizeFor(text, room, cabinet, bench);
    nearest = nearer(nearest, sized);
    if (nearest.obstacles.length === 0) break;
    tried.push(cabinet);
    const isTold = aims.leastArea > leastArea || aims.mostWidth < mostWidth || aims.mostHeight < mostHeight;
    // Where two cabinets more have not mended the very same, no third does.
    const same = isTold || sized.obstacles[0]?.slice(0, 30) !== last?.slice(0, 30) ? 0 : alike + 1;
    if (same >= 2) break;
    alike = same;
    last = sized.obstacles[0];
    if (!isTold) roomNeeded = 1.1 * areaOf(cabinet);
    // What the next cabinet is asked stays; what was tightened inside this one does not.
    const asked = {
      leastArea: aims.leastArea,
      mostWidth: aims.mostWidth,
      mostHeight: aims.mostHeight,
      easyFilters: aims.easyFilters,
    };
    aims = { ...limits, ...asked };
  }
  return { nearest, aims };
}

/** What a cross-section must be, if site and road took any, and what they take. */
function roomOf({ duty, fixed, bench }: Task, limits: Aims): Room {
  const free = { ...duty, limits: { ...duty.limits, ...unlimited } };
  const [best] = cabinetChoices(
    workroom(free, bench, { ...limits, mostWidth: endless, mostHeight: endless }, noUnitFixed),
  );
  return { needed: best?.frame, most: largestCabinet(workroom(duty, bench, { ...limits }, fixed)) };
}

const endless = Number.POSITIVE_INFINITY;
const unlimited = {
  width: undefined,
  height: undefined,
  shippingWidth: endless,
  shippingHeight: endless,
} as const;

function workroom(
  duty: Duty,
  { catalogue, readings }: SizingBench,
  limits: Aims,
  fixed: FixedUnit,
  effort = { left: mostSolved },
): Workroom {
  const sections = fixed.sections?.map((each) => ({ ...each, values: { ...each.values } }));
  const draft: Draft = { casing: { ...fixed.casing }, sections: sections ?? sectionTrain(duty, limits) };
  const room = {
    duty,
    catalogue,
    limits,
    fixed,
    draft,
    effort,
    pins: new Map(),
    fanRises: new Map(),
    chosen: new Set<string>(),
    beyond: new Map(),
    readings,
    choices: new Map(),
    obstacles: new Map(),
  };
  chooseFirst(room);
  return room;
}

/** The cabinet with least panel that was not tried and has the room that those before lacked. */
function nextCabinet(
  cabinets: Iterable<CabinetChoice>,
  tried: readonly CabinetChoice[],
  roomNeeded: number,
): CabinetChoice | undefined {
  for (const each of cabinets) {
    if (areaOf(each) >= roomNeeded && !tried.some((other) => isAlike(each, other))) return each;
  }
  return undefined;
}

function areaOf({ frame }: CabinetChoice): number {
  return frame.width * frame.height;
}

function isAlike({ frame: one }: CabinetChoice, { frame: other }: CabinetChoice): boolean {
  return one.width === other.width && one.height === other.height;
}
