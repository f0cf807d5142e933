import { fanPeakPressure, fanPressureFromFlow, fanSpeedFromPressure } from "#component/fan-performance";
import { effectiveDuctLength, outletEffectFromDuct } from "#component/fan-system-effect";
import type { FanDesign } from "./design.ts";

/** Velocity pressures in the outlet that the outlet costs at a velocity in it. */
export function outletLossOf(design: FanDesign, velocity: number): number {
  if (!design.housed) return 0;
  const share = design.outletDuct / effectiveDuctLength(design.outletArea, velocity);
  return outletEffectFromDuct(design.wheel.blastArea, share);
}

/** Velocity pressures in the inlet that a failed fan takes of what flows back through it. */
function backflowLoss(design: FanDesign): number {
  return design.wheel.stoppedLoss + design.inletLoss;
}

/** m³/s that `pressure` (Pa) presses back through one failed fan; nothing where a backdraft damper has closed. */
function backflowFromPressure(design: FanDesign, pressure: number, density: number): number {
  if (design.backdraftDampers || pressure <= 0) return 0;
  return design.inletArea * Math.sqrt((2 * pressure) / (density * backflowLoss(design)));
}

/** m³/s back through each of `failed` fans while the others turn: found by halving, as their pressure falls with flow. */
export function backflowAt(design: FanDesign, flow: number, failed: number, speed: number, density: number): number {
  const running = design.count - failed;
  const back = (each: number) =>
    backflowFromPressure(design, riseOf(design, speed, density, (flow + failed * each) / running), density);
  let low = 0;
  let high = backflowFromPressure(
    design,
    2 * fanPeakPressure(design.wheel.curve, design.diameter, speed, density),
    density,
  );
  for (let count = 0; count < 60 && high > low; count++) {
    const middle = (low + high) / 2;
    if (back(middle) > middle) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Pa of total pressure that a fan with its effects adds at a flow of its own. */
function riseOf(design: FanDesign, speed: number, density: number, perFan: number): number {
  const { curve } = design.wheel;
  return fanPressureFromFlow(curve, design.diameter, speed, density, perFan) - lossesOf(design, density, perFan);
}

/** Pa that an open backdraft damper takes of a flow (m³/s) through its fan. */
export function backdraftLossFromFlow(design: FanDesign, density: number, perFan: number): number {
  return design.backdraftDampers ? design.backdraftLoss * 0.5 * density * (perFan / design.backdraftFace) ** 2 : 0;
}

/** Pa that effects and damper take, less the velocity pressure in the outlet. */
function lossesOf(design: FanDesign, density: number, perFan: number): number {
  const inletPressure = 0.5 * density * (perFan / design.inletArea) ** 2;
  const outletVelocity = design.housed ? perFan / design.outletArea : 0;
  const outletPressure = 0.5 * density * outletVelocity ** 2;
  const effects = design.inletLoss * inletPressure + (outletLossOf(design, outletVelocity) - 1) * outletPressure;
  return effects + backdraftLossFromFlow(design, density, perFan);
}

/**
 * Speed (rev/s) at which the section adds `rise` Pa of total pressure to `flow` m³/s of air of `density` kg/m³, all at
 * its entry plane, with `failed` of its fans standing. Direct, by the fan laws; 0 when even standing wheels let more
 * through.
 */
export function fanSpeedForPressure(
  design: FanDesign,
  flow: number,
  rise: number,
  density: number,
  failed = 0,
): number {
  const back = failed > 0 ? failed * backflowFromPressure(design, rise, density) : 0;
  const perFan = (flow + back) / (design.count - failed);
  const wanted = rise + lossesOf(design, density, perFan);
  return fanSpeedFromPressure(design.wheel.curve, design.diameter, density, perFan, wanted);
}
