import { solveCoil } from "#component/coil/march";
import type { LiquidSupply } from "#duty/condition";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { CoilBlock } from "../coil/block.ts";
import { setFreezeFigures, standingLiquid } from "../coil/freeze.ts";
import { type FreezestatFigures, noFreezestatFigures, setFreezestat } from "../coil/freezestat.ts";
import { type LiquidCoilFigures, noLiquidCoilFigures, setLiquidFigures } from "../coil/liquid.ts";
import { setCoilPressure, setInletAir, setLeavingAir, wantedBehindFins } from "../coil/state.ts";
import {
  blendTo,
  type CoilRoom,
  completeFullFlow,
  createCoilRoom,
  type FullFlowBasis,
  fullFlowOf,
  runThrottled,
  solveAtFlow,
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
  out.supplyTemperature = supply?.supplyTemperature ?? air.dryBulb;
  inlet.liquidTemperature = out.supplyTemperature;
  if (supply === undefined) {
    room.full = 0;
    solveAtFlow(block, 0, room);
  } else {
    inlet.liquid = supply.liquid;
    runWater(design, supply, at, room, out);
  }
  setLeavingAir(block, performance, out);
  setCoilPressure(block, performance.wetShare, out);
}

function runWater(
  design: HotWaterCoilDesign,
  supply: LiquidSupply,
  at: SectionCondition,
  room: CoilRoom,
  { entering }: HotWaterCoilRating,
): void {
  const { block, fullFlow } = design;
  const { fansRunning, heatingLeaving: wanted } = at.operation;
  const asks = fansRunning && wanted !== undefined && wanted > entering.dryBulb;
  const standsOpen = !fansRunning && supply.valveFails === "open" && supply.pumpRunsWhenStopped;
  if (!((asks || standsOpen) && supply.supplyTemperature > entering.dryBulb)) {
    room.full = 0;
    solveAtFlow(block, 0, room);
    return;
  }
  if (asks && design.control !== "pumped loop") {
    runThrottled(block, supply, fullFlow, wantedBehindFins(entering, wanted), room);
    return;
  }
  room.full = fullFlowOf(block, supply, fullFlow, room);
  if (asks) blendTo(block, wantedBehindFins(entering, wanted), room);
  else solveAtFlow(block, room.full, room);
}

/** Adds the liquid's side, what the coil could give, and how it stands to frost. */
export function completeHotWaterCoil(design: HotWaterCoilDesign, at: SectionCondition, out: HotWaterCoilRating): void {
  const { block, connection } = design;
  const room = roomOf(out, createCoilRoom);
  const { inlet, performance } = room;
  const { liquid, liquidTemperature, liquidFlow } = inlet;
  const supply = at.condition.utilities.heatingWater;
  const full = supply && room.full !== 0 ? completeFullFlow(block, supply, design.fullFlow, room) : undefined;
  out.fullFlowBasis = full?.basis ?? "no water";
  setLiquidFigures(block, liquid, liquidTemperature, liquidFlow, full?.flow ?? 0, connection, performance, out);
  if (design.control === "pumped loop" && full !== undefined) blendFigures(room, out);
  else out.supplyMassFlow = out.liquidMassFlow;
  out.fullCapacity = full === undefined ? 0 : fullCapacityOf(block, full.flow, room, out);
  out.leavingDryBulb = out.leaving.dryBulb;
  // A pumped loop's own pump is taken to stop with the unit, as its power does.
  const stays = supply !== undefined && supply.valveFails === "open" && supply.pumpRunsWhenStopped;
  setFreezeFigures(block, standingLiquid(liquid, out, stays), at, out);
  setFreezestat(block, design.freezestat, out);
}

/** W of all coils with the valve open on the supply as it comes. */
function fullCapacityOf(block: CoilBlock, flow: number, room: CoilRoom, out: HotWaterCoilRating): number {
  const { inlet, open } = room;
  inlet.liquidFlow = flow;
  inlet.liquidTemperature = out.supplyTemperature;
  solveCoil(block.coil, inlet, open.work, open.performance);
  return Math.abs(open.performance.heat) * block.stacked;
}

/** What a blending valve draws from the supply: the share that brings the returning liquid up to the entering one. */
function blendFigures(room: CoilRoom, out: HotWaterCoilRating): void {
  const reach = out.supplyTemperature - out.liquidLeaving;
  const share = reach > 0 ? (room.inlet.liquidTemperature - out.liquidLeaving) / reach : 1;
  out.supplyMassFlow = Math.min(1, Math.max(0, share)) * out.liquidMassFlow;
}
