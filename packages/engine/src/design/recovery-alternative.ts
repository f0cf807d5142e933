import { carryOverVelocity } from "#component/coil/carry-over";
import type { RecoveryCoilDesign } from "#section/recovery-coil/design";
import type { RecoveryCoilRating } from "#section/recovery-coil/rate";
import type { CoilLimits, CoilRefusal } from "./coil-alternative.ts";
import { coilPrice } from "./coil-price.ts";

/** One way to build both coils of a run-around loop, with what it does with no more bypass than frost asks. */
export interface RecoveryAlternative {
  readonly surface: string;
  readonly rows: number;
  /** 1/m. */
  readonly fins: number;
  readonly circuits: number;
  readonly turbulators: boolean;
  readonly tubesPerRow: number;
  readonly passes: number;
  /** The coil as it is. */
  readonly present: boolean;
  /** Both coils against both present ones, 100, by invented rates. */
  readonly priceIndex: number;
  /** W between the two airs, and given up to the frost limit. */
  readonly capacity: number;
  readonly frostGivenUp: number;
  readonly leavingDryBulb: number;
  readonly temperatureEffectiveness: number;
  /** kg/s of the loop, m/s in the supply coil's tubes, Pa in both coils. */
  readonly liquidMassFlow: number;
  readonly tubeVelocity: number;
  readonly loopPressureDrop: number;
  readonly faceVelocity: number;
  /** Pa of the section's air, as wet as the coil is, and of the exhaust's over dry fins. */
  readonly airPressureDrop: number;
  readonly exhaustPressureDrop: number;
  readonly rangeDistance: number;
  /** m along the flow, casing and all. */
  readonly depth: number;
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
    surface: coil.surface.head.name,
    rows: coil.rows,
    fins: coil.finsPerLength,
    circuits: coil.circuits,
    turbulators: coil.turbulators,
    tubesPerRow: coil.tubesPerRow,
    passes: coil.passes,
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
