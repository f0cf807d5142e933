import type { LiquidSupply } from "#duty/condition";
import { findRoot } from "#numerics/find-root";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { setFreezeFigures, standingLiquid } from "../coil/freeze.ts";
import { type FreezestatFigures, noFreezestatFigures, setFreezestat } from "../coil/freezestat.ts";
import { type LiquidCoilFigures, noLiquidCoilFigures, setLiquidFigures } from "../coil/liquid.ts";
import { setCoilPressure, setInletAir, setLeavingAir, wantedBehindFins } from "../coil/state.ts";
import {
  type CoilRoom,
  createCoilRoom,
  type FullFlowBasis,
  fullFlowOf,
  solveAtFlow,
  throttledShare,
} from "../coil/valve.ts";
import type { SectionCondition } from "../contract.ts";
import { roomOf } from "../room.ts";
import { beginRating } from "../station.ts";
import type { HotWaterCoilDesign } from "./design.ts";

/** A hot-water coil at a condition. `liquidMassFlow` is what flows in the tubes. */
export interface HotWaterCoilRating extends LiquidCoilFigures, FreezestatFigures {
  /** kg/s drawn from the supply; less than the tubes' flow where a pumped loop blends. */
  supplyMassFlow: number;
  supplyTemperature: number;
  /** W with the valve open at this airflow. */
  fullCapacity: number;
  fullFlowBasis: FullFlowBasis | "no water";
  wantedLeaving: number;
}

const atRest = recordAtRest<HotWaterCoilRating>({
  ...createSectionRating(),
  ...noLiquidCoilFigures,
  ...noFreezestatFigures,
  supplyMassFlow: 0,
  supplyTemperature: 0,
  fullCapacity: 0,
  fullFlowBasis: "no water",
  wantedLeaving: 0,
});

/** A record to be filled. */
export function createHotWaterCoilRating(): HotWaterCoilRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Rates the coil: flow or blend follows the leaving dry bulb wanted, or stands as the condition says. */
export function rateHotWaterCoil(
  design: HotWaterCoilDesign,
  air: Air,
  at: SectionCondition,
  out: HotWaterCoilRating,
): void {
  beginRating(air, out);
  const { block } = design;
  const room = roomOf(out, createCoilRoom);
  const { inlet, performance } = room;
  const supply = at.condition.utilities.heatingWater;
  setInletAir(block, air, inlet);
  out.wantedLeaving = at.operation.heatingLeaving ?? air.dryBulb;
  out.fullFlowBasis = "no water";
  out.fullCapacity = 0;
  out.supplyMassFlow = 0;
  out.supplyTemperature = supply?.supplyTemperature ?? air.dryBulb;
  inlet.liquidTemperature = out.supplyTemperature;
  let full = 0;
  if (supply === undefined) solveAtFlow(block, 0, room);
  else {
    inlet.liquid = supply.liquid;
    full = runWater(design, supply, at, room, out);
  }
  setLiquidFigures(
    block,
    inlet.liquid,
    inlet.liquidTemperature,
    inlet.liquidFlow,
    full,
    design.connection,
    performance,
    out,
  );
  if (design.control === "pumped loop" && full > 0) blendFigures(room, out);
  else out.supplyMassFlow = out.liquidMassFlow;
  setLeavingAir(block, performance, out);
  setCoilPressure(block, performance.wetShare, out);
  out.leavingDryBulb = out.leaving.dryBulb;
  // A pumped loop's own pump is taken to stop with the unit, as its power does.
  const stays = supply !== undefined && supply.valveFails === "open" && supply.pumpRunsWhenStopped;
  setFreezeFigures(block, standingLiquid(inlet.liquid, out, stays), at, out);
  setFreezestat(block, design.freezestat, out);
}

function runWater(
  design: HotWaterCoilDesign,
  supply: LiquidSupply,
  at: SectionCondition,
  room: CoilRoom,
  out: HotWaterCoilRating,
): number {
  const { block } = design;
  const wanted = at.operation.heatingLeaving;
  const asks = at.operation.fansRunning && wanted !== undefined && wanted > room.inlet.dryBulb;
  const standsOpen = !at.operation.fansRunning && supply.valveFails === "open" && supply.pumpRunsWhenStopped;
  const warm = supply.supplyTemperature > room.inlet.dryBulb;
  if (!((asks || standsOpen) && warm)) {
    solveAtFlow(block, 0, room);
    return 0;
  }
  const { flow, basis } = fullFlowOf(block, supply, design.fullFlow, room);
  out.fullFlowBasis = basis;
  solveAtFlow(block, flow, room);
  out.fullCapacity = Math.abs(room.performance.heat) * block.stacked;
  if (standsOpen) return flow;
  const behindFins = wantedBehindFins(out.entering, wanted!);
  if (design.control === "pumped loop") blendTo(design, flow, behindFins, room);
  else throttledShare(block, flow, behindFins, room);
  return flow;
}

/** Entering liquid of a pumped loop at which the air leaves as wanted; the supply's own when that is too little. */
function blendTo(design: HotWaterCoilDesign, flow: number, wanted: number, room: CoilRoom): void {
  const { inlet } = room;
  const hottest = inlet.liquidTemperature;
  if (!(room.performance.leavingDryBulb > wanted)) return;
  const miss = (temperature: number): number => {
    inlet.liquidTemperature = temperature;
    return solveAtFlow(design.block, flow, room).leavingDryBulb - wanted;
  };
  inlet.liquidTemperature = findRoot(miss, inlet.dryBulb, hottest, 1e-8);
  solveAtFlow(design.block, flow, room);
}

/** What a blending valve draws from the supply: the share that brings the returning liquid up to the entering one. */
function blendFigures(room: CoilRoom, out: HotWaterCoilRating): void {
  const reach = out.supplyTemperature - out.liquidLeaving;
  const share = reach > 0 ? (room.inlet.liquidTemperature - out.liquidLeaving) / reach : 1;
  out.supplyMassFlow = Math.min(1, Math.max(0, share)) * out.liquidMassFlow;
}
