import { drainPipeRoughness, condensateTrapRule as rule } from "#standard/condensate-trap";

/** Pa of one metre of water. */
const waterColumn = 9806.65;

/** A trap: m of fall from its inlet to its outlet, of seal under the outlet, and of the whole with its pipe. */
export interface CondensateTrap {
  readonly drop: number;
  readonly seal: number;
  readonly depth: number;
}

/**
 * Trap of a pan at a pressure against the surroundings: under suction drop = suction + 1 in and seal = half of it, under
 * pressure seal = pressure + ½ in with the outlet ½ in under the inlet.
 *
 * @param pressure Pa, -20000…20000: in the pan's compartment, negative under suction
 * @param pipe m, 0.005…0.2: outside diameter of the pipe
 * @returns record: drop, seal and depth of the whole
 * @outside the same formula goes on
 * @example condensateTrap(-3 * 249.08891, 0.0334).seal / 0.0254 // 2 ± 0.001
 * @source condensate-trap-texts
 */
export function condensateTrap(pressure: number, pipe: number): CondensateTrap {
  const column = Math.abs(pressure) / waterColumn;
  if (pressure > 0) {
    const seal = column + rule.pressureMargin;
    return { drop: rule.outletDrop, seal, depth: rule.outletDrop + seal + pipe };
  }
  const drop = column + rule.suctionMargin;
  const seal = rule.sealShare * drop;
  return { drop, seal, depth: drop + seal + pipe };
}

/**
 * Suction at which a trap without fresh water is drawn empty: the water of both its legs hangs in one.
 *
 * @param seal m, 0…2: of the trap
 * @returns Pa: suction
 * @outside the same formula goes on
 * @example sealLossSuction(0.0508) // 996.4 ± 0.1
 * @source derived-here water of two equal legs
 */
export function sealLossSuction(seal: number): number {
  return 2 * seal * waterColumn;
}

/**
 * Water that runs through a drain pipe that is half full.
 *
 * @param bore m, 0.005…0.5: inside diameter
 * @param fall m/m, 0.001…0.2: slope
 * @returns m³/s: flow
 * @outside the same formula goes on
 * @example halfFullDrain(0.025, 0.01) * 60000 // 4.997 ± 0.003
 * @source from-memory Manning's formula, n = 0.010
 */
export function halfFullDrain(bore: number, fall: number): number {
  const area = (Math.PI * bore * bore) / 8;
  return (area * (bore / 4) ** (2 / 3) * Math.sqrt(fall)) / drainPipeRoughness.value;
}

/**
 * Height of base rail that a trap needs under the floor: at least six inches, and the trap, the fall of its line and room
 * under it.
 *
 * @param depth m, 0…2: of the trap with its pipe
 * @param fall m, 0…1: of pan and line to the trap
 * @param room m, 0…1: under the trap
 * @returns m: height
 * @outside the same formula goes on
 * @example railForTrap(0.25, 0.02, 0.025) // 0.295
 * @source condensate-trap-texts; common-practice owners ask 6 in and the trap's depth, slope and pad
 */
export function railForTrap(depth: number, fall: number, room: number): number {
  return Math.max(rule.leastRail, depth + fall + room);
}
