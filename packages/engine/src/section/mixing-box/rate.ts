import { angleFromLoss } from "#component/damper";
import { density, enthalpyFromHumidityRatio, specificVolume } from "#fluid/moist-air";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { MixingRating, SectionCondition } from "../contract.ts";
import { type DamperPart, damperBladeLoss, damperTorque } from "../damper-part.ts";
import { settleDryBulb, settleState } from "../settle-state.ts";
import { actualAirflow, airDensity, beginRating, enthalpyFlow, settleStaticPressure, waterFlow } from "../station.ts";
import type { MixingBoxDesign, ReturnOpening } from "./design.ts";

/** A mixing box at a condition. */
export interface MixingBoxRating extends MixingRating {
  /** Share of outside air in what leaves, by dry air. */
  outsideAirShare: number;
  /** Outside damper: m/s in its face, kg/m³, degrees from closed, loss on the face velocity, Pa. */
  outsideVelocity: number;
  outsideDensity: number;
  outsideBladeAngle: number;
  outsideBladeLoss: number;
  outsideLoss: number;
  outsideTorque: number;
  /** The same for the return damper; the velocity is negative when air leaves through the return opening. */
  returnVelocity: number;
  returnDensity: number;
  returnBladeAngle: number;
  returnBladeLoss: number;
  returnLoss: number;
  returnTorque: number;
  /** Pa against the surroundings: total pressure in the return opening before its damper. */
  returnTotalPressure: number;
  /** °C: of the return air, and of the coldest filament behind the box. */
  returnDryBulb: number;
  coldestFilament: number;
  /** kg/s of moisture that became fog by mixing. */
  fog: number;
}

const atRest = recordAtRest<MixingBoxRating>({
  ...createSectionRating(),
  returnDryAirFlow: 0,
  returnWaterFlow: 0,
  returnEnthalpyFlow: 0,
  returnImbalance: 0,
  outsideAirShare: 1,
  outsideVelocity: 0,
  outsideDensity: 0,
  outsideBladeAngle: 0,
  outsideBladeLoss: 0,
  outsideLoss: 0,
  outsideTorque: 0,
  returnVelocity: 0,
  returnDensity: 0,
  returnBladeAngle: 0,
  returnBladeLoss: 0,
  returnLoss: 0,
  returnTorque: 0,
  returnTotalPressure: 0,
  returnDryBulb: 0,
  coldestFilament: 0,
  fog: 0,
});

/** A record to be filled. */
export function createMixingBoxRating(): MixingBoxRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/**
 * Rates the box for the return flow that the unit has set: both dampers, what pressure the return path has to spare, and
 * the mixture. The return flow may be negative: air that leaves the box backwards through the return opening.
 */
export function rateMixingBox(design: MixingBoxDesign, air: Air, at: SectionCondition, out: MixingBoxRating): void {
  beginRating(air, out);
  // Blades that are locked by hand have nobody to close them when the fan stops.
  const isClosed = at.operation.dampers === "closed" && design.control === "actuated";
  rateOutside(design, air, isClosed, out);
  const plenum = air.totalPressure - out.outsideLoss;
  out.totalPressureLoss = out.outsideLoss;
  out.returnDryAirFlow = 0;
  out.returnWaterFlow = 0;
  out.returnEnthalpyFlow = 0;
  out.returnImbalance = 0;
  if (design.returnOpening !== undefined) {
    out.returnDryAirFlow = at.operation.returnDryAirFlow;
    rateReturn(design, design.returnOpening, air, at, plenum, isClosed, out);
  }
  mix(design, air, at, plenum, out);
}

function rateOutside(design: MixingBoxDesign, air: Air, isClosed: boolean, out: MixingBoxRating): void {
  const { outside } = design;
  out.outsideDensity = airDensity(air);
  out.outsideVelocity = actualAirflow(air) / outside.area;
  out.faceVelocity = out.outsideVelocity;
  out.outsideBladeAngle = isClosed ? 0 : outside.bladeAngle;
  out.outsideBladeLoss = damperBladeLoss(outside, out.outsideBladeAngle);
  out.outsideLoss =
    (out.outsideBladeLoss + design.wallLoss) * 0.5 * out.outsideDensity * out.outsideVelocity * out.outsideVelocity;
  out.outsideTorque = damperTorque(outside);
}

