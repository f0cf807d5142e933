import type { Condition } from "@oncethrough/engine/duty/condition";
import type { Job } from "@oncethrough/engine/job/job";
import { atLargestFlow } from "@oncethrough/engine/unit/largest-flow";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";
import type { UnitRating } from "@oncethrough/engine/unit/rating";
import { rateInDeadBand } from "@oncethrough/engine/year/dead-band";
import type { ToldConditions } from "./told-conditions.ts";

/**
 * The ratings of one job: each condition is solved when it is first asked for, and kept. A worker tells of those that nobody
 * looks at.
 */
export class RatingBook {
  readonly job: Job;
  readonly #ratings = new Map<string, UnitRating>();
  readonly #failures = new Map<string, string>();
  /** An hour of a year, besides the job's own conditions: the latest that was in hand. */
  #hour: { readonly condition: Condition; rating: UnitRating | undefined } | undefined;
  /** A near start for the next. */
  #latest: UnitRating | undefined;
  #told: ToldConditions | undefined;
  readonly #largest = new Map<string, UnitRating | undefined>();

  constructor(job: Job) {
    this.job = job;
  }

  /** Takes an hour of a year in hand; the one before is put away. */
  takeHour(condition: Condition): void {
    this.#hour = { condition, rating: undefined };
  }

  /** Takes what a worker tells of all conditions. */
  take(told: ToldConditions): void {
    this.#told = told;
  }

  /** What was told of all conditions. */
  get told(): ToldConditions | undefined {
    return this.#told;
  }

  /** The hour in hand. */
  get hour(): Condition | undefined {
    return this.#hour?.condition;
  }

  #hourRating(hour: NonNullable<RatingBook["hour"]>, known: UnitRating | undefined): UnitRating | undefined {
    if (known !== undefined) return known;
    try {
      return rateInDeadBand(this.job.unit, hour, createUnitRating(this.job.unit, hour, this.#latest));
    } catch {
      return undefined;
    }
  }

  /** The rating at the condition of that key; undefined when the job has no such condition, or when it broke. */
  rating(key: string): UnitRating | undefined {
    if (this.#hour?.condition.key === key) {
      this.#hour.rating = this.#hourRating(this.#hour.condition, this.#hour.rating);
      this.#latest = this.#hour.rating ?? this.#latest;
      return this.#hour.rating;
    }
    const known = this.#ratings.get(key);
    if (known !== undefined || this.#failures.has(key)) return known;
    const condition = this.job.conditions.find((each) => each.key === key);
    if (condition === undefined) return undefined;
    try {
      const rating = rateUnit(this.job.unit, condition, createUnitRating(this.job.unit, condition, this.#latest));
      this.#ratings.set(key, rating);
      this.#latest = rating;
      return rating;
    } catch (error) {
      // A condition that breaks the calculation must not take the page with it: it counts as not solved.
      this.#failures.set(key, error instanceof Error ? error.message : String(error));
      return undefined;
    }
  }

  /** The rating when it is solved already. */
  known(key: string): UnitRating | undefined {
    if (this.#hour?.condition.key === key) return this.#hour.rating;
    return this.#ratings.get(key);
  }

  /** The ratings at all conditions, but for those that broke. */
  all(): readonly UnitRating[] {
    return this.job.conditions.flatMap(({ key }) => this.rating(key) ?? []);
  }

  /**
   * The unit at the largest flow that can occur in the weather of a condition: filters clean, the fan as fast as any
   * condition asks. Undefined until all of them are told of, and where it finds no balance.
   */
  largestFlow(key: string): UnitRating | undefined {
    const like = this.#ratings.get(key);
    if (like === undefined || this.#told === undefined) return undefined;
    if (!this.#largest.has(key)) this.#largest.set(key, this.#solveLargest(like, this.#told.fastest));
    return this.#largest.get(key);
  }

  #solveLargest(like: UnitRating, fanSpeed: number): UnitRating | undefined {
    const { unit } = this.job;
    if (!like.solved || fanSpeed === 0 || like.condition.flow.mode === "fan stopped") return undefined;
    const condition = atLargestFlow(like.condition, fanSpeed);
    const rating = rateUnit(unit, condition, createUnitRating(unit, condition, like));
    return rating.solved ? rating : undefined;
  }

  /** Why the calculation broke at a condition; undefined when it did not. */
  failure(key: string): string | undefined {
    return this.#failures.get(key);
  }

  /** How many conditions are known of. */
  get tried(): number {
    return this.#told === undefined ? this.#ratings.size + this.#failures.size : this.job.conditions.length;
  }
}
