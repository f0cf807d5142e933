import { type BladeProposal, proposeBladeAngles } from "@oncethrough/engine/design/blade-angles";
import { type DamperState, damperStates } from "@oncethrough/engine/design/damper-state";
import { type ShareRow, shareTable } from "@oncethrough/engine/design/share-table";
import type { Condition } from "@oncethrough/engine/duty/condition";
import type { Job } from "@oncethrough/engine/job/job";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";

/** What `oncethrough dampers --json` prints; the tables for people are printed from the same figures. All in SI. */
export interface DampersOutput {
  readonly format: "oncethrough dampers 1";
  readonly tag: string;
  /** The condition of what follows. */
  readonly condition: string;
  readonly solved: boolean;
  readonly outsideAirShare: number;
  readonly dampers: readonly DamperState[];
  /** The dampers at the conditions with the fan stopped. */
  readonly stopped: readonly StoppedOutput[];
  /** Blade angles that hold the share; left out for a unit without a pair of dampers. */
  readonly proposal?: BladeProposal;
  /** Share at other flows, filter states and winds; left out where the proposal is. */
  readonly shares?: readonly ShareRow[];
}

/** The dampers at a condition with the fan stopped, and what still flows. */
export interface StoppedOutput {
  readonly condition: string;
  readonly name: string;
  /** kg/s of dry air that still comes in. */
  readonly intakeDryAirFlow: number;
  readonly dampers: readonly DamperState[];
}

/** Condition that is told when none is asked for. */
const usualCondition = "wet-bulb-day-0.5";

/** The dampers of a job's unit: as they stand, closed, as proposed, and what they give away from design. */
export function dampersOf(job: Job, key: string | undefined): DampersOutput {
  const { unit, conditions } = job;
  const condition = conditions.find((each) => each.key === (key ?? usualCondition)) ?? conditions[0];
  if (condition === undefined) throw new Error("a job without conditions");
  const rating = rateUnit(unit, condition, createUnitRating(unit, condition));
  const proposal = condition.flow.mode === "fan stopped" ? undefined : proposeBladeAngles(unit, condition);
  return {
    format: "oncethrough dampers 1",
    tag: job.tag,
    condition: condition.key,
    solved: rating.solved,
    outsideAirShare: rating.outsideAirShare,
    dampers: damperStates(unit, rating),
    stopped: conditions.filter((each) => each.flow.mode === "fan stopped").map((each) => stoppedAt(job, each)),
    ...(proposal === undefined ? {} : { proposal, shares: shareTable(unit, condition, job.duty.site.windSpeed) }),
  };
}

function stoppedAt({ unit }: Job, condition: Condition): StoppedOutput {
  const rating = rateUnit(unit, condition, createUnitRating(unit, condition));
  const { key, name } = condition;
  return {
    condition: key,
    name,
    intakeDryAirFlow: rating.outdoors.dryAirFlow,
    dampers: damperStates(unit, rating),
  };
}
