import { condensateFilmThickness } from "#component/coil/condensate-film";
import type { LiquidSupply } from "#duty/condition";
import { dewPointFromHumidityRatio } from "#fluid/dew-point";
import { wetBulbFromHumidityRatio } from "#fluid/wet-bulb";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { setFreezeFigures, standingLiquid } from "../coil/freeze.ts";
import { type LiquidCoilFigures, noLiquidCoilFigures, setLiquidFigures } from "../coil/liquid.ts";
import { setCoilPressure, setInletAir, setLeavingAir } from "../coil/state.ts";
import {
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
import { absolutePressure, beginRating } from "../station.ts";
import type { ChilledWaterCoilDesign } from "./design.ts";

/** A chilled-water coil at a condition. */
export interface ChilledWaterCoilRating extends LiquidCoilFigures {
  /** W: of the dry-bulb change, and what remains of the total. */
  sensibleCapacity: number;
  latentCapacity: number;
  /**
   * kg/s of condensate drained, of all coils; kg/s that the fins above a pan bring it for each metre of its length; m of fins
   * above a pan; share of the gap between fins that the film at their foot takes up.
   */
  condensate: number;
  filmLoading: number;
  panPitch: number;
  filmShare: number;
  leavingWetBulb: number;
  leavingDewPoint: number;
  wetShare: number;
  wetFactor: number;
  wetSurfaceEfficiency: number;
  /** m/s at which water is thrown; flow peak over it. */
  carryOverVelocity: number;
  carryOverShare: number;
  fullFlowBasis: FullFlowBasis | "no water";
  /** °C wanted behind the coil; what enters when no cooling is wanted. */
  wantedLeaving: number;
}

const atRest = recordAtRest<ChilledWaterCoilRating>({
  ...createSectionRating(),
  ...noLiquidCoilFigures,
  sensibleCapacity: 0,
  latentCapacity: 0,
  condensate: 0,
  filmLoading: 0,
  panPitch: 0,
  filmShare: 0,
  leavingWetBulb: 0,
  leavingDewPoint: 0,
  wetShare: 0,
  wetFactor: 1,
  wetSurfaceEfficiency: 1,
  carryOverVelocity: 0,
  carryOverShare: 0,
  fullFlowBasis: "no water",
  wantedLeaving: 0,
});

/** A record to be filled. */
export function createChilledWaterCoilRating(): ChilledWaterCoilRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Rates the coil: its valve throttles to the leaving dry bulb wanted, or stands as the condition says. */
export function rateChilledWaterCoil(
  design: ChilledWaterCoilDesign,
  air: Air,
  at: SectionCondition,
  out: ChilledWaterCoilRating,
): void {
  beginRating(air, out);
  const { block } = design;
  const room = roomOf(out, createCoilRoom);
  const { inlet, performance } = room;
  const supply = at.condition.utilities.chilledWater;
  setInletAir(block, air, inlet);
  out.wantedLeaving = at.operation.coolingLeaving ?? air.dryBulb;
  if (supply === undefined) {
    inlet.liquidTemperature = air.dryBulb;
    solveAtFlow(block, 0, room);
  } else {
    inlet.liquid = supply.liquid;
    inlet.liquidTemperature = supply.supplyTemperature;
    runWater(design, supply, at, room);
  }
  setLeavingAir(block, performance, out);
  setCoilPressure(block, performance.wetShare, out);
}

/** Finds the flow of one coil and solves it there. */
function runWater(design: ChilledWaterCoilDesign, supply: LiquidSupply, at: SectionCondition, room: CoilRoom): void {
  const { block, fullFlow } = design;
  const { fansRunning, coolingLeaving: wanted } = at.operation;
  const standsOpen = !fansRunning && supply.valveFails === "open" && supply.pumpRunsWhenStopped;
  if (standsOpen) {
    room.full = fullFlowOf(block, supply, fullFlow, room);
    solveAtFlow(block, room.full, room);
  } else if (fansRunning && wanted !== undefined && Math.max(wanted, supply.supplyTemperature) < room.inlet.dryBulb) {
    runThrottled(block, supply, fullFlow, wanted, room);
  } else {
    room.full = 0;
    solveAtFlow(block, 0, room);
  }
}

/** Adds the liquid's side, what the air leaves behind, and how the coil stands to frost. */
export function completeChilledWaterCoil(
  design: ChilledWaterCoilDesign,
  at: SectionCondition,
  out: ChilledWaterCoilRating,
): void {
  const { block, connection } = design;
  const room = roomOf(out, createCoilRoom);
  const { inlet, performance } = room;
  const { liquid, liquidTemperature } = inlet;
  const supply = at.condition.utilities.chilledWater;
  const full = supply && completeFullFlow(block, supply, design.fullFlow, room);
  out.fullFlowBasis = full?.basis ?? "no water";
  setLiquidFigures(block, liquid, liquidTemperature, inlet.liquidFlow, full?.flow ?? 0, connection, performance, out);
  setCoolingFigures(design, room, out);
  const stays = supply !== undefined && supply.valveFails === "open" && supply.pumpRunsWhenStopped;
  setFreezeFigures(block, standingLiquid(liquid, out, stays), at, out);
}

function setCoolingFigures(design: ChilledWaterCoilDesign, room: CoilRoom, out: ChilledWaterCoilRating): void {
  const { performance } = room;
  const { block } = design;
  const { leaving } = out;
  const pressure = absolutePressure(leaving);
  out.sensibleCapacity = performance.sensibleHeat * block.stacked;
  out.latentCapacity = performance.heat * block.stacked - out.sensibleCapacity;
  out.condensate = Math.max(0, -out.waterToAir);
  setFilm(design, out);
  out.leavingDryBulb = leaving.dryBulb;
  out.leavingWetBulb = wetBulbFromHumidityRatio(leaving.dryBulb, leaving.humidityRatio, pressure);
  out.leavingDewPoint = dewPointFromHumidityRatio(leaving.humidityRatio, pressure);
  out.wetShare = performance.wetShare;
  out.wetFactor = performance.wetFactor;
  out.wetSurfaceEfficiency = performance.wetSurfaceEfficiency;
  out.carryOverVelocity = design.carryOverVelocity;
  out.carryOverShare = out.peakFaceVelocity / design.carryOverVelocity;
}

/** The film at the foot of the fins above one pan; without intermediate pans the lowest coil's foot has all the water. */
function setFilm({ block, intermediatePans }: ChilledWaterCoilDesign, out: ChilledWaterCoilRating): void {
  const { bank, finsPerLength, finThickness } = block.coil;
  const pans = intermediatePans ? block.stacked : 1;
  out.panPitch = (bank.finnedHeight * block.stacked) / pans;
  out.filmLoading = out.condensate / (pans * bank.finnedLength);
  out.filmShare = filmShareOf(out.filmLoading, finsPerLength, finThickness, bank.depth);
}

/** Share of the gap between two fins that the films on their faces take up at the foot. */
export function filmShareOf(loading: number, finsPerLength: number, finThickness: number, depth: number): number {
  const film = condensateFilmThickness(loading / (2 * finsPerLength * depth));
  return (2 * film) / (1 / finsPerLength - finThickness);
}
