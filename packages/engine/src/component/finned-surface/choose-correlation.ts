import { type AirSideCorrelation, airSideCorrelations, distanceFromRange, type FinPattern } from "./correlation.ts";
import type { FinnedBank } from "./finned-bank.ts";

/** m/s of standard air in the face at which a correlation is chosen: the middle of customary coils. */
const customaryVelocity = 2.5;
const standardViscosity = 1.81e-5;
const standardDensity = 1.2;

/**
 * Reynolds number of a bank at the customary face velocity of 2.5 m/s, standard air.
 *
 * @param bank record: the finned bank
 * @returns number: with the collar diameter and the narrowest passage
 * @outside keeps answering
 * @example customaryReynolds({ collarDiameter: 0.0162, freeFlowShare: 0.53 }) // 5066 ± 1
 * @source definition
 */
export function customaryReynolds(bank: FinnedBank): number {
  return (customaryVelocity * standardDensity * bank.collarDiameter) / (bank.freeFlowShare * standardViscosity);
}

/**
 * The published correlation for a bank whose record names none: of those for its fins the one within its range, or nearest
 * to it. Of several alike one read in print comes before one from memory, and a later one, made of more coils, before an
 * earlier. Judged at a customary face velocity, so that a coil keeps its correlation at every airflow.
 *
 * @param pattern choice: how the fin sheet is formed
 * @param bank record: the finned bank
 * @returns record: the correlation
 * @outside always one that is for such fins
 * @example chooseCorrelation("plain", { rows: 8, collarDiameter: 0.0162, finPitch: 0.00212, finThickness: 0.000165, freeFlowShare: 0.53,
 *   transversePitch: 0.0381, longitudinalPitch: 0.033, hydraulicDiameter: 0.0026, outsideArea: 20, bareArea: 1 }).year // 1977
 * @source definition choice
 */
export function chooseCorrelation(pattern: FinPattern, bank: FinnedBank): AirSideCorrelation {
  const reynolds = customaryReynolds(bank);
  let best: AirSideCorrelation | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const each of airSideCorrelations) {
    if (each.pattern !== pattern || each.onlyRival) continue;
    const distance = distanceFromRange(each, bank, reynolds);
    if (best === undefined || distance < least || (distance === least && comesBefore(each, best))) {
      best = each;
      least = distance;
    }
  }
  return best!;
}

function comesBefore(a: AirSideCorrelation, b: AirSideCorrelation): boolean {
  return a.certainty === b.certainty ? a.year > b.year : a.certainty === "published";
}
