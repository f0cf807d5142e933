import type { Condition } from "#duty/condition";
import type { Job } from "#job/job";
import { readJob } from "#job/read-job";
import type { Bench } from "#mending/smallest-fix";
import type { Finding } from "#rule/finding";
import { findingWords } from "#rule/words";
import { ratingsOf } from "#unit/rate-unit";
import { type CabinetChoice, largestAirflow, takeCabinet } from "./cabinet.ts";
import { draftText } from "./draft.ts";
import { chooseFanFirst, settleFan } from "./fans.ts";
import { chooseDischarge, chooseDoors } from "./first-choice.ts";
import { chooseIntake, settleHood } from "./intake.ts";
import { settleLiquidCoils } from "./liquid-coil.ts";
import { mendCabinet, mendDraft } from "./mend-draft.ts";
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
  let text = draftText(dutyText, room.draft, room.fixed);
  let job: Job | undefined;
  let verdict: Verdict | undefined;
  let everyCondition = false;
  let smallest = 0;
  for (let round = 0; round < mostRounds && room.effort.left > 0; round++) {
    room.effort.left--;
    const reading = readJob(text, room.catalogue);
    job = reading.job;
    if (job === undefined) {
      return outcome(
        room,
        text,
        job,
        undefined,
        reading.problems.map((each) => `${each.path}: ${each.problem}; ${each.allowed}`),
      );
    }
    const conditions = everyCondition ? job.conditions : telling(job.conditions);
    const solved: Solved = { unit: job.unit, ratings: ratingsOf(job.unit, conditions) };
    const isSettled = !settleAll(room, solved);
    if (isSettled && everyCondition) {
      verdict = judgeDraft(job, solved.ratings, bench.profile);
      const isHeld = verdict.failing.length === 0 && verdict.missed.length === 0 && room.obstacles.size === 0;
      if (isHeld) return outcome(room, text, job, verdict, []);
      const mended = mendTilChanged(dutyText, text, room, solved, verdict);
      const widened = !mended && mendCabinet(room, solved, verdict);
      const mayTry = !widened && verdict.failing.length <= mostTogether && room.obstacles.size === 0;
      const isChanged = mended || (mayTry && smallest++ < mostSmallest && smallestChange(room, text, bench));
      if (!isChanged) return outcome(room, text, job, verdict, []);
    } else if (isSettled) everyCondition = true;
    text = draftText(dutyText, room.draft, room.fixed);
  }
  return outcome(room, text, job, verdict, verdict === undefined ? ["the choices did not come to rest"] : []);
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

/** Every step once, in airflow order; gives whether any changed the draft. */
function settleAll(room: Workroom, solved: Solved): boolean {
  const steps = [settleHood, settleBlades, settleSteamCoils, settleLiquidCoils, settleFan];
  if (steps.map((step) => step(room, solved)).some(Boolean)) return true;
  // An eliminator only when no coil that stays dry behind was found; attenuators for the fan that was chosen; the rail
  // when nothing moves its trap any more.
  return settleEliminator(room, solved) || settleSound(room, solved) || settleRail(room, solved);
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
