import type { SteamPerformance } from "#component/coil/steam-coil";
import { steamConnections } from "#component/coil/steam-connection";
import { createSteamDistribution, steamDistribution } from "#component/coil/steam-distribution";
import { drainTemperature, dropLegPressure, stallAirTemperature } from "#component/coil/steam-side";
import { longestWait } from "#component/coil/time-to-freeze";
import { surfaceDistance } from "#component/finned-surface/family";
import type { SteamSupply } from "#duty/condition";
import type { Liquid } from "#fluid/liquid";
import { steamLatentHeat, steamSaturationPressure, steamSaturationTemperature } from "#fluid/steam";
import { choice, flag, quantity } from "#form/field";
import type { SectionCondition } from "../contract.ts";
import type { CoilBlock } from "./block.ts";
import { distributorFields, type InnerTubes } from "./distributor.ts";
import { type FreezeFigures, noFreezeFigures, setFreezeFigures } from "./freeze.ts";
import { type FreezestatFigures, freezestatFields, noFreezestatFigures, setFreezestat } from "./freezestat.ts";
import { type CoilAirFigures, noCoilAirFigures } from "./state.ts";

/** Fields that coils on steam share. */
export const steamCoilFields = {
  dropLeg: quantity("length", {
    meaning: "Height from the coil's condensate outlet down to the trap",
    default: "14 in",
    minimum: "0 in",
    maximum: "6 ft",
  }),
  vacuumBreaker: flag({ meaning: "A vacuum breaker opens just below atmospheric pressure", default: true }),
  trap: choice(["float and thermostatic", "inverted bucket"], {
    meaning: "Kind of steam trap, one for each coil",
    default: "float and thermostatic",
  }),
  ...freezestatFields,
  ...distributorFields,
} as const;

/** Half a psi, Pa, across the trap; m of leg that no trap should do without. */
const acrossTrap = 3447;
export const leastLeg = 0.305;
/** Fall of tubes to their outlet, 1/8 in. a foot. */
export const fallShare = 1 / 96;

/**
 * Share of the bore that condensate still fills when steam is lost: of a coil that drains through its breaker the film and
 * what sags hold, an assumption; of one that is stalled, or has no breaker and draws its condensate back, all of it.
 */
const drainedFill = 0.05;

/** Pa below the atmosphere at which a swing-check vacuum breaker has opened, ¼ inHg. */
export const vacuumBreakerOpens = 847;

/** What every coil on steam reports. Flows are of all coils of the section together. */
export interface SteamCoilFigures extends CoilAirFigures, FreezeFigures, FreezestatFigures {
  /** W into the air, and with the valve open at this airflow. */
  capacity: number;
  fullCapacity: number;
  loadShare: number;
  /** °C: of the steam at hand; that the load needs with the whole surface active; in the coil. */
  supplySteamTemperature: number;
  neededSteamTemperature: number;
  steamTemperature: number;
  /** Pa absolute in the coil, and against the atmosphere. */
  steamPressure: number;
  steamGaugePressure: number;
  /** kg/s of condensate, and that the traps must pass: load times their factor, at half a psi. */
  condensate: number;
  trapCapacity: number;
  condensateTemperature: number;
  effectiveness: number;
  /** Share of the surface that steam reaches; 1 unless a vacuum breaker lets air in. */
  activeShare: number;
  /** °C of the air behind the active and the inactive part. */
  warmEnd: number;
  coldEnd: number;
  /** 1 when the coil's pressure and the drop leg do not overcome the return: condensate stands in the tubes. */
  stalled: number;
  /**
   * °C of entering air above which that is so at this airflow and set point, and above which the vacuum breaker stands open;
   * the leaving dry bulb, where the load ends, when it is never so.
   */
  stallAirTemperature: number;
  breakerAirTemperature: number;
  /** s to the first ice in condensate that stands now, in tubes that steam does not reach or that flood. */
  iceAsItStands: number;
  /** Pa of the drop leg, m of leg that half a psi across the trap asks for against the return, m that the tubes fall. */
  dropLegHead: number;
  neededDropLeg: number;
  tubeFall: number;
  /**
   * Pa at the coil's connection against the atmosphere; Pa from there into the tubes, over the orifices and along an inner
   * tube; m/s into an inner tube; share by which the orifice that gets least falls short of the one that gets most.
   */
  connectionGaugePressure: number;
  distributorLoss: number;
  orificeDrop: number;
  innerTubeChange: number;
  innerTubeVelocity: number;
  orificeUnevenness: number;
  airReynolds: number;
  finEfficiency: number;
  condensingCoefficient: number;
  rangeDistance: number;
  leavingDryBulb: number;
}

