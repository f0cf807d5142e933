import { carryOverVelocity } from "#component/coil/carry-over";
import type { RecoveryCoilDesign } from "#section/recovery-coil/design";
import type { RecoveryCoilRating } from "#section/recovery-coil/rate";
import { buildOf, type CircuitedCoil, circuitsOf } from "./built-coil.ts";
import type { CoilLimits, CoilRefusal } from "./coil-alternative.ts";
import { coilPrice } from "./coil-price.ts";

/** One way to build both coils of a run-around loop, with what it does with no more bypass than frost asks. */
export interface RecoveryAlternative extends CircuitedCoil {
  /** W given up to the frost limit; the capacity is what passes between the two airs. */
  readonly frostGivenUp: number;
  readonly temperatureEffectiveness: number;
  /** Pa of the liquid in both coils, and of the exhaust's air over dry fins. */
  readonly loopPressureDrop: number;
  readonly exhaustPressureDrop: number;
}

function priceOf({ block, exhaust }: RecoveryCoilDesign): number {
  return coilPrice(block.coil) * block.stacked + coilPrice(exhaust.coil) * exhaust.stacked;
}

/** m/s in the supply coil's tubes where nothing is led round it: the pump's flow runs through all of them. */
export function loopTubeVelocity({ block, loopVolumeFlow }: RecoveryCoilDesign): number {
  return loopVolumeFlow / (block.stacked * block.coil.circuits * block.coil.bore);
}

/** The figures of a solved loop, or the limit of its liquid side that it does not keep. */
export function recoveryFigures(
  design: RecoveryCoilDesign,
  open: RecoveryCoilRating,
  present: RecoveryCoilDesign,
  limits: CoilLimits,
  isJudged: boolean,
) {
  const { coil, casingDepth } = design.block;
  if (isJudged && open.loopPressureDrop > limits.liquidPressureDrop) return "water pressure drop" satisfies CoilRefusal;
  const heats = open.heatToAir >= 0;
  const carryOver = carryOverVelocity(coil.finsPerLength, coil.finMaterial);
  if (isJudged && !heats && open.peakFaceVelocity > carryOver) return "carry-over";
  const alternative = {
    ...buildOf(coil),
    ...circuitsOf(coil),
    priceIndex: (100 * priceOf(design)) / priceOf(present),
    capacity: open.capacity,
    frostGivenUp: open.frostGivenUp,
    leavingDryBulb: open.leavingDryBulb,
    temperatureEffectiveness: open.temperatureEffectiveness,
    liquidMassFlow: design.loopFlow,
    tubeVelocity: loopTubeVelocity(design),
    loopPressureDrop: open.loopPressureDrop,
    faceVelocity: open.faceVelocity,
    airPressureDrop: open.totalPressureLoss,
    exhaustPressureDrop: open.exhaustDryLoss,
    rangeDistance: open.rangeDistance,
    depth: casingDepth,
  };
  const finish = (isPresent: boolean): RecoveryAlternative => ({ ...alternative, present: isPresent });
  return { heats, alternative, finish };
}
