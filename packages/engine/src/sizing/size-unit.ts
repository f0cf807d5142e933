import type { Catalogue } from "#catalogue/read-catalogue";
import type { Duty } from "#duty/duty";
import type { Problem } from "#form/problem";
import type { Job } from "#job/job";
import type { Bench } from "#mending/smallest-fix";
import type { Finding } from "#rule/finding";
import type { Profile } from "#rule/profile";
import { type Attempt, sizeFor } from "./attempt.ts";
import { type CabinetChoice, cabinetChoices } from "./cabinet.ts";
import { type Contradiction, contradictionsOf } from "./contradiction.ts";
import { type Draft, type FixedUnit, noUnitFixed } from "./draft.ts";
import { readDutyFile } from "./duty-file.ts";
import { chooseFirst } from "./first-choice.ts";
import { dutyContradictions, noCabinet } from "./misfit.ts";
import { nearestDuties, provenWays } from "./nearest-duty.ts";
import { openQuestions, type Question } from "./question.ts";
import { type Aims, relaxedLimitsOf, type SizeLimits, sizeLimitsOf } from "./size-limits.ts";
import { sectionTrain } from "./train.ts";
import type { Choice, Workroom } from "./workroom.ts";

/** What sizing comes to. */
export type Sizing =
  | { readonly outcome: "not read"; readonly problems: readonly Problem[] }
  | {
      readonly outcome: "contradiction";
      /** What the duty asks and no unit gives; after a search, what stands against the unit that came nearest. */
      readonly contradictions: readonly Contradiction[];
      /** How the unit that came nearest was chosen; empty where it did not come to one. */
      readonly choices: readonly Choice[];
    }
  | {
      readonly outcome: "unit";
      /** The complete job file. */
      readonly text: string;
      readonly job: Job;
      readonly choices: readonly Choice[];
      readonly questions: readonly Question[];
    };

/** Cross-sections looked at. */
const mostCabinets = 6;
/** Whole units solved for one set of limits. */
const mostSolved = 50;

/**
 * Sizes a unit from a duty file: chooses sections, cross-section, then every section's sizes, solving the whole unit
 * between, until it holds its duty and keeps every rule that decides; or says what of the duty no unit gives, with the
 * nearest duties that work. Deterministic; what the file fixes stays.
 */
export function sizeUnit(text: string, catalogue: Catalogue, profile: Profile): Sizing {
  const bench = { catalogue, profile, books: undefined, readings: new Map() };
  const sizing = sizeOnce(text, bench);
  const works = (changed: string) => sizeOnce(changed, bench).outcome === "unit";
  switch (sizing.outcome) {
    case "no cabinet": {
      const { words, nearest } = sizing.misfit;
      const contradictions = [{ words, nearest: provenWays(text, nearest, works) }];
      return { outcome: "contradiction", contradictions, choices: [] };
    }
    case "no unit": {
      const { duty, nearest } = sizing;
      const [first = "no unit was found", ...others] = nearest.obstacles;
      const ways = nearestDuties(text, duty, nearest, works);
      const contradictions = [
        { words: `of the unit that comes nearest, ${first}`, nearest: ways },
        ...others.map((words) => ({ words, nearest: [] })),
      ];
      return { outcome: "contradiction", contradictions, choices: nearest.choices };
    }
    default:
      return sizing;
  }
}

type Once =
  | Sizing
  | { readonly outcome: "no cabinet"; readonly misfit: Contradiction }
  | { readonly outcome: "no unit"; readonly duty: Duty; readonly nearest: Attempt };

/** Sizes without looking for other duties. */
function sizeOnce(text: string, bench: SizingBench): Once {
  const { catalogue, profile } = bench;
  const { duty, fixed, defaults, problems } = readDutyFile(text, catalogue);
  if (duty === undefined) return { outcome: "not read", problems };
  const contradictions = [...contradictionsOf(duty), ...dutyContradictions(duty, profile)];
  if (contradictions.length > 0) return { outcome: "contradiction", contradictions, choices: [] };
  const task = { text, duty, fixed, bench };
  let nearest: Attempt | undefined;
  // What only advice asks gives way where nothing is found otherwise.
  for (const limits of [sizeLimitsOf(profile), relaxedLimitsOf(profile)]) {
    const found = search(task, limits);
    if (found?.obstacles.length === 0 && found.job !== undefined) {
      const questions = openQuestions(duty, defaults);
      return { outcome: "unit", text: found.text, job: found.job, choices: found.choices, questions };
    }
    if (found !== undefined) nearest = nearer(nearest, found);
    if (found !== undefined && !found.failing.some(isOfRoom)) break;
  }
  if (nearest !== undefined) return { outcome: "no unit", duty, nearest };
  return { outcome: "no cabinet", misfit: misfitOf(task, relaxedLimitsOf(profile)) };
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

/** What every search of one sizing is made with. */
interface SizingBench extends Bench {
  readonly readings: Workroom["readings"];
}

function nearer(one: Attempt | undefined, other: Attempt): Attempt {
  return one === undefined || other.obstacles.length < one.obstacles.length ? other : one;
}

/** Goes through cross-sections until a unit does; else the attempt that came nearest, undefined when nothing is built. */
function search({ text, duty, fixed, bench }: Task, limits: SizeLimits): Attempt | undefined {
  const tried: CabinetChoice[] = [];
  let aims: Aims = { ...limits };
  let nearest: Attempt | undefined;
  let roomNeeded = 0;
  const effort = { left: mostSolved };
  let alike = 0;
  let last: string | undefined;
  for (let count = 0; count < mostCabinets; count++) {
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
  return nearest;
}

function misfitOf({ duty, fixed, bench }: Task, limits: SizeLimits): Contradiction {
  const choicesFor = (each: Duty, known: FixedUnit) => cabinetChoices(workroom(each, bench, { ...limits }, known));
  const [best] = choicesFor({ ...duty, limits: { ...duty.limits, ...unlimited } }, noUnitFixed);
  return noCabinet(duty, best?.frame, (each) => choicesFor(each, fixed).length > 0);
}

const unlimited = {
  width: undefined,
  height: undefined,
  shippingWidth: Number.POSITIVE_INFINITY,
  shippingHeight: Number.POSITIVE_INFINITY,
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
    readings,
    choices: new Map(),
    obstacles: new Map(),
  };
  chooseFirst(room);
  return room;
}

/** The cabinet with least panel that was not tried and has the room that those before lacked. */
function nextCabinet(
  cabinets: readonly CabinetChoice[],
  tried: readonly CabinetChoice[],
  roomNeeded: number,
): CabinetChoice | undefined {
  return cabinets.find((each) => areaOf(each) >= roomNeeded && !tried.some((other) => isAlike(each, other)));
}

function areaOf({ frame }: CabinetChoice): number {
  return frame.width * frame.height;
}

function isAlike({ frame: one }: CabinetChoice, { frame: other }: CabinetChoice): boolean {
  return one.width === other.width && one.height === other.height;
}
