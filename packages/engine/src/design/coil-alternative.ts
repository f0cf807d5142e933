import type { Coil } from "#component/coil/coil";
import type { LiquidSupply } from "#duty/condition";
import type { Air } from "#section/air";
import type { CoilBlock } from "#section/coil/block";
import type { CircuitedCoil } from "./built-coil.ts";

/** Bounds that an alternative keeps. Where one is left open it is infinite, or zero. */
export interface CoilLimits {
  /** m/s on the face; for a cooling coil that of carry-over counts besides. */
  readonly faceVelocity: number;
  /** Pa of air, as wet as the coil is. */
  readonly airPressureDrop: number;
  /** Pa of water between connections. */
  readonly liquidPressureDrop: number;
  /** m/s in the tubes. */
  readonly leastTubeVelocity: number;
  readonly mostTubeVelocity: number;
  /** m along the flow, casing and all. */
  readonly depth: number;
}

/** What coils are wanted for and what may be built. */
export interface CoilTask {
  readonly cools: boolean;
  /** The coil as it is, and its block once for each surface that may be used, built to the same cabinet. */
  readonly present: CoilBlock;
  readonly blocks: readonly CoilBlock[];
  /** m: inside diameter of a coil's connections. */
  readonly connectionOf: (coil: Coil) => number;
  readonly air: Air;
  readonly supply: LiquidSupply;
  /** °C at most behind a cooling coil, at least behind a heating coil; what the present coil reaches when left out. */
  readonly wanted: number | undefined;
  readonly rows: readonly number[];
  /** 1/m. */
  readonly fins: readonly number[];
  readonly turbulators: readonly boolean[];
  /** Passes that bring supply and return to the ends asked for; any when left out. */
  readonly passes?: "even" | "odd" | undefined;
  readonly limits: CoilLimits;
}

/** One way to build the coil, with what it does with its valve open. Flows and capacities of all stacked coils together. */
export interface CoilAlternative extends CircuitedCoil {
  readonly sensibleCapacity: number;
  readonly leavingHumidityRatio: number;
  /** m³/s. */
  readonly liquidVolumeFlow: number;
  readonly liquidLeaving: number;
  readonly liquidPressureDrop: number;
  /** Peak face velocity over the one that throws water; 0 for a heating coil. */
  readonly carryOverShare: number;
}

/** Why an alternative was left out: the first of these that it does not keep. */
export const coilRefusals = [
  "not built",
  "face velocity",
  "carry-over",
  "depth",
  "tube velocity",
  "leaving air",
  "water temperature change",
  "air pressure drop",
  "water pressure drop",
] as const;

/** Why an alternative was left out. */
export type CoilRefusal = (typeof coilRefusals)[number];

/** By what alternatives are sorted. */
export const coilSortings = ["price", "air", "water", "rows"] as const;

/** By what alternatives are sorted. */
export type CoilSorting = (typeof coilSortings)[number];

/** How many ways were looked at, how many were left out for what, and those that meet the duty. */
export interface CoilChoice {
  readonly looked: number;
  readonly refused: Readonly<Record<CoilRefusal, number>>;
  /** °C behind the coil. */
  readonly wanted: number;
  /** The present coil, whether it meets the duty or not. */
  readonly present: CoilAlternative | undefined;
  readonly candidates: readonly CoilAlternative[];
}

/** Limits that nothing breaks. */
export const noCoilLimits: CoilLimits = {
  faceVelocity: Number.POSITIVE_INFINITY,
  airPressureDrop: Number.POSITIVE_INFINITY,
  liquidPressureDrop: Number.POSITIVE_INFINITY,
  leastTubeVelocity: 0,
  mostTubeVelocity: Number.POSITIVE_INFINITY,
  depth: Number.POSITIVE_INFINITY,
};

const keys: Readonly<Record<CoilSorting, (each: CoilAlternative) => number>> = {
  price: (each) => each.priceIndex,
  air: (each) => each.airPressureDrop,
  water: (each) => each.liquidPressureDrop,
  rows: (each) => each.rows,
};

/** Sorts in place, least first; what is alike by price. */
export function sortAlternatives(candidates: CoilAlternative[], sorting: CoilSorting): void {
  const key = keys[sorting];
  candidates.sort((a, b) => key(a) - key(b) || a.priceIndex - b.priceIndex || a.airPressureDrop - b.airPressureDrop);
}
