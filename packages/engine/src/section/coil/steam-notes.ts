import { longestWait } from "#component/coil/time-to-freeze";
import { metresPerInch } from "#quantity/inch-pound";
import type { Air } from "../air.ts";
import { inBothUnits } from "../both-units.ts";
import type { Note } from "../contract.ts";
import type { CoilBlock } from "./block.ts";
import type { InnerTubes } from "./distributor.ts";
import { freezeNotes, waited } from "./freeze.ts";
import { freezestatNotes } from "./freezestat.ts";
import { bandWords, type CorrelationBand, steamCoilBand } from "./rivals.ts";
import { createCoilInlet, setInletAir } from "./state.ts";
import { leastLeg, type SteamCoilFigures, type SteamPiping } from "./steam.ts";

/** K by which a set point counts as held. */
export const heatingHeld = 0.05;

/** Notes about drainage, freezing and method that coils on steam share. */
export function steamCoilNotes(
  { block, inner, dropLeg, vacuumBreaker }: SteamPiping,
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
  if (rating.capacity > 0 && rating.entering.coldestFilament < 1.7 && rating.connectionGaugePressure < 34_000) {
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
  notes.push(...distributorNotes(inner, rating), ...certifiedNotes(rating));
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
  const band = steamBand(block, airFlow, rating);
  if (band !== undefined) {
    notes.push({
      what: `${bandWords(band)}: calibrate on the supplier's table`,
      weight: band.heatDistance > 0 ? "caution" : "information",
    });
  }
  return notes;
}

/** Customary ranges in which steam coils are certified, SI: air, face, gauge pressure of the steam. */
const certified = { air: [-28.9, 37.8], face: [1.016, 7.62], steam: [13_790, 1_723_700] } as const;

function certifiedNotes({ capacity, entering, faceVelocity, connectionGaugePressure }: SteamCoilFigures): Note[] {
  const within = (value: number, [low, high]: readonly [number, number]) =>
    value >= low - 0.06 && value <= high * 1.0001 + 0.06;
  const isInside =
    capacity === 0 ||
    (within(entering.dryBulb, certified.air) &&
      within(faceVelocity, certified.face) &&
      within(connectionGaugePressure, certified.steam));
  if (isInside) return [];
  return [
    {
      what: "outside the ranges in which steam coils are customarily certified (air -20–100 °F, 200–1500 fpm; steam 2–250 psig at the coil)",
      weight: "information",
      source: "from-memory",
    },
  ];
}

/** Unevenness that ten times as much over the orifices as along the tube leaves; share of the pressure that they may take. */
const evenEnough = 0.055;
const mostOfPressure = 0.1;
/** m: the widest pitch of orifices that guides name. */
const widestPitch = 12 * metresPerInch;

/** Whether the inner tubes spread the steam at this load, and leave the coil its pressure. */
function distributorNotes({ orificePitch, distributor }: InnerTubes, rating: SteamCoilFigures): Note[] {
  const notes: Note[] = [];
  if (orificePitch > widestPitch * 1.001) {
    notes.push({
      what: `orifices every ${inBothUnits(orificePitch, "length")}: guides ask for 9 to 12 in.`,
      weight: "information",
      source: "steam-coil-guide",
    });
  }
  if (!(rating.capacity > 0)) return notes;
  if (rating.orificeUnevenness > evenEnough) {
    const short = Math.round(100 * rating.orificeUnevenness);
    notes.push({
      what: `at this load the inner tubes spread the steam unevenly: the least of ${distributor.orifices} orifices gets ${short} % less than the most; smaller orifices or a wider inner tube even it out`,
      weight: "caution",
      source: "perry-handbook-1997 from memory",
    });
  }
  if (rating.distributorLoss > mostOfPressure * rating.steamPressure) {
    notes.push({
      what: `inner tubes and orifices take ${inBothUnits(rating.distributorLoss, "pressureDifference")} off the steam's pressure, and with it off its temperature: larger orifices, or more of them`,
      weight: "caution",
      source: "derived-here",
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

/** What published correlations make of one coil with the valve open, at `airFlow` kg/s of its own. */
export function steamBand(block: CoilBlock, airFlow: number, rating: SteamCoilFigures): CorrelationBand | undefined {
  const inlet = createCoilInlet();
  setInletAir(block, rating.entering as Air, inlet);
  inlet.dryAirFlow = airFlow;
  return rating.fullCapacity > 0 ? steamCoilBand(block.coil, inlet, rating.supplySteamTemperature) : undefined;
}
