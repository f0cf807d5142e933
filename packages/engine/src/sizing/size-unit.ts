import type { Catalogue } from "#catalogue/read-catalogue";
import type { Duty } from "#duty/duty";
import type { Problem } from "#form/problem";
import type { Job } from "#job/job";
import { readJob } from "#job/read-job";
import type { Bench } from "#mending/smallest-fix";
import type { Profile } from "#rule/profile";
import { inBothUnits } from "#section/both-units";
import { ratingsOf } from "#unit/rate-unit";
import { shortfallsOf } from "#unit/report";
import { type CabinetChoice, cabinetChoices, largestAirflow, takeCabinet } from "./cabinet.ts";
import { type Contradiction, contradictionsOf } from "./contradiction.ts";
import { type Draft, draftText, type FixedUnit } from "./draft.ts";
import { readDutyFile } from "./duty-file.ts";
import { chooseFanFirst, redundancyReached, settleFan } from "./fans.ts";
import { chooseDischarge, chooseDoors, chooseFirst } from "./first-choice.ts";
import { chooseIntake, settleHood } from "./intake.ts";
import { keepRules } from "./keep-rules.ts";
import { settleLiquidCoils } from "./liquid-coil.ts";
import { openQuestions, type Question } from "./question.ts";
import { settleBlades, settleEliminator, settleLength, settleRail } from "./settle.ts";
import { type SizeLimits, sizeLimitsOf } from "./size-limits.ts";
import { chooseHeatingFirst, settleSteamCoils } from "./steam-coil.ts";
import { sectionTrain } from "./train.ts";
import type { Choice, Solved, Workroom } from "./workroom.ts";

/** What sizing comes to. */
export type Sizing =
  | { readonly outcome: "not read"; readonly problems: readonly Problem[] }
  | { readonly outcome: "contradiction"; readonly contradictions: readonly Contradiction[] }
  | {
      readonly outcome: "unit";
      /** The complete job file. */
      readonly text: string;
      readonly job: Job;
      readonly choices: readonly Choice[];
      readonly questions: readonly Question[];
      /** Rules of the owner that the unit does not keep, with value and limit: they want the engineer's hand. */
      readonly unkept: readonly string[];
    }
  | {
      readonly outcome: "no unit";
      /** What stands in the way, of the cabinet that came nearest. */
      readonly obstacles: readonly string[];
      readonly choices: readonly Choice[];
    };

/** Rounds of choosing and solving for one cross-section; and cross-sections looked at. */
const mostRounds = 12;
const mostCabinets = 5;

/**
 * Sizes a unit from a duty file: chooses sections, cross-section, then every section's sizes, solving the whole unit
 * between, until nothing changes. Deterministic; what the file fixes stays.
 */
export function sizeUnit(text: string, catalogue: Catalogue, profile: Profile): Sizing {
  const limits = sizeLimitsOf(profile);
  const bench: Bench = { catalogue, profile, books: undefined };
  const reading = readDutyFile(text, catalogue);
  const { duty, fixed, defaults } = reading;
  if (duty === undefined) return { outcome: "not read", problems: reading.problems };
  const contradictions = contradictionsOf(duty);
  if (contradictions.length > 0) return { outcome: "contradiction", contradictions };
  const cabinets = cabinetChoices(workroom(duty, catalogue, limits, fixed));
  if (cabinets.length === 0)
    return { outcome: "contradiction", contradictions: [noCabinet(duty, catalogue, limits, fixed)] };
  let nearest: Attempt | undefined;
  for (const cabinet of spaced(cabinets)) {
    const sized = sizeFor(text, workroom(duty, catalogue, limits, fixed), cabinet);
    const kept = sized.obstacles.length === 0 ? keepRules(sized.text, bench, fixed) : undefined;
    if (kept !== undefined) {
      const { proof, unkept } = kept;
      const choices = [...sized.choices, ...kept.choices];
      const questions = openQuestions(duty, defaults);
      return { outcome: "unit", text: proof.text, job: proof.job, choices, questions, unkept };
    }
    if (nearest === undefined || sized.obstacles.length < nearest.obstacles.length) nearest = sized;
  }
  return { outcome: "no unit", obstacles: nearest!.obstacles, choices: nearest!.choices };
}

function workroom(duty: Duty, catalogue: Catalogue, limits: SizeLimits, fixed: FixedUnit): Workroom {
  const sections = fixed.sections?.map((each) => ({ ...each, values: { ...each.values } }));
  const draft: Draft = { casing: { ...fixed.casing }, sections: sections ?? sectionTrain(duty, limits) };
  const room = { duty, catalogue, limits, fixed, draft, choices: new Map(), obstacles: new Map() };
  chooseFirst(room);
  return room;
}

