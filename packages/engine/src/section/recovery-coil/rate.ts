import { liquidPressureDrop } from "#component/coil/liquid-pressure";
import type { ExhaustAir } from "#duty/condition";
import { findRoot } from "#numerics/find-root";
import type { Air } from "../air.ts";
import { createSectionRating } from "../base-rating.ts";
import { type LiquidCoilFigures, noLiquidCoilFigures, setLiquidFigures } from "../coil/liquid.ts";
import { setCoilPressure, setInletAir, setLeavingAir } from "../coil/state.ts";
import { type CoilRoom, createCoilRoom, solveAtFlow } from "../coil/valve.ts";
import type { SectionCondition } from "../contract.ts";
import { beginRating } from "../station.ts";
import type { RecoveryCoilDesign } from "./design.ts";
import { balanceLoop, type LoopState } from "./loop.ts";

/** A recovery coil at a condition. Liquid figures are those of the supply coil. */
export interface RecoveryCoilRating extends LiquidCoilFigures {
  /** W with no liquid led round the supply coil. */
  fullCapacity: number;
  /** Share of the loop that is led round it. */
  bypassShare: number;
  /** Supply air's change over the difference between exhaust and supply air. */
  temperatureEffectiveness: number;
  /** Pa that the liquid loses in both coils, pipes between them not counted. */
  loopPressureDrop: number;
  /** °C of liquid into the exhaust coil, and the lowest let in. */
  intoExhaust: number;
  frostLimit: number;
  exhaustLeavingDryBulb: number;
  exhaustLeavingHumidityRatio: number;
  /** kg/s of condensate in the exhaust, °C of its coldest surface. */
  exhaustCondensate: number;
  exhaustColdestSurface: number;
  wantedLeaving: number;
}

/** A record to be filled. */
export function createRecoveryCoilRating(): RecoveryCoilRating {
  return {
    ...createSectionRating(),
    ...noLiquidCoilFigures,
    fullCapacity: 0,
    bypassShare: 0,
    temperatureEffectiveness: 0,
    loopPressureDrop: 0,
    intoExhaust: 0,
    frostLimit: 0,
    exhaustLeavingDryBulb: 0,
    exhaustLeavingHumidityRatio: 0,
    exhaustCondensate: 0,
    exhaustColdestSurface: 0,
    wantedLeaving: 0,
  };
}

/** K between exhaust and entering air below which the pump rests. */
const leastDifference = 1;

/** Rates the loop: heat flows from the warmer air to the colder; the valve keeps set point and frost limit. */
export function rateRecoveryCoil(
  design: RecoveryCoilDesign,
  air: Air,
  at: SectionCondition,
  out: RecoveryCoilRating,
): void {
  beginRating(air, out);
  const supply = createCoilRoom();
  const exhaust = createCoilRoom();
  const stream = at.condition.exhaust;
  setInletAir(design.block, air, supply.inlet);
  supply.inlet.liquid = design.liquid;
  supply.inlet.liquidTemperature = air.dryBulb;
  out.frostLimit = design.frostLimit;
  out.wantedLeaving = wantedOf(air, stream, at) ?? air.dryBulb;
  const state: LoopState = {
    intoSupply: air.dryBulb,
    outOfSupply: air.dryBulb,
    intoExhaust: air.dryBulb,
    bypassShare: 1,
  };
  if (stream === undefined || wantedOf(air, stream, at) === undefined) rest(design, supply, stream, out);
  else run(design, supply, exhaust, stream, state, out);
  const { performance, inlet } = supply;
  const full = design.loopFlow / design.block.stacked;
  setLiquidFigures(
    design.block,
    design.liquid,
    state.intoSupply,
    inlet.liquidFlow,
    full,
    design.connection,
    performance,
    out,
  );
  out.bypassShare = inlet.liquidFlow > 0 ? state.bypassShare : 0;
  out.intoExhaust = state.intoExhaust;
  const remoteFlow = inlet.liquidFlow > 0 ? design.loopFlow / design.exhaust.stacked : 0;
  out.loopPressureDrop =
    out.liquidPressureDrop +
    liquidPressureDrop(design.exhaust.coil, design.liquid, remoteFlow, state.intoExhaust, design.exhaustConnection);
  setLeavingAir(design.block, performance, out);
  setCoilPressure(design.block, performance.wetShare, out);
  out.leavingDryBulb = out.leaving.dryBulb;
  const difference = (stream?.dryBulb ?? air.dryBulb) - air.dryBulb;
  out.temperatureEffectiveness = inlet.liquidFlow > 0 ? (out.leavingDryBulb - air.dryBulb) / difference : 0;
}

