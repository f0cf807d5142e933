import { absorptionDistance } from "#component/steam-dispersion";
import type { SteamSupply } from "#duty/condition";
import { relativeHumidityFromHumidityRatio } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { steamLiquidEnthalpy, steamVapourEnthalpy } from "#fluid/steam";
import { findRoot } from "#numerics/find-root";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { SectionCondition, SectionRating } from "../contract.ts";
import { settleDryBulb } from "../settle-state.ts";
import { absolutePressure, actualAirflow, airDensity, beginRating, endRating, enthalpyFlow } from "../station.ts";
import type { SteamHumidifierDesign } from "./design.ts";

/** What held the humidifier back, if anything. */
export type HumidifierLimit = "none" | "capacity" | "saturation" | "no steam";

/** A humidifier at a condition. */
export interface SteamHumidifierRating extends SectionRating {
  density: number;
  /** kg/s: into the air, taken from the supply, condensed in the tubes and drained. */
  steamToAir: number;
  steamUsed: number;
  condensate: number;
  /** J/kg of the steam, and of what a kilogram that condenses in the tubes gives up. */
  steamEnthalpy: number;
  condensingHeat: number;
  /** kg/kg asked for (what came in when nothing is asked), and after the tubes. */
  wantedHumidityRatio: number;
  humidityRatio: number;
  /** Share of saturation after the tubes. */
  relativeHumidity: number;
  /** m behind the tubes until the steam is taken up. */
  absorptionDistance: number;
  limit: HumidifierLimit;
}

const atRest = recordAtRest<SteamHumidifierRating>({
  ...createSectionRating(),
  density: 0,
  steamToAir: 0,
  steamUsed: 0,
  condensate: 0,
  steamEnthalpy: 0,
  condensingHeat: 0,
  wantedHumidityRatio: 0,
  humidityRatio: 0,
  relativeHumidity: 0,
  absorptionDistance: 0,
  limit: "none",
});

/** A record to be filled. */
export function createSteamHumidifierRating(): SteamHumidifierRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Rates the humidifier: steam up to what is wanted, what valve and panel pass, and what the air takes up. */
export function rateSteamHumidifier(
  design: SteamHumidifierDesign,
  air: Air,
  at: SectionCondition,
  out: SteamHumidifierRating,
): void {
  beginRating(air, out);
  out.density = airDensity(air);
  out.faceVelocity = actualAirflow(air) / design.faceArea;
  out.totalPressureLoss = design.dispersion.lossCoefficient * 0.5 * out.density * out.faceVelocity * out.faceVelocity;
  out.wantedHumidityRatio = at.operation.humidifierLeaving ?? air.humidityRatio;
  out.steamToAir = 0;
  out.steamEnthalpy = 0;
  out.condensingHeat = 0;
  out.limit = "none";
  const wanted = (out.wantedHumidityRatio - air.humidityRatio) * air.dryAirFlow;
  const { steam } = at.condition.utilities;
  if (wanted > 0) {
    if (steam === undefined || !at.operation.fansRunning) out.limit = "no steam";
    else addSteam(design, air, steam, wanted, out);
  }
  const { condensingShare, tubeSpacing, turbulence } = design.dispersion;
  out.steamUsed = out.steamToAir / (1 - condensingShare);
  out.condensate = out.steamUsed - out.steamToAir;
  const { leaving } = out;
  leaving.coldestFilament = Math.min(leaving.dryBulb, air.coldestFilament + Math.max(0, leaving.dryBulb - air.dryBulb));
  endRating(out, design.cabinetArea);
  out.humidityRatio = leaving.humidityRatio;
  const pressure = absolutePressure(leaving);
  out.relativeHumidity = relativeHumidityFromHumidityRatio(leaving.dryBulb, leaving.humidityRatio, pressure);
  out.absorptionDistance = absorptionDistance(
    tubeSpacing,
    turbulence,
    leaving.humidityRatio - air.humidityRatio,
    saturationHumidityRatio(leaving.dryBulb, pressure) - air.humidityRatio,
  );
}

function addSteam(
  design: SteamHumidifierDesign,
  air: Air,
  steam: SteamSupply,
  wanted: number,
  out: SteamHumidifierRating,
): void {
  out.steamEnthalpy = steamVapourEnthalpy(steam.pressure);
  // Steam is throttled to the tubes without loss of enthalpy; what condenses there leaves at the return's pressure.
  out.condensingHeat = out.steamEnthalpy - steamLiquidEnthalpy(steam.condensateReturnPressure);
  const most = Math.min(wanted, design.capacity);
  const highest = design.dispersion.highestRelativeHumidity;
  const excess = (flow: number): number => humidityWith(design, air, flow, out) - highest;
  let flow = most;
  out.limit = most < wanted ? "capacity" : "none";
  if (excess(most) > 0) {
    flow = excess(0) >= 0 ? 0 : findRoot(excess, 0, most, 1e-13 * most);
    out.limit = "saturation";
  }
  humidityWith(design, air, flow, out);
}

/** Sets the leaving state with `flow` kg/s of steam in the air; gives its relative humidity. */
function humidityWith(design: SteamHumidifierDesign, air: Air, flow: number, out: SteamHumidifierRating): number {
  const { leaving } = out;
  const { condensingShare } = design.dispersion;
  out.steamToAir = flow;
  out.waterToAir = flow;
  out.waterEnthalpyToAir = flow * out.steamEnthalpy;
  out.heatToAir = (flow * condensingShare * out.condensingHeat) / (1 - condensingShare);
  leaving.humidityRatio = air.humidityRatio + flow / air.dryAirFlow;
  leaving.freeLiquid = air.freeLiquid;
  const melted = settleDryBulb(leaving, enthalpyFlow(air) + out.waterEnthalpyToAir + out.heatToAir);
  out.waterToAir -= melted;
  return relativeHumidityFromHumidityRatio(leaving.dryBulb, leaving.humidityRatio, absolutePressure(air));
}
