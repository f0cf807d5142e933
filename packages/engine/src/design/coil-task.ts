import type { Catalogue } from "#catalogue/read-catalogue";
import type { FinnedSurface } from "#component/finned-surface/family";
import type { LiquidSupply } from "#duty/condition";
import { liquidDensity } from "#fluid/liquid";
import { metresPerInch as inch } from "#quantity/inch-pound";
import type { Air } from "#section/air";
import type { Frame } from "#section/contract";
import type { CoilLimits, CoilTask } from "./coil-alternative.ts";
import { type CoilBlocks, coilBlocks, type LiquidCoilValues } from "./coil-choice.ts";
import type { CoilLimitValues } from "./coil-limits.ts";

/** What a coil is chosen for, and what the person lets be used. */
export interface CoilDuty {
  readonly values: LiquidCoilValues;
  readonly frame: Frame;
  /** The air before the coil; asked for once its face is known. */
  readonly air: (blocks: CoilBlocks) => Air;
  readonly supply: LiquidSupply;
  /** °C behind the coil; what the present coil reaches when left out. */
  readonly wanted: number | undefined;
  readonly limits: CoilLimitValues;
}

const passesFor = { "same end": "even", "opposite ends": "odd", "as the circuits give": undefined } as const;

/**
 * The search for other ways to build a coil, over whole rows and whole fins per inch between the limits.
 *
 * @throws SectionProblem when the coil itself cannot be built
 */
export function coilTask({ values, frame, air, supply, wanted, limits }: CoilDuty, catalogue: Catalogue): CoilTask {
  const blocks = coilBlocks(values, frame, limits.surfaces ?? catalogueSurfaces(catalogue, false));
  // The coil's own full flow comes before the water's, as in its section.
  const { fullFlow } = values;
  const own = fullFlow === undefined ? undefined : fullFlow * liquidDensity(supply.liquid, supply.supplyTemperature);
  return {
    ...blocks,
    air: air(blocks),
    supply: own === undefined ? supply : { ...supply, massFlow: own },
    wanted,
    rows: wholeRows(limits, blocks.cools ? 12 : 8),
    fins: wholeFins(limits),
    turbulators: [false, true],
    passes: passesFor[values.connectionEnds],
    limits: limitsOf(limits, values.length),
  };
}

/** Limits as the search takes them; a section whose length is given bounds the depth. */
export function limitsOf(limits: CoilLimitValues, length: number | undefined): CoilLimits {
  const most = Number.POSITIVE_INFINITY;
  return {
    faceVelocity: limits.faceVelocity ?? most,
    airPressureDrop: limits.airPressureDrop ?? most,
    liquidPressureDrop: limits.waterPressureDrop ?? most,
    leastTubeVelocity: limits.leastTubeVelocity,
    mostTubeVelocity: limits.mostTubeVelocity,
    depth: length ?? most,
  };
}

/** Rows between the limits, and no more than the kind takes. */
export function wholeRows(limits: CoilLimitValues, most: number): number[] {
  return wholeNumbers(limits.fewestRows, Math.min(limits.mostRows, most));
}

/** Whole fins per inch between the limits, 1/m. */
export function wholeFins(limits: CoilLimitValues): number[] {
  return wholeNumbers(limits.fewestFins * inch, limits.mostFins * inch).map((each) => each / inch);
}

function wholeNumbers(least: number, most: number): number[] {
  const first = Math.ceil(least - 1e-6);
  return Array.from({ length: Math.max(0, Math.floor(most + 1e-6) - first + 1) }, (_, k) => first + k);
}

/** Surfaces of the catalogue; the records of distributing tubes say in their names that they are for steam. */
export function catalogueSurfaces(catalogue: Catalogue, forSteam: boolean): FinnedSurface[] {
  return catalogue
    .names("finned surface")
    .filter((name) => /\bsteam\b/.test(name) === forSteam)
    .map((name) => catalogue.component("finned surface", name) as FinnedSurface);
}
