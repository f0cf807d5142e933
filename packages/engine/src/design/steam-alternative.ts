import type { SteamCoilFigures, SteamPiping } from "#section/coil/steam";
import { type BuiltCoil, buildOf } from "./built-coil.ts";
import { coilPrice } from "./coil-price.ts";

/** One way to build a coil on steam, with what it does with its valve open. */
export interface SteamAlternative extends BuiltCoil {
  /** kg/s with the valve open. */
  readonly condensate: number;
  /** Of the capacity, what the leaving air wanted does not need: it makes stall, and freezing, more likely. */
  readonly surplus: number;
  /** °C, -60 at least, of entering air above which the coil stalls, or its breaker stands open, at the leaving air wanted. */
  readonly stallAirTemperature: number;
  readonly breakerAirTemperature: number;
}

/** °C: a coil that stalls, or opens its breaker, in air as cold as this does so in every frost. */
const coldestAir = -60;

/** kg of the inner tubes, and their rate as that of copper tube. */
function innerTubesPrice({ block, inner }: SteamPiping): number {
  const { tubes, length } = inner.distributor;
  return block.stacked * tubes * length * Math.PI * (inner.outsideDiameter - inner.wall) * inner.wall * 8940;
}

function priceOf(design: SteamPiping): number {
  return coilPrice(design.block.coil) * design.block.stacked + innerTubesPrice(design);
}

/** The figures of a coil on steam with its valve open, to be finished by those that `rateHeld` gives at the leaving air wanted. */
export function steamFigures(
  design: SteamPiping,
  open: SteamCoilFigures,
  present: SteamPiping,
  rateHeld: () => SteamCoilFigures,
) {
  const { coil, casingDepth } = design.block;
  const alternative = {
    ...buildOf(coil),
    priceIndex: (100 * priceOf(design)) / priceOf(present),
    capacity: open.capacity,
    leavingDryBulb: open.leavingDryBulb,
    condensate: open.condensate,
    faceVelocity: open.faceVelocity,
    airPressureDrop: open.totalPressureLoss,
    rangeDistance: open.rangeDistance,
    depth: casingDepth,
  };
  const finish = (isPresent: boolean): SteamAlternative => {
    const held = rateHeld();
    return {
      ...alternative,
      present: isPresent,
      surplus: open.capacity > 0 ? Math.max(0, 1 - held.capacity / open.capacity) : 0,
      stallAirTemperature: Math.max(coldestAir, held.stallAirTemperature),
      breakerAirTemperature: Math.max(coldestAir, held.breakerAirTemperature),
    };
  };
  return { heats: true, alternative, finish };
}
