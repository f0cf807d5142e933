import type { Condition } from "@oncethrough/engine/duty/condition";
import type { Job } from "@oncethrough/engine/job/job";
import type { MadeSound } from "@oncethrough/engine/section/contract";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";
import {
  type LimitOutcome,
  limitOutcome,
  type SoundOutlet,
  soundOf,
  type UnitSound,
} from "@oncethrough/engine/unit/sound";

/** What `oncethrough sound --json` prints; the tables for people are printed from the same figures. */
export interface SoundOutput {
  readonly format: "oncethrough sound 1";
  readonly tag: string;
  /** A-weighted sums at every condition at which the fan runs. */
  readonly conditions: readonly SoundAtCondition[];
  /** Key of the condition of what follows. */
  readonly condition: string;
  readonly outlets: readonly OutletOutput[];
  readonly endReflection: readonly number[];
  readonly fan: UnitSound["fan"];
  readonly steps: readonly StepOutput[];
  /** Sections whose own flow noise is not among the sums. */
  readonly uncounted: UnitSound["uncounted"];
  readonly caution: string;
}

/** Name of a place at which sound leaves the unit. */
export type OutletName = "intake" | "discharge" | "casing" | "return opening";

/** A-weighted sums at a condition. */
export interface SoundAtCondition {
  readonly condition: string;
  readonly solved: boolean;
  readonly weighted: Readonly<Partial<Record<OutletName, number>>>;
}

/** Sound at one place, and what that means for its limit. */
export interface OutletOutput extends SoundOutlet {
  readonly name: OutletName;
  readonly limit?: number;
  readonly outcome?: LimitOutcome;
}

/** A section on the way of the sound. */
export interface StepOutput {
  readonly section: string;
  readonly direction: string;
  readonly inside: readonly number[];
  readonly loss: readonly number[];
  readonly made?: MadeSound;
  readonly radiated?: readonly number[];
  readonly source: string;
  readonly certainty: string;
}

/**
 * Sound of a job's unit at every condition, and all of it at one: the condition asked for, or that of the loudest
 * discharge. Undefined when the fan makes no sound there.
 */
export function soundOutput(job: Job, key: string | undefined): SoundOutput | undefined {
  const heard = job.conditions.map((condition) => hear(job, condition));
  const running = heard.filter(({ sound }) => sound !== undefined);
  const chosen = key === undefined ? loudest(running) : heard.find(({ condition }) => condition.key === key);
  if (chosen?.sound === undefined) return undefined;
  const { sound } = chosen;
  return {
    format: "oncethrough sound 1",
    tag: job.tag,
    conditions: running.map(({ condition, solved, sound: each }) => ({
      condition: condition.key,
      solved,
      weighted: Object.fromEntries(outletsOf(each!).map(([name, { weighted }]) => [name, weighted])),
    })),
    condition: chosen.condition.key,
    outlets: outletsOf(sound).map(([name, outlet]) => withLimit(job, name, outlet)),
    endReflection: sound.endReflection,
    fan: sound.fan,
    steps: sound.steps.map(({ made, radiated, ...step }) => ({
      ...step,
      ...(made === undefined ? {} : { made }),
      ...(radiated === undefined ? {} : { radiated }),
    })),
    uncounted: sound.uncounted,
    caution:
      "flow noise of dampers, louvers and baffles is among it. Losses of filters, coils and walls are from memory. An estimate of sound power from handbook methods; a promise needs a test of such a unit, inlet, discharge and casing, in octave bands",
  };
}

interface Heard {
  readonly condition: Condition;
  readonly solved: boolean;
  readonly sound: UnitSound | undefined;
}

function hear(job: Job, condition: Condition): Heard {
  const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
  return { condition, solved: rating.solved, sound: rating.solved ? soundOf(job.unit, rating) : undefined };
}

function loudest(heard: readonly Heard[]): Heard | undefined {
  const level = ({ sound }: Heard) => sound?.discharge.weighted ?? Number.NEGATIVE_INFINITY;
  return heard.reduce<Heard | undefined>(
    (most, each) => (most === undefined || level(each) > level(most) ? each : most),
    undefined,
  );
}

function outletsOf(sound: UnitSound): readonly (readonly [OutletName, SoundOutlet])[] {
  const { intake, discharge, casing, returnOpening } = sound;
  const always = [
    ["intake", intake],
    ["discharge", discharge],
    ["casing", casing],
  ] as const;
  return returnOpening === undefined ? always : [...always, ["return opening", returnOpening]];
}

function withLimit(job: Job, name: OutletName, outlet: SoundOutlet): OutletOutput {
  const limit = name === "return opening" ? undefined : job.duty.soundLimits[name];
  return { name, ...outlet, ...(limit === undefined ? {} : { limit, outcome: limitOutcome(outlet, limit) }) };
}