function rateReturn(
  design: MixingBoxDesign,
  opening: ReturnOpening,
  air: Air,
  { condition, operation }: SectionCondition,
  plenum: number,
  isClosed: boolean,
  out: MixingBoxRating,
): void {
  const { part } = opening;
  const flow = out.returnDryAirFlow;
  const isInward = flow >= 0;
  const { dryBulb, humidityRatio, staticPressure } = condition.returnAir;
  const pressure = condition.barometricPressure + staticPressure;
  out.returnDensity = isInward ? density(dryBulb, humidityRatio, pressure) : out.outsideDensity;
  const volume = isInward
    ? specificVolume(dryBulb, humidityRatio, pressure)
    : specificVolume(air.dryBulb, air.humidityRatio, air.barometricPressure + air.staticPressure);
  out.returnVelocity = (flow * volume) / part.area;
  const velocityPressure = 0.5 * out.returnDensity * out.returnVelocity * out.returnVelocity;
  out.returnTotalPressure = staticPressure + velocityPressure;
  const spare = out.returnTotalPressure - plenum;
  const fixedLoss = isInward ? opening.inwardLoss : opening.outwardLoss;
  out.returnBladeAngle = isClosed
    ? 0
    : returnAngle(design, part, operation.returnDamperStop, spare, velocityPressure, fixedLoss);
  out.returnBladeLoss = damperBladeLoss(part, out.returnBladeAngle);
  out.returnLoss = (isInward ? 1 : -1) * (out.returnBladeLoss + fixedLoss) * velocityPressure;
  out.returnImbalance = spare - out.returnLoss;
  out.returnTorque = damperTorque(part);
}

/** Degrees from closed: as set by hand, at the end stop, or where an actuator holds the flow. */
function returnAngle(
  design: MixingBoxDesign,
  part: DamperPart,
  stop: "none" | "open" | "closed",
  spare: number,
  velocityPressure: number,
  fixedLoss: number,
): number {
  if (design.control === "hand set") return part.bladeAngle;
  if (stop !== "none") return stop === "open" ? 90 : 0;
  return angleThatHolds(part.damper.curve, spare, velocityPressure, fixedLoss);
}

/** Blade angle at which the return damper takes what the return path has to spare; its ends where it cannot. */
function angleThatHolds(
  curve: Parameters<typeof angleFromLoss>[0],
  spare: number,
  velocityPressure: number,
  fixedLoss: number,
): number {
  if (velocityPressure === 0) return 0;
  const wanted = spare / velocityPressure - fixedLoss;
  return wanted > 0 ? angleFromLoss(curve, wanted) : 90;
}

/** Mixes the streams: dry air, water and energy exact, fog where the mixture cannot hold its moisture. */
function mix(design: MixingBoxDesign, air: Air, at: SectionCondition, plenum: number, out: MixingBoxRating): void {
  const { leaving } = out;
  const flow = out.returnDryAirFlow;
  const { dryBulb, humidityRatio } = at.condition.returnAir;
  leaving.totalPressure = plenum;
  leaving.dryAirFlow = air.dryAirFlow + flow;
  out.outsideAirShare = flow > 0 ? air.dryAirFlow / leaving.dryAirFlow : 1;
  const share = flow > 0 ? out.outsideAirShare : 1;
  leaving.peakToMeanVelocity = Math.max(1, (share * design.cabinetArea) / design.outside.area);
  out.fog = 0;
  if (flow > 0) {
    out.returnWaterFlow = flow * humidityRatio;
    out.returnEnthalpyFlow = flow * enthalpyFromHumidityRatio(dryBulb, humidityRatio);
    const enthalpy = enthalpyFlow(air) + out.returnEnthalpyFlow;
    const vapour = (air.dryAirFlow * air.humidityRatio + out.returnWaterFlow) / leaving.dryAirFlow;
    leaving.humidityRatio = vapour;
    settleDryBulb(leaving, enthalpy);
    leaving.freeLiquid = air.freeLiquid;
    settleStaticPressure(leaving, design.cabinetArea);
    const melted = settleState(leaving, enthalpy, vapour);
    out.waterToAir -= melted;
    out.fog = (vapour - leaving.humidityRatio) * leaving.dryAirFlow;
  } else if (flow < 0) {
    leaving.freeLiquid = (air.freeLiquid * leaving.dryAirFlow) / air.dryAirFlow;
    out.returnWaterFlow = waterFlow(leaving) - waterFlow(air);
    out.returnEnthalpyFlow = enthalpyFlow(leaving) - enthalpyFlow(air);
  }
  settleStaticPressure(leaving, design.cabinetArea);
  out.returnDryBulb = dryBulb;
  leaving.coldestFilament = filamentBehind(design.mixingEffectiveness, air, flow > 0, dryBulb, leaving.dryBulb);
  out.coldestFilament = leaving.coldestFilament;
}

/**
 * Coldest filament behind the box. The cold stream's filament is warmed by the effectiveness times what its stream is
 * warmed on the mean; it never lies below the coldest that came in nor above the mean.
 */
export function filamentBehind(
  effectiveness: number,
  air: Air,
  isMixed: boolean,
  returnDryBulb: number,
  mixed: number,
): number {
  if (!isMixed) return air.coldestFilament;
  const outside = air.coldestFilament + effectiveness * (mixed - air.dryBulb);
  const back = returnDryBulb + effectiveness * (mixed - returnDryBulb);
  const coldest = Math.min(air.coldestFilament, returnDryBulb);
  return Math.min(mixed, Math.max(coldest, Math.min(outside, back)));
}
