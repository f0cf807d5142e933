import { copyAir, createAir } from "#section/air";
import type { SectionKind, SectionRating, Shortfall } from "#section/contract";
import { rateSection } from "#section/rate-section";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import type { DraftValue } from "./draft.ts";
import { builtSection, type Solved, type Workroom } from "./workroom.ts";

/** Index of a section of the unit by its name. */
export function indexOf(unit: Unit, name: string): number {
  return unit.sections.findIndex((section) => section.name === name);
}

/** Ratings at which the fan runs and a balance was found. */
export function runningRatings({ ratings }: Solved, season?: "cooling" | "heating"): readonly UnitRating[] {
  return ratings.filter(
    (rating) =>
      rating.solved && rating.operation.fansRunning && (season === undefined || rating.condition.season === season),
  );
}

/** What a section built otherwise does with the very air and set points that the one in the unit met. */
export interface Trial<Rating extends SectionRating> {
  readonly rating: Rating;
  readonly shortfalls: readonly Shortfall[];
}

/** Rates a section with other values where it stands; undefined when they do not make one. As it is built it is not rated again. */
export function tryValues<Rating extends SectionRating>(
  room: Workroom,
  solved: Solved,
  index: number,
  values: Readonly<Record<string, DraftValue>>,
  ratings: readonly UnitRating[],
): readonly Trial<Rating>[] | undefined {
  const { behaviour, design: present } = solved.unit.sections[index]!;
  if (JSON.stringify(values) === solved.built[index])
    return ratings.map((rating) => read(behaviour, present, rating, index));
  const design = builtSection(room, behaviour, values, solved.unit.frame);
  return design === undefined ? undefined : ratings.map((rating) => tryDesign(behaviour, design, rating, index));
}

/** What the section of the unit itself came to. */
function read<Rating extends SectionRating>(
  kind: SectionKind,
  design: unknown,
  { sections, condition, operation }: UnitRating,
  index: number,
): Trial<Rating> {
  const rating = sections[index] as Rating;
  return { rating, shortfalls: kind.shortfalls?.(design, rating, { condition, operation }) ?? [] };
}

function tryDesign<Rating extends SectionRating>(
  kind: SectionKind,
  design: unknown,
  at: UnitRating,
  index: number,
): Trial<Rating> {
  const entering = copyAir(at.sections[index]!.entering, createAir());
  const condition = { condition: at.condition, operation: at.operation };
  const rating = kind.createRating() as Rating;
  rateSection(kind, design, entering, condition, rating);
  return { rating, shortfalls: kind.shortfalls?.(design, rating, condition) ?? [] };
}
