import type { Job } from "@oncethrough/engine/job/job";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";
import type { UnitRating } from "@oncethrough/engine/unit/rating";

/** The ratings of one job: each condition is solved when it is first asked for, and kept. */
export class RatingBook {
  readonly job: Job;
  readonly #ratings = new Map<string, UnitRating>();

  constructor(job: Job) {
    this.job = job;
  }

  /** The rating at the condition of that key; undefined when the job has no such condition. */
  rating(key: string): UnitRating | undefined {
    const known = this.#ratings.get(key);
    if (known !== undefined) return known;
    const condition = this.job.conditions.find((each) => each.key === key);
    if (condition === undefined) return undefined;
    const rating = rateUnit(this.job.unit, condition, createUnitRating(this.job.unit, condition));
    this.#ratings.set(key, rating);
    return rating;
  }

  /** The rating when it is solved already. */
  known(key: string): UnitRating | undefined {
    return this.#ratings.get(key);
  }

  /** Solves one more condition; false when all are solved. */
  solveNext(): boolean {
    const next = this.job.conditions.find((condition) => !this.#ratings.has(condition.key));
    if (next === undefined) return false;
    this.rating(next.key);
    return true;
  }
}