/** °C that the loop works towards; undefined where it has nothing to give or nobody asks. */
function wantedOf(air: Air, stream: ExhaustAir | undefined, at: SectionCondition): number | undefined {
  const { fansRunning, heatingLeaving, coolingLeaving } = at.operation;
  if (stream === undefined || !fansRunning || !(stream.dryAirFlow > 0)) return undefined;
  const difference = stream.dryBulb - air.dryBulb;
  if (difference > leastDifference && heatingLeaving !== undefined && heatingLeaving > air.dryBulb)
    return heatingLeaving;
  if (difference < -leastDifference && coolingLeaving !== undefined && coolingLeaving < air.dryBulb)
    return coolingLeaving;
  return undefined;
}

/** The pump rests: liquid in the tubes takes the temperature of the air. */
function rest(
  design: RecoveryCoilDesign,
  supply: CoilRoom,
  stream: ExhaustAir | undefined,
  out: RecoveryCoilRating,
): void {
  solveAtFlow(design.block, 0, supply);
  out.fullCapacity = 0;
  out.exhaustLeavingDryBulb = stream?.dryBulb ?? out.entering.dryBulb;
  out.exhaustLeavingHumidityRatio = stream?.humidityRatio ?? out.entering.humidityRatio;
  out.exhaustCondensate = 0;
  out.exhaustColdestSurface = out.exhaustLeavingDryBulb;
}

function run(
  design: RecoveryCoilDesign,
  supply: CoilRoom,
  exhaust: CoilRoom,
  stream: ExhaustAir,
  state: LoopState,
  out: RecoveryCoilRating,
): void {
  const { inlet } = exhaust;
  inlet.dryAirFlow = stream.dryAirFlow / design.exhaust.stacked;
  inlet.dryBulb = stream.dryBulb;
  inlet.coldestFilament = stream.dryBulb;
  inlet.humidityRatio = stream.humidityRatio;
  inlet.pressure = out.entering.barometricPressure;
  inlet.liquid = design.liquid;
  const heats = stream.dryBulb > supply.inlet.dryBulb;
  balanceLoop(design, supply, exhaust, 0, state);
  out.fullCapacity = Math.abs(supply.performance.heat) * design.block.stacked;
  // Both limits ask for more bypass; the surplus of each falls as more is led round.
  const surplus = (share: number): number => {
    balanceLoop(design, supply, exhaust, share, state);
    const { leavingDryBulb } = supply.performance;
    const over = heats ? leavingDryBulb - out.wantedLeaving : out.wantedLeaving - leavingDryBulb;
    return heats ? Math.max(over, design.frostLimit - state.intoExhaust) : over;
  };
  const most = 0.999;
  if (surplus(0) > 0) {
    const share = surplus(most) >= 0 ? most : findRoot(surplus, 0, most, 1e-8);
    balanceLoop(design, supply, exhaust, share, state);
  }
  const { performance } = exhaust;
  out.exhaustLeavingDryBulb = performance.leavingDryBulb;
  out.exhaustLeavingHumidityRatio = performance.leavingHumidityRatio;
  out.exhaustCondensate = performance.condensate * design.exhaust.stacked;
  out.exhaustColdestSurface = performance.coldestSurface;
}
