import { createSteamPerformance, createSteamWork, solveSteamCoil } from "#component/coil/steam-coil";
import { longestWait } from "#component/coil/time-to-freeze";
import { airSideCorrelations } from "#component/finned-surface/correlation";
import { inBothUnits } from "../both-units.ts";
import type { Note } from "../contract.ts";
import type { CoilBlock } from "./block.ts";
import { freezeNotes, waited } from "./freeze.ts";
import { freezestatNotes } from "./freezestat.ts";
import { leastLeg, type SteamCoilFigures, type SteamPiping } from "./steam.ts";

/** K by which a set point counts as held. */
export const heatingHeld = 0.05;

/** Notes about drainage, freezing and method that coils on steam share. */
export function steamCoilNotes(
  { block, dropLeg, vacuumBreaker }: SteamPiping,
  airFlow: number,
  rating: SteamCoilFigures,
  fansRunning: boolean,
): Note[] {
  const notes: Note[] = [...freezeNotes("steam fails", rating), ...freezestatNotes(rating, fansRunning)];
  const freezing = rating.entering.coldestFilament < 0;
  if (rating.stalled === 1) {
    notes.push({
      what: freezing
        ? "stalled: steam cannot push its condensate out, and the air that enters is freezing; tubes burst"
        : "stalled: steam cannot push its condensate out; tubes flood, hammer and corrode",
      weight: "caution",
      source: "steam-stall-example",
    });
  }
  if (rating.capacity > 0 && rating.activeShare < 1) {
    notes.push({
      what: `the vacuum breaker stands open and ${Math.round(100 * rating.activeShare)} % of the surface is active: one end leaves warm, the other as it entered`,
      weight: freezing ? "caution" : "information",
    });
  }
  if (rating.capacity > 0 && rating.entering.coldestFilament < 1.7 && rating.steamGaugePressure < 34_000) {
    notes.push({
      what: "air below 35 °F asks for 5 psig in the coil at all times: full steam with face and bypass, not a throttled valve",
      weight: "caution",
      source: "steam-coil-guide",
    });
  }
  if (rating.capacity > 0) notes.push(...exposureNotes(rating));
  if (rating.iceAsItStands < longestWait && rating.iceAsItStands > 0) {
    notes.push({
      what: `condensate that stands in tubes without steam, at ${inBothUnits(rating.condensateTemperature, "temperature")} at first: first ice after ${waited(rating.iceAsItStands)}`,
      weight: "caution",
      source: "derived-here",
    });
  }
  if (dropLeg < leastLeg) {
    notes.push({
      what: "a drop leg of less than 12 in. drains poorly: set the trap lower",
      weight: "caution",
      source: "steam-coil-guide",
    });
  }
  if (!vacuumBreaker) {
    notes.push({
      what: "without a vacuum breaker the coil draws a vacuum as its steam shuts off, and its condensate stays in the tubes",
      weight: "caution",
      source: "steam-coil-guide",
    });
  }
  if (block.stacked > 1 || rating.capacity > 0) {
    notes.push({
      what: "steam burns and presses: traps, relief and piping by local codes and licensed practice; one trap and one vacuum breaker for each coil, pitched to the outlet",
      weight: "information",
      source: "steam-coil-guide",
    });
  }
  if (rating.rangeDistance > 0 && rating.fullCapacity > 0) {
    const { low, high } = steamCapacityBand(block, airFlow, rating);
    notes.push({
      what: `${block.coil.surface.correlation} is used ${percent(rating.rangeDistance)} outside its range; other published routines give ${percent(low)} to ${percent(high)} of this capacity: calibrate on the supplier's table`,
      weight: "caution",
    });
  }
  return notes;
}

/** The entering air between which condensate can stand in tubes that see freezing air, at this airflow and set point. */
function exposureNotes(rating: SteamCoilFigures): Note[] {
  const notes: Note[] = [];
  const to = `${inBothUnits(0, "temperature")} entering air, at this airflow and set point`;
  if (rating.stallAirTemperature < Math.min(0, rating.leavingDryBulb)) {
    notes.push({
      what: `condensate can stand in freezing tubes from ${inBothUnits(rating.stallAirTemperature, "temperature")} to ${to}`,
      weight: "caution",
      source: "steam-stall-example",
    });
  } else if (rating.breakerAirTemperature < Math.min(0, rating.leavingDryBulb)) {
    notes.push({
      what: `the vacuum breaker stands open, and part of the tubes is as cold as the air, from ${inBothUnits(rating.breakerAirTemperature, "temperature")} to ${to}`,
      weight: "caution",
      source: "steam-stall-example",
    });
  }
  return notes;
}

/** Capacity with the valve open by other published correlations, as shares of the rating's. */
export function steamCapacityBand(
  block: CoilBlock,
  airFlow: number,
  rating: SteamCoilFigures,
): { readonly low: number; readonly high: number } {
  const work = createSteamWork();
  const out = createSteamPerformance();
  const { dryBulb, humidityRatio, coldestFilament } = rating.entering;
  const heat = (correlation: string): number => {
    const coil = { ...block.coil, surface: { ...block.coil.surface, correlation, tested: undefined } };
    solveSteamCoil(coil, airFlow, dryBulb, humidityRatio, coldestFilament, rating.supplySteamTemperature, work, out);
    return out.heat;
  };
  const own = heat(block.coil.surface.correlation);
  const rivals = ["Wang-Chi-Chang 2000", "Gray-Webb 1986", "circular fins 1984"];
  const shares = airSideCorrelations.filter(({ name }) => rivals.includes(name)).map(({ name }) => heat(name) / own);
  return { low: Math.min(...shares), high: Math.max(...shares) };
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