/** Zeros for `SteamCoilFigures`, to be spread. */
export const noSteamCoilFigures = {
  ...noCoilAirFigures,
  ...noFreezeFigures,
  ...noFreezestatFigures,
  capacity: 0,
  fullCapacity: 0,
  loadShare: 0,
  supplySteamTemperature: 0,
  neededSteamTemperature: 0,
  steamTemperature: 0,
  steamPressure: 0,
  steamGaugePressure: 0,
  condensate: 0,
  trapCapacity: 0,
  condensateTemperature: 0,
  effectiveness: 0,
  activeShare: 0,
  warmEnd: 0,
  coldEnd: 0,
  stalled: 0,
  stallAirTemperature: 0,
  breakerAirTemperature: 0,
  iceAsItStands: longestWait,
  dropLegHead: 0,
  neededDropLeg: 0,
  tubeFall: 0,
  connectionGaugePressure: 0,
  distributorLoss: 0,
  orificeDrop: 0,
  innerTubeChange: 0,
  innerTubeVelocity: 0,
  orificeUnevenness: 0,
  airReynolds: 0,
  airCoefficient: 0,
  finEfficiency: 1,
  surfaceEfficiency: 1,
  condensingCoefficient: 0,
  rangeDistance: 0,
  leavingDryBulb: 0,
} as const;

/** What the coil's fields say about its steam side. */
export interface SteamPiping {
  readonly block: CoilBlock;
  readonly inner: InnerTubes;
  readonly dropLeg: number;
  readonly trap: "float and thermostatic" | "inverted bucket";
  readonly vacuumBreaker: boolean;
  readonly freezestat: number;
}

/** What coils on steam are fitted with. */
export function steamFittings({ block, inner, vacuumBreaker }: SteamPiping) {
  const { steam, condensate } = steamConnections(block.coil.bank.faceArea);
  return {
    wet: false,
    connection: steam.diameter,
    condensateConnection: condensate.diameter,
    vacuumBreaker,
    liquid: undefined,
    inner,
  } as const;
}

/** Pressure, condensate, trap and drainage of the steam side from the heat and the steam temperature in the coil. */
export function setSteamSide(
  piping: SteamPiping,
  supply: SteamSupply,
  modulates: boolean,
  out: SteamCoilFigures,
): void {
  const { barometricPressure } = out.entering;
  const { dropLeg } = piping;
  const head = dropLegPressure(dropLeg);
  const back = supply.condensateReturnPressure;
  out.steamPressure = Math.max(1000, steamSaturationPressure(out.steamTemperature));
  out.steamGaugePressure = out.steamPressure - barometricPressure;
  out.condensate = out.capacity / steamLatentHeat(out.steamPressure);
  // Float and thermostatic traps on modulated steam see their load at half a psi with three times in hand, else twice.
  setDistribution(piping, out);
  out.trapCapacity = out.condensate * (modulates || piping.trap === "inverted bucket" ? 3 : 2);
  out.condensateTemperature = steamSaturationTemperature(out.steamPressure);
  out.neededDropLeg = neededDropLeg(out.steamPressure, back);
  out.stalled = out.capacity > 0 && out.steamPressure + head <= back ? 1 : 0;
  const lowest = barometricPressure - vacuumBreakerOpens;
  const neverStalls = piping.vacuumBreaker && lowest + head > back;
  if (!modulates) {
    // Steam stays as it is while it is on: the load does not move its pressure, so that no entering air makes the coil stall.
    const never = Math.max(out.entering.dryBulb, out.supplySteamTemperature);
    out.stallAirTemperature = out.stalled === 1 ? out.entering.dryBulb : never;
    out.breakerAirTemperature = never;
    return;
  }
  const { leavingDryBulb, effectiveness } = out;
  const onset = (temperature: number) => stallAirTemperature(leavingDryBulb, effectiveness, temperature);
  out.stallAirTemperature = neverStalls ? leavingDryBulb : onset(drainTemperature(back, dropLeg));
  out.breakerAirTemperature = piping.vacuumBreaker ? onset(steamSaturationTemperature(lowest)) : leavingDryBulb;
}

