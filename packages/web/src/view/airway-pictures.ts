import type { Arrangement } from "@oncethrough/engine/arrangement/arrange";
import { type AirwayAxis, airwayAxis } from "@oncethrough/engine/chart/airway-axis";
import { type ProfileList, profiles } from "@oncethrough/engine/chart/profiles";
import { elevation, type SectionPictures } from "@oncethrough/engine/drawing/elevation";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import type { DisplayList } from "@oncethrough/engine/section/display";
import type { UnitRating } from "@oncethrough/engine/unit/rating";
import { choiceOf, conditionSets } from "#state/condition-choices";
import type { SoundJob } from "#state/sound-job";

/** px: room for the profiles' scales at the left; what stands on the page besides the cabinet. */
const gutter = 52;
const besidesCabinet = 580;
const leastCabinet = 180;

/**
 * The axis that elevation and profiles share on a page so wide; on a page so high the cabinet is drawn no taller than
 * leaves room for the profiles.
 */
export function pageAxis(sound: SoundJob, width: number, pageHeight: number): AirwayAxis {
  const { unit } = sound.job;
  const tallest = Math.max(leastCabinet, pageHeight - besidesCabinet);
  return airwayAxis(unit, width, gutter, tallest / (1000 * unit.frame.height));
}

/** The elevation of the job's unit. */
export function elevationOf(
  { job }: SoundJob,
  arrangement: Arrangement,
  axis: AirwayAxis,
  system: UnitSystem,
  picked: string | undefined,
  pictures: SectionPictures,
): DisplayList {
  const named = picked === undefined ? {} : { picked };
  return elevation(job.unit, arrangement, { axis, system, pictures, ...named });
}

/** The profiles at a rating, with the lightest and heaviest filter loading of the same day as ghosts. */
export function profilesOf(sound: SoundJob, rating: UnitRating, axis: AirwayAxis, system: UnitSystem): ProfileList {
  const choice = choiceOf(conditionSets(sound.job.conditions), rating.condition.key);
  const others = [choice?.loadings.at(0), choice?.loadings.at(-1)].filter((each) => each !== undefined);
  const ghosts = others.flatMap(({ key, loading }) => {
    const ghost = key === rating.condition.key ? undefined : sound.book.rating(key);
    return ghost === undefined ? [] : [{ words: loading === 0 ? "filters clean" : "at change-out", rating: ghost }];
  });
  return profiles(sound.job.unit, rating, { axis, system, ghosts });
}
