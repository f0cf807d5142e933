import { weighUnit } from "#arrangement/weigh";
import type { Condition } from "#duty/condition";
import type { Job } from "#job/job";
import { readJob } from "#job/read-job";
import type { Bench } from "#mending/smallest-fix";
import type { Finding } from "#rule/finding";
import { findingWords } from "#rule/words";
import { createUnitRating, rateUnit, ratingsOf } from "#unit/rate-unit";
import { type CabinetChoice, largestAirflow, takeCabinet } from "./cabinet.ts";
import { draftText } from "./draft.ts";
import { chooseFanFirst, settleFan } from "./fans.ts";
import { chooseDischarge, chooseDoors } from "./first-choice.ts";
import { chooseIntake, settleHood } from "./intake.ts";
import { settleLiquidCoils } from "./liquid-coil.ts";
import { isHopeless, mendCabinet, mendDraft } from "./mend-draft.ts";
import { settleBlades, settleEliminator, settleRail } from "./settle.ts";
import { smallestChange } from "./smallest-change.ts";
import { settleSound } from "./sound.ts";
import { chooseHeatingFirst, settleSteamCoils } from "./steam-coil.ts";
import { judgeDraft, type Verdict } from "./verdict.ts";
import { type Choice, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

/** What sizing for one cross-section has come to. */
export interface Attempt {
  readonly text: string;
  readonly job: Job | undefined;
  readonly choices: readonly Choice[];
  /** What stands in the way; empty where the unit holds its duty and keeps its owner's rules. */
  readonly obstacles: readonly string[];
  /** Rules that were missed, as far as it came to that. */
  readonly failing: readonly Finding[];
}

/** Rounds of choosing and solving for one cross-section, and single changes by trial. */
const mostRounds = 30;
const mostSmallest = 4;
const mostTightenings = 8;
/** Rules missed at once beyond which no single change is looked for. */
const mostTogether = 2;

/**
 * Sizes every section for a cross-section, solving the whole unit between, until nothing changes; judges it, mends what is
 * missed, and begins again. What a larger cabinet would mend is asked of the next one.
 */
export function sizeFor(dutyText: string, room: Workroom, cabinet: CabinetChoice, bench: Bench): Attempt {
  chooseAtFirst(room, cabinet);
  let last: Attempt = outcome(room, dutyText, undefined, undefined, ["enough was tried"]);
  let smallest = 0;
  for (let round = 0; round < mostRounds && room.effort.left > 0; round++) {
    room.effort.left--;
    const text = draftText(dutyText, room.draft, room.fixed);
    const { job, problems } = readJob(text, room.catalogue);
    if (job === undefined) {
      const words = problems.map((each) => `${each.path}: ${each.problem}; ${each.allowed}`);
      return outcome(room, text, job, undefined, words);
    }
    last = outcome(room, text, job, undefined, ["the choices did not come to rest"]);
    const solved = settled(room, job);
    if (solved === undefined) continue;
    const judged = judgedOnItsRail(dutyText, room, job, solved, bench);
    const { verdict } = judged;
    last = outcome(room, judged.text, judged.job, verdict, []);
    if (last.obstacles.length === 0 || isHopeless(room, solved, verdict)) return last;
    if (mendTilChanged(dutyText, judged.text, room, solved, verdict)) continue;
    if (mendCabinet(room, solved, verdict)) return last;
    const mayTry = verdict.failing.length <= mostTogether && room.obstacles.size === 0 && smallest++ < mostSmallest;
    if (!mayTry || !smallestChange(room, judged.text, bench)) return last;
  }
  return last;
}

/** The draft solved at every condition where its choices have come to rest; undefined where one of them was changed. */
function settled(room: Workroom, { unit, conditions }: Job): Solved | undefined {
  const built = room.draft.sections.map(({ values }) => JSON.stringify(values));
  const first = ratingsOf(unit, telling(conditions));
  if (settleAll(room, { unit, ratings: first, built })) return undefined;
  let last = first.at(-1);
  const ratings = conditions.map((condition) => {
    const known = first.find((rating) => rating.condition === condition);
    last = known ?? rateUnit(unit, condition, createUnitRating(unit, condition, last));
    return last;
  });
  const solved = { unit, ratings, built };
  return settleAll(room, solved) ? undefined : solved;
}

interface Judged {
  readonly text: string;
  readonly job: Job;
  readonly verdict: Verdict;
}

/** The unit on a rail that takes its traps, judged. The rail carries the machine and changes nothing of its air. */
function judgedOnItsRail(dutyText: string, room: Workroom, job: Job, { ratings }: Solved, bench: Bench): Judged {
  const weigh = ({ unit, duty, conditions }: Job) => weighUnit(unit, duty, conditions, ratings);
  const weighing = weigh(job);
  const isHigher = settleRail(room, weighing);
  const text = draftText(dutyText, room.draft, room.fixed);
  const onRail = (isHigher ? readJob(text, room.catalogue).job : undefined) ?? job;
  const verdict = judgeDraft(onRail, ratings, isHigher ? weigh(onRail) : weighing, bench.profile);
  return { text, job: onRail, verdict };
}

/** Stricter limits need not change the draft at once: they are tightened on until it does, with what is solved already. */
function mendTilChanged(dutyText: string, text: string, room: Workroom, solved: Solved, verdict: Verdict): boolean {
  for (let count = 0; count < mostTightenings; count++) {
    if (!mendDraft(room, solved, verdict)) return false;
    settleAll(room, solved);
    if (draftText(dutyText, room.draft, room.fixed) !== text) return true;
  }
  return false;
}

function chooseAtFirst(room: Workroom, cabinet: CabinetChoice): void {
  takeCabinet(room, cabinet);
  const airflow = largestAirflow(room);
  for (const section of sectionsOfKind(room, "chilled-water coil")) {
    if (cabinet.stacked > 1) section.values.stacked ??= cabinet.stacked;
  }
  chooseIntake(room, cabinet.frame, airflow);
  chooseHeatingFirst(room);
  chooseFanFirst(room, cabinet.frame, airflow);
  chooseDischarge(room, cabinet.frame, airflow);
  chooseDoors(room, cabinet.frame);
}

/** Conditions that decide sizes as a rule: every day at change-out, the design one, clean filters, the least flow. */
function telling(conditions: readonly Condition[]): readonly Condition[] {
  const keys = ["wet-bulb-day-0", "wet-bulb-day-0.5", "minimum-flow-wet-bulb-day", "one-fan-out"];
  return conditions.filter(
    ({ key, filterLoading, flow }) =>
      flow.mode !== "fan stopped" && (filterLoading === 1 || keys.includes(key) || key.startsWith("own-")),
  );
}

/** Every step that the air decides, once, in airflow order; gives whether any changed the draft. */
function settleAll(room: Workroom, solved: Solved): boolean {
  const steps = [settleHood, settleBlades, settleSteamCoils, settleLiquidCoils, settleFan];
  if (steps.map((step) => step(room, solved)).some(Boolean)) return true;
  // An eliminator only when no coil that stays dry behind was found; attenuators for the fan that was chosen.
  return settleEliminator(room, solved) || settleSound(room, solved);
}

function outcome(
  room: Workroom,
  text: string,
  job: Job | undefined,
  verdict: Verdict | undefined,
  others: readonly string[],
): Attempt {
  const failing = verdict?.failing ?? [];
  const rules = failing.map((finding) => `${finding.entry.section}: ${findingWords(finding, "ip")}`);
  const obstacles = [...others, ...room.obstacles.values(), ...(verdict?.missed ?? []), ...rules];
  return { text, job, choices: [...room.choices.values()], obstacles: [...new Set(obstacles)], failing };
}
