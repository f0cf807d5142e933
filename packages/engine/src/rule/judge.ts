import type { Duty } from "#duty/duty";
import type { SectionRating } from "#section/contract";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { type ConditionRule, marginOf, mayDecide, type RatedSection, type Rule } from "./contract.ts";
import type { Profile, Waiver } from "./profile.ts";

/** A rule set before one section, or before the unit, with the limit that counts. */
export interface Entry {
  readonly rule: Rule;
  /** Place of the section; −1 for the unit as a whole. */
  readonly index: number;
  /** Name of the section, or `unit`. */
  readonly section: string;
  /** The owner's limit, which takes the place of the rule's. */
  readonly own: { readonly limit: number; readonly reason: string; readonly profile: string } | undefined;
  /** A limit that is not met fails the unit, and is no mere advice. */
  readonly decides: boolean;
  readonly waiver: Waiver | undefined;
}

/** The rules that apply to a unit under a profile, made ready once. */
export interface Judge {
  readonly unit: Unit;
  readonly duty: Duty;
  readonly profile: Profile;
  readonly entries: readonly Entry[];
  /** Those of them that look at ratings, by when they are asked. */
  readonly asked: Readonly<Record<Asked, readonly AskedEntry[]>>;
  readonly at: RatedSection;
}

/** A condition, as far as rules ask: the fan runs, it runs with more flow than the duty asks, it stands. */
export type Asked = "running" | "largest flow" | "stopped";

interface AskedEntry {
  readonly place: number;
  readonly rule: ConditionRule;
  readonly index: number;
  readonly limit: number | undefined;
}

/** What came of the entries, one figure for each; owned by the caller. `at` is whatever number the caller gave the rating. */
export interface Tally {
  /** Smallest margin so far, with the value and limit there; +∞ where nothing was told. */
  readonly margin: Float64Array;
  readonly value: Float64Array;
  readonly limit: Float64Array;
  readonly at: Int32Array;
  /** Ratings that were told, that missed the limit, and that could not be told, with the first of those. */
  readonly told: Int32Array;
  readonly missed: Int32Array;
  readonly unknown: Int32Array;
  readonly firstUnknown: Int32Array;
}

/** Chooses the rules that count for a unit under a profile, and sets each before the sections that it judges. */
export function prepareJudge(
  unit: Unit,
  duty: Duty,
  rules: readonly Rule[],
  profile: Profile,
  waivers: readonly Waiver[],
): Judge {
  const letGo = [...profile.waivers, ...waivers];
  const entries = rules
    .filter(
      ({ id, byDefault }) =>
        !profile.without.has(id) && (byDefault !== false || profile.also.has(id) || profile.limits.has(id)),
    )
    .flatMap((rule) => placesOf(rule, unit).map((index) => entryOf(rule, unit, index, profile, letGo)));
  const byWhen = (when: Asked): readonly AskedEntry[] =>
    entries.flatMap(({ rule, index, own }, place) => {
      if (rule.scope !== "condition" || !isAsked(rule.when ?? "running", when)) return [];
      return [{ place, rule, index, limit: own?.limit ?? (typeof rule.limit === "number" ? rule.limit : undefined) }];
    });
  const asked = { running: byWhen("running"), "largest flow": byWhen("largest flow"), stopped: byWhen("stopped") };
  const at = { duty, unit, index: -1, design: undefined } as unknown as RatedSection;
  return { unit, duty, profile, entries, asked, at };
}

/** The same rules before another unit of the same sections, or another duty. */
export function judgeBefore(judge: Judge, unit: Unit, duty: Duty): Judge {
  return { ...judge, unit, duty, at: { ...judge.at, unit, duty } };
}

function isAsked(rule: Asked, when: Asked): boolean {
  return rule === when || (rule === "largest flow" && when === "running");
}

function placesOf(rule: Rule, unit: Unit): readonly number[] {
  const { of } = rule;
  if (of === "unit") return [-1];
  return unit.sections.flatMap(({ kind }, index) => (of === "every section" || of.includes(kind) ? [index] : []));
}

function entryOf(rule: Rule, unit: Unit, index: number, profile: Profile, waivers: readonly Waiver[]): Entry {
  const limit = profile.limits.get(rule.id);
  const section = unit.sections[index]?.name ?? "unit";
  return {
    rule,
    index,
    section,
    own: limit && { ...limit, profile: profile.name },
    decides: limit !== undefined || profile.also.has(rule.id) || mayDecide(rule),
    waiver: waivers.find((each) => each.rule === rule.id && (each.section ?? section) === section),
  };
}

/** Room for what comes of the judge's entries. */
export function createTally(judge: Judge): Tally {
  const count = judge.entries.length;
  return {
    margin: new Float64Array(count).fill(Number.POSITIVE_INFINITY),
    value: new Float64Array(count),
    limit: new Float64Array(count),
    at: new Int32Array(count).fill(-1),
    told: new Int32Array(count),
    missed: new Int32Array(count),
    unknown: new Int32Array(count),
    firstUnknown: new Int32Array(count).fill(-1),
  };
}

/** Which rules a rating is asked; `isExcess` where it is the flow that can occur and not the one that is wanted. */
export function askedOf(rating: UnitRating, isExcess: boolean): Asked {
  if (rating.condition.flow.mode === "fan stopped") return "stopped";
  return isExcess ? "largest flow" : "running";
}

/**
 * Judges a solved rating by every rule that looks at ratings, and adds what comes of it to the tally under the number
 * `place`: a condition's, an hour's. It allocates nothing.
 */
export function judgeRating(judge: Judge, rating: UnitRating, asked: Asked, place: number, tally: Tally): void {
  const { at, unit } = judge;
  const list = judge.asked[asked];
  at.rating = rating;
  for (let number = 0; number < list.length; number++) {
    const { rule, index, limit: fixed, place: entry } = list[number]!;
    at.index = index;
    if (index >= 0) {
      at.design = unit.sections[index]!.design;
      at.record = rating.sections[index] as SectionRating;
    }
    const value = rule.value(at);
    if (value === undefined) continue;
    const limit = fixed ?? (rule.limit as (at: RatedSection) => number)(at);
    addToTally(tally, entry, rule, value, limit, place);
  }
}

/** Rounding that does not count as missing a limit. */
const grace = 1e-9;

/** Adds one judgement to the tally. */
export function addToTally(tally: Tally, entry: number, rule: Rule, value: number, limit: number, place: number): void {
  const margin = marginOf(value, limit, rule.sense, rule.quantity, rule.span);
  if (Number.isNaN(margin)) {
    if (tally.unknown[entry] === 0) tally.firstUnknown[entry] = place;
    tally.unknown[entry]!++;
    return;
  }
  tally.told[entry]!++;
  if (margin < -grace) tally.missed[entry]!++;
  if (margin >= tally.margin[entry]!) return;
  tally.margin[entry] = margin;
  tally.value[entry] = value;
  tally.limit[entry] = limit;
  tally.at[entry] = place;
}