/** How the steam that condenses now gets into the tubes. */
function setDistribution({ block, inner }: SteamPiping, out: SteamCoilFigures): void {
  const found = createSteamDistribution();
  steamDistribution(inner.distributor, out.condensate / block.stacked, out.steamPressure, found);
  out.distributorLoss = found.loss;
  out.orificeDrop = found.orificeDrop;
  out.innerTubeChange = found.alongTube;
  out.innerTubeVelocity = found.velocity;
  out.orificeUnevenness = found.unevenness;
  out.connectionGaugePressure = out.steamGaugePressure + found.loss;
}

/** m of leg that pushes condensate through the trap with half a psi to spare, 12 in. at least. */
function neededDropLeg(steamPressure: number, returnPressure: number): number {
  return Math.max(leastLeg, (returnPressure + acrossTrap - steamPressure) / dropLegPressure(1));
}

/**
 * Coldest condensate, times to freeze and freezestat, once steam side and air stand. `airShare` of the section's air passes
 * the tubes when steam is lost.
 */
export function setSteamFreeze(
  piping: SteamPiping,
  supply: SteamSupply | undefined,
  airShare: number,
  at: SectionCondition,
  out: SteamCoilFigures,
): void {
  const { coldestFilament } = out.entering;
  const isOn = out.capacity > 0;
  const reachesAll = isOn && out.stalled === 0 && out.activeShare === 1;
  out.tubeFall = fallShare * piping.block.coil.finnedLength;
  out.dropLegHead = dropLegPressure(piping.dropLeg);
  out.freezePoint = 0;
  out.coldestFluid = reachesAll ? out.condensateTemperature : Math.min(out.condensateTemperature, coldestFilament);
  const fill = out.stalled === 1 || !piping.vacuumBreaker ? 1 : drainedFill;
  const temperature = isOn ? out.condensateTemperature : coldestFilament;
  const staysWithoutFan = supply?.valveFails === "open";
  setFreezeFigures(piping.block, { liquid: condensateWater, fill, temperature, airShare, staysWithoutFan }, at, out);
  out.iceAsItStands = isOn && !reachesAll ? out.iceAfterFlowLoss : longestWait;
  setFreezestat(piping.block, piping.freezestat, out);
}

/** What stands in the tubes of a coil on steam. */
const condensateWater: Liquid = { substance: "water", massFraction: 0 };

/** Figures of the air side from the performance. */
export function setSteamAirFigures(block: CoilBlock, performance: SteamPerformance, out: SteamCoilFigures): void {
  out.effectiveness = performance.effectiveness;
  out.airReynolds = performance.airReynolds;
  out.airCoefficient = performance.airCoefficient;
  out.finEfficiency = performance.finEfficiency;
  out.surfaceEfficiency = performance.surfaceEfficiency;
  out.condensingCoefficient = performance.condensingCoefficient;
  const { surface, bank } = block.coil;
  out.rangeDistance = performance.airReynolds > 0 ? surfaceDistance(surface, bank, performance.airReynolds) : 0;
}

/** A coil that steam does not reach: it passes the air as it is. */
export function shutOff(out: SteamCoilFigures): void {
  const { dryBulb, coldestFilament, barometricPressure } = out.entering;
  out.capacity = 0;
  out.loadShare = 0;
  out.steamTemperature = dryBulb;
  out.steamPressure = barometricPressure;
  out.steamGaugePressure = 0;
  out.condensate = 0;
  out.trapCapacity = 0;
  out.condensateTemperature = dryBulb;
  out.activeShare = 0;
  out.warmEnd = dryBulb;
  out.coldEnd = dryBulb;
  out.stalled = 0;
  out.stallAirTemperature = dryBulb;
  out.breakerAirTemperature = dryBulb;
  out.connectionGaugePressure = 0;
  out.distributorLoss = 0;
  out.orificeDrop = 0;
  out.innerTubeChange = 0;
  out.innerTubeVelocity = 0;
  out.orificeUnevenness = 0;
  out.neededDropLeg = leastLeg;
  out.coldestTubeWall = coldestFilament;
}
