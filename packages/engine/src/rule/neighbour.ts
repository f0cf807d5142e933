import type { Unit } from "#unit/unit";

/** Place of the next section of a kind behind `index`, or −1. */
export function nextOfKind(unit: Unit, index: number, kind: string): number {
  for (let place = index + 1; place < unit.sections.length; place++) {
    if (unit.sections[place]!.kind === kind) return place;
  }
  return -1;
}

/** Place of the first section whose kind is among those, or −1. */
export function firstOfKinds(unit: Unit, kinds: readonly string[]): number {
  return unit.sections.findIndex(({ kind }) => kinds.includes(kind));
}

/** Kinds that heat the air. */
export const heatingKinds = ["steam coil", "steam coil with face and bypass", "hot-water coil"] as const;
/** Kinds of coil with liquid that may freeze. */
export const liquidCoilKinds = ["chilled-water coil", "hot-water coil"] as const;
/** Kinds with a finned block. */
export const coilKinds = [...heatingKinds, "chilled-water coil", "recovery coil"] as const;
