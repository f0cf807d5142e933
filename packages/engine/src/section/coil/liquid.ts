import { liquidPressureDrop } from "#component/coil/liquid-pressure";
import type { CoilPerformance } from "#component/coil/performance";
import { surfaceDistance } from "#component/finned-surface/family";
import { type Liquid, liquidDensity, liquidFreezePoint } from "#fluid/liquid";
import type { FigureLine } from "../contract.ts";
import type { CoilBlock } from "./block.ts";
import { coilDrain, coilDrainTime } from "./connections.ts";
import { type FreezeFigures, noFreezeFigures } from "./freeze.ts";
import { type CoilAirFigures, noCoilAirFigures } from "./state.ts";
import { equalPercentageStroke } from "./valve.ts";

/** What every coil with liquid in its tubes reports. Flows are of all coils of the section together. */
export interface LiquidCoilFigures extends CoilAirFigures, FreezeFigures {
  /** W between air and liquid, without sign. */
  capacity: number;
  /** kg/s and m³/s. */
  liquidMassFlow: number;
  liquidVolumeFlow: number;
  /** kg/s with the valve open, share of it that flows, stroke of an equal-percentage valve at that share. */
  fullMassFlow: number;
  flowShare: number;
  valveStroke: number;
  liquidEntering: number;
  liquidLeaving: number;
  tubeVelocity: number;
  tubeReynolds: number;
  tubeCoefficient: number;
  /** 1 where the march along the rows did not settle: its figures are in balance, and no better than some per cent. */
  unsettled: number;
  liquidPressureDrop: number;
  airReynolds: number;
  finEfficiency: number;
  /** How far the surface's correlation is used outside its range, 0 inside. */
  rangeDistance: number;
  leavingDryBulb: number;
  /** m, inside diameter of one coil's connections; m³ of liquid in the tubes of all coils. */
  connection: number;
  liquidVolume: number;
  /** m, bore of one coil's drain; s in which the coil with its headers runs empty through it. */
  drain: number;
  drainTime: number;
}

/** What the pipes and whoever fills them want to know. */
export const connectionFigureLines: readonly FigureLine<LiquidCoilFigures>[] = [
  { figure: "connection", name: "bore of a coil's connections", quantity: "length" },
  { figure: "liquidVolume", name: "liquid in the tubes", quantity: "volume" },
  { figure: "drain", name: "bore of a coil's drain", quantity: "length" },
  { figure: "drainTime", name: "a coil runs empty through it in", quantity: "minutes" },
];

/** Zeros for `LiquidCoilFigures`, to be spread. */
export const noLiquidCoilFigures = {
  ...noCoilAirFigures,
  ...noFreezeFigures,
  capacity: 0,
  liquidMassFlow: 0,
  liquidVolumeFlow: 0,
  fullMassFlow: 0,
  flowShare: 0,
  valveStroke: 0,
  liquidEntering: 0,
  liquidLeaving: 0,
  tubeVelocity: 0,
  tubeReynolds: 0,
  tubeCoefficient: 0,
  unsettled: 0,
  liquidPressureDrop: 0,
  airReynolds: 0,
  airCoefficient: 0,
  finEfficiency: 1,
  surfaceEfficiency: 1,
  rangeDistance: 0,
  leavingDryBulb: 0,
  connection: 0,
  liquidVolume: 0,
  drain: 0,
  drainTime: 0,
} as const;

/** Writes the liquid side of a rating from the performance of one coil at `flow` kg/s. */
export function setLiquidFigures(
  block: CoilBlock,
  liquid: Liquid,
  entering: number,
  flow: number,
  full: number,
  connection: number,
  performance: CoilPerformance,
  out: LiquidCoilFigures,
): void {
  const mean = (entering + performance.leavingLiquid) / 2;
  out.capacity = Math.abs(performance.heat) * block.stacked;
  out.liquidMassFlow = flow * block.stacked;
  out.liquidVolumeFlow = out.liquidMassFlow / liquidDensity(liquid, entering);
  out.fullMassFlow = full * block.stacked;
  out.flowShare = full > 0 ? flow / full : 0;
  out.valveStroke = equalPercentageStroke(out.flowShare);
  out.liquidEntering = entering;
  out.liquidLeaving = performance.leavingLiquid;
  out.tubeVelocity = performance.tubeVelocity;
  out.tubeReynolds = performance.tubeReynolds;
  out.tubeCoefficient = performance.tubeCoefficient;
  out.unsettled = performance.converged ? 0 : 1;
  out.liquidPressureDrop = liquidPressureDrop(block.coil, liquid, flow, mean, connection);
  out.airReynolds = performance.airReynolds;
  out.airCoefficient = performance.airCoefficient;
  out.finEfficiency = performance.finEfficiency;
  out.surfaceEfficiency = performance.surfaceEfficiency;
  out.rangeDistance =
    performance.airReynolds > 0 ? surfaceDistance(block.coil.surface, block.coil.bank, performance.airReynolds) : 0;
  out.connection = connection;
  out.liquidVolume = block.coil.tubeVolume * block.stacked;
  out.drain = coilDrain(block.coil, connection).bore;
  out.drainTime = coilDrainTime(block.coil, connection);
  out.freezePoint = liquidFreezePoint(liquid);
  out.coldestTubeWall = performance.coldestTubeWall;
  out.freezeMargin = out.coldestTubeWall - out.freezePoint;
  out.coldestFluid = flow > 0 ? Math.min(entering, performance.leavingLiquid) : performance.coldestTubeWall;
}