/** The best cross-section, then larger ones each by a tenth at least: what the first lacks is room. */
function spaced(cabinets: readonly CabinetChoice[]): readonly CabinetChoice[] {
  const area = ({ frame }: CabinetChoice) => frame.width * frame.height;
  const chosen: CabinetChoice[] = [];
  for (const each of cabinets) {
    const last = chosen.at(-1);
    if (last === undefined || area(each) >= 1.1 * area(last)) chosen.push(each);
    if (chosen.length === mostCabinets) break;
  }
  return chosen;
}

interface Attempt {
  readonly text: string;
  readonly job: Job | undefined;
  readonly choices: readonly Choice[];
  readonly obstacles: readonly string[];
}

function sizeFor(dutyText: string, room: Workroom, cabinet: CabinetChoice): Attempt {
  takeCabinet(room, cabinet);
  const airflow = largestAirflow(room);
  for (const section of room.draft.sections) {
    if (section.kind === "chilled-water coil" && cabinet.stacked > 1) section.values.stacked ??= cabinet.stacked;
  }
  chooseIntake(room, cabinet.frame, airflow);
  chooseHeatingFirst(room);
  chooseFanFirst(room, cabinet.frame, airflow);
  chooseDischarge(room, cabinet.frame, airflow);
  chooseDoors(room, cabinet.frame);
  let text = draftText(dutyText, room.draft, room.fixed);
  let job: Job | undefined;
  for (let round = 0; round < mostRounds; round++) {
    const reading = readJob(text, room.catalogue);
    job = reading.job;
    if (job === undefined) {
      return {
        text,
        job,
        choices: [],
        obstacles: reading.problems.map((each) => `${each.path}: ${each.problem}; ${each.allowed}`),
      };
    }
    const solved = solve(job);
    if (!settleAll(room, solved)) {
      return {
        text,
        job,
        choices: [...room.choices.values()],
        obstacles: [...room.obstacles.values(), ...missed(room, job, solved)],
      };
    }
    text = draftText(dutyText, room.draft, room.fixed);
  }
  return { text, job, choices: [...room.choices.values()], obstacles: ["the choices did not come to rest"] };
}

function solve({ unit, conditions }: Job): Solved {
  return { unit, ratings: ratingsOf(unit, conditions) };
}

/** Every step once, in airflow order; gives whether any changed the draft. */
function settleAll(room: Workroom, solved: Solved): boolean {
  const steps = [settleHood, settleBlades, settleSteamCoils, settleLiquidCoils, settleFan];
  if (steps.map((step) => step(room, solved)).some(Boolean)) return true;
  // An eliminator only when no coil that stays dry behind was found; what the site lacks of length; the rail when nothing
  // moves its trap any more.
  return settleEliminator(room, solved) || settleLength(room, solved) || settleRail(room, solved);
}

/** What the finished unit does not hold while its fan runs, and what the site does not take. */
function missed(room: Workroom, job: Job, solved: Solved): readonly string[] {
  const found = solved.ratings.flatMap((rating) => {
    if (!rating.solved) return [`${rating.condition.name}: ${rating.reason}`];
    if (!rating.operation.fansRunning) return [];
    return shortfallsOf(job.unit, rating).map(({ section, what }) => `${rating.condition.name}, ${section}: ${what}`);
  });
  const reached = redundancyReached(room, solved);
  const wanted = room.duty.redundancy.airflowWithOneFanOut;
  if (wanted > 0 && reached < wanted - 1e-3)
    found.push(`with one fan out the array moves ${Math.round(reached * 100)} % of the design airflow`);
  const length = job.unit.length + Math.max(0, ...job.unit.sections.map((section) => section.layout.outside));
  const most = room.duty.limits.length;
  if (most !== undefined && length > most + 1e-6) {
    found.push(`the unit is ${inBothUnits(length, "length")} long, and the site takes ${inBothUnits(most, "length")}`);
  }
  return [...new Set(found)];
}

function noCabinet(duty: Duty, catalogue: Catalogue, limits: SizeLimits, fixed: FixedUnit): Contradiction {
  const free = { ...duty, limits: { ...duty.limits, width: undefined, height: undefined } };
  const [best] = cabinetChoices(workroom(free, catalogue, limits, { ...fixed, casing: {} }));
  if (best === undefined) {
    return {
      words:
        "no cross-section that is built takes this airflow within the velocity limits; split it over several units",
      nearest: [],
    };
  }
  const { width, height } = best.frame;
  return {
    words: `no cross-section within the site's width and height takes this airflow within the velocity limits; the smallest is ${inBothUnits(width, "length")} wide and ${inBothUnits(height, "length")} high, clear inside`,
    nearest: [],
  };
}
