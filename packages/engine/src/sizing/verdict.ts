import type { Weighing } from "#arrangement/weigh";
import type { Job } from "#job/job";
import { type Check, judgeUnit } from "#rule/check";
import { type Finding, failsUnit, sortedFindings } from "#rule/finding";
import type { Profile } from "#rule/profile";
import { rules } from "#rule/rules";
import { largestFlowConditions } from "#unit/largest-flow";
import { ratingsOf } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import { shortfallsOf } from "#unit/report";

/** A finished draft judged by the rules of its owner. */
export interface Verdict {
  readonly check: Check;
  /** Rules that decide and are missed, the worst first. */
  readonly failing: readonly Finding[];
  /** What could not be solved, or is missed while the fan runs, in words; each once. */
  readonly missed: readonly string[];
}

/** Judges a job that has been solved at all its conditions, and weighed. */
export function judgeDraft(job: Job, ratings: readonly UnitRating[], weighing: Weighing, profile: Profile): Verdict {
  const { unit, duty, waivers } = job;
  const excess = ratingsOf(unit, largestFlowConditions(ratings), ratings[0]);
  const check = judgeUnit({ unit, duty, wanted: ratings, excess, weighing }, rules, profile, waivers);
  const missed = ratings.flatMap((rating) => {
    if (!rating.solved) return [`${rating.condition.name}: ${rating.reason}`];
    if (!rating.operation.fansRunning) return [];
    return shortfallsOf(unit, rating).map(({ section, what }) => `${section}: ${what}`);
  });
  return { check, failing: sortedFindings(check.findings).filter(failsUnit), missed: [...new Set(missed)] };
}
