import { type Weighing, weighUnit } from "#arrangement/weigh";
import type { Condition } from "#duty/condition";
import type { Duty } from "#duty/duty";
import { largestFlowConditions } from "#unit/largest-flow";
import { ratingsOf } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import type { Machine, Rule } from "./contract.ts";
import { type Finding, findingsOf } from "./finding.ts";
import { addToTally, askedOf, createTally, type Judge, judgeRating, prepareJudge, type Tally } from "./judge.ts";
import type { Profile, Waiver } from "./profile.ts";

/** What a unit was judged by and on, and what came of it. */
export interface Check {
  readonly judge: Judge;
  readonly findings: readonly Finding[];
  /** The conditions given, then those of the largest flow; a finding's `at` counts here. */
  readonly conditions: readonly Condition[];
  readonly ratings: readonly UnitRating[];
  readonly weighing: Weighing;
  /** Conditions that could not be solved, and why; nothing of them is judged. */
  readonly unsolved: readonly { readonly condition: Condition; readonly reason: string }[];
}

/** Solves a unit at every condition and at the largest flow that can occur, weighs it, and judges it. */
export function checkUnit(
  unit: Unit,
  duty: Duty,
  conditions: readonly Condition[],
  rules: readonly Rule[],
  profile: Profile,
  waivers: readonly Waiver[] = [],
): Check {
  const wanted = ratingsOf(unit, conditions);
  const excess = ratingsOf(unit, largestFlowConditions(wanted), wanted[0]);
  const weighing = weighUnit(unit, duty, conditions, wanted);
  return judgeUnit({ unit, duty, wanted, excess, weighing }, rules, profile, waivers);
}

/** What is known of a unit before it is judged. */
export interface Known {
  readonly unit: Unit;
  readonly duty: Duty;
  /** The unit solved at the conditions of the job, and at the largest flow that can occur. */
  readonly wanted: readonly UnitRating[];
  readonly excess: readonly UnitRating[];
  readonly weighing: Weighing;
}

/** Judges what is known of a unit: no figure is calculated anew. */
export function judgeUnit(
  known: Known,
  rules: readonly Rule[],
  profile: Profile,
  waivers: readonly Waiver[] = [],
): Check {
  const { unit, duty, wanted, excess, weighing } = known;
  const judge = prepareJudge(unit, duty, rules, profile, waivers);
  const tally = createTally(judge);
  const ratings = [...wanted, ...excess];
  const conditions = ratings.map(({ condition }) => condition);
  ratings.forEach((rating, place) => {
    if (rating.solved) judgeRating(judge, rating, askedOf(rating, place >= wanted.length), place, tally);
  });
  const machine = { duty, unit, conditions: conditions.slice(0, wanted.length), ratings: wanted, weighing };
  judgeMachine(judge, machine, tally);
  const unsolved = ratings
    .filter(({ solved }, place) => !solved && place < wanted.length)
    .map(({ condition, reason }) => ({ condition, reason }));
  return { judge, findings: findingsOf(judge, tally), conditions, ratings, weighing, unsolved };
}

/** Adds to the tally what is judged once, from the machine. */
export function judgeMachine(judge: Judge, machine: Omit<Machine, "index" | "design">, tally: Tally): void {
  judge.entries.forEach(({ rule, index, own }, place) => {
    if (rule.scope !== "machine") return;
    const at: Machine = { ...machine, index, design: machine.unit.sections[index]?.design };
    const value = rule.value(at);
    if (value === undefined) return;
    addToTally(tally, place, rule, value, own?.limit ?? limitAt(rule, at), -1);
  });
}

function limitAt(rule: Extract<Rule, { scope: "machine" }>, at: Machine): number {
  return typeof rule.limit === "number" ? rule.limit : rule.limit(at);
}
