import { createAir } from "./air.ts";
import type { SectionRating } from "./contract.ts";

/** What every rating begins with, to be spread into a kind's own record. */
export function createSectionRating(): SectionRating {
  return {
    entering: createAir(),
    leaving: createAir(),
    totalPressureLoss: 0,
    heatToAir: 0,
    waterToAir: 0,
    waterEnthalpyToAir: 0,
    faceVelocity: 0,
  };
}

/**
 * The record that a kind's own ones are copied from: `{ ...atRest, entering: createAir(), leaving: createAir() }` takes some
 * microseconds, putting one together figure by figure some hundred times as long. Each figure is a fraction once, as it
 * will be: a record that begins with whole numbers has its figures laid out anew when the first fraction comes.
 */
export function recordAtRest<Rating extends SectionRating>(record: Rating): Readonly<Rating> {
  const figures = record as unknown as Record<string, unknown>;
  for (const [name, figure] of Object.entries(record)) {
    if (typeof figure !== "number") continue;
    figures[name] = 0.5;
    figures[name] = figure;
  }
  return record;
}
