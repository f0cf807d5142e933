import type { Condition } from "@oncethrough/engine/duty/condition";
import type { Job } from "@oncethrough/engine/job/job";
import { atLargestFlow, fastestFanSpeed } from "@oncethrough/engine/unit/largest-flow";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";
import type { UnitRating } from "@oncethrough/engine/unit/rating";

/** The ratings of one job: each condition is solved when it is first asked for, and kept. */
export class RatingBook {
  readonly job: Job;
  readonly #ratings = new Map<string, UnitRating>();
  readonly #failures = new Map<string, string>();
  /** An hour of a year, besides the job's own conditions: the latest that was in hand. */
  #hour: { readonly condition: Condition; rating: UnitRating | undefined } | undefined;
  /** A near start for the next. */
  #latest: UnitRating | undefined;
  readonly #largest = new Map<string, UnitRating | undefined>();

  constructor(job: Job) {
    this.job = job;
  }

  /** Takes an hour of a year in hand; the one before is put away. */
  takeHour(condition: Condition): void {
    this.#hour = { condition, rating: undefined };
  }

  /** The hour in hand. */
  get hour(): Condition | undefined {
    return this.#hour?.condition;
  }

  #hourRating(hour: NonNullable<RatingBook["hour"]>, known: UnitRating | undefined): UnitRating | undefined {
    if (known !== undefined) return known;
    try {
      return rateUnit(this.job.unit, hour, createUnitRating(this.job.unit, hour, this.#latest));
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
   * condition asks. Undefined until all of them are tried, and where it finds no balance.
   */
  largestFlow(key: string): UnitRating | undefined {
    const like = this.#ratings.get(key);
    if (like === undefined || this.tried < this.job.conditions.length) return undefined;
    if (!this.#largest.has(key)) this.#largest.set(key, this.#solveLargest(like));
    return this.#largest.get(key);
  }

  #solveLargest(like: UnitRating): UnitRating | undefined {
    const { unit } = this.job;
    const fanSpeed = fastestFanSpeed(this.#ratings.values());
    if (!like.solved || fanSpeed === 0 || like.condition.flow.mode === "fan stopped") return undefined;
    const condition = atLargestFlow(like.condition, fanSpeed);
    const rating = rateUnit(unit, condition, createUnitRating(unit, condition, like));
    return rating.solved ? rating : undefined;
  }

  /** Why the calculation broke at a condition; undefined when it did not. */
  failure(key: string): string | undefined {
    return this.#failures.get(key);
  }

  /** How many conditions have been tried. */
  get tried(): number {
    return this.#ratings.size + this.#failures.size;
  }

  /** Solves one more condition; false when all are solved. */
  solveNext(): boolean {
    const next = this.job.conditions.find(({ key }) => !this.#ratings.has(key) && !this.#failures.has(key));
    if (next === undefined) return false;
    this.rating(next.key);
    return true;
  }
}
