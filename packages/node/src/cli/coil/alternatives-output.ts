import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { FinnedSurface } from "@oncethrough/engine/component/finned-surface/family";
import type { CoilAlternative, CoilChoice, CoilSorting } from "@oncethrough/engine/design/coil-alternative";
import { coilAlternatives } from "@oncethrough/engine/design/coil-alternatives";
import { type CoilBlocks, coilBlocks, type LiquidCoilValues } from "@oncethrough/engine/design/coil-choice";
import { coilPriceFormula } from "@oncethrough/engine/design/coil-price";
import { liquidDensity } from "@oncethrough/engine/fluid/liquid";
import { UsageProblem } from "../exit-code.ts";
import type { CoilValues } from "./coil-file.ts";
import { dryAirFlowOf, enteringAir, liquidSupply, roomyCabinet } from "./coil-output.ts";

/** What `oncethrough coil --alternatives --json` prints, in SI. */
export interface AlternativesOutput {
  readonly format: "oncethrough coil alternatives 1";
  readonly kind: string;
  readonly wantedLeaving: number;
  readonly sortedBy: CoilSorting;
  readonly priceFormula: string;
  readonly looked: number;
  readonly met: number;
  readonly refused: CoilChoice["refused"];
  readonly present?: CoilAlternative;
  readonly candidates: readonly CoilAlternative[];
}

const inch = 0.0254;

/**
 * Looks for other ways to build the coil of a file.
 *
 * @throws SectionProblem when the coil of the file cannot be built
 */
export function alternativesOf(
  values: CoilValues,
  catalogue: Catalogue,
  wish: { readonly sort: CoilSorting; readonly most: number },
): AlternativesOutput {
  const coil = values.coil as unknown as LiquidCoilValues;
  const { water, limits } = values;
  if ((coil.kind !== "chilled-water coil" && coil.kind !== "hot-water coil") || water === undefined) {
    throw new UsageProblem(
      `--alternatives needs a coil with water in its tubes; this one is a ${values.coil.kind}; allowed: chilled-water coil, hot-water coil`,
    );
  }
  const frame = { ...(values.cabinet ?? roomyCabinet), hand: "right" } as const;
  const blocks = coilBlocks(coil, frame, limits?.surfaces ?? surfacesOf(catalogue));
  const choice = chosen(coil, values, blocks, liquidSupply(water), wish.sort);
  return {
    format: "oncethrough coil alternatives 1",
    kind: coil.kind,
    wantedLeaving: choice.wanted,
    sortedBy: wish.sort,
    priceFormula: coilPriceFormula,
    looked: choice.looked,
    met: choice.candidates.length,
    refused: choice.refused,
    ...(choice.present === undefined ? {} : { present: choice.present }),
    candidates: choice.candidates.slice(0, wish.most),
  };
}

function chosen(
  coil: LiquidCoilValues,
  values: CoilValues,
  blocks: CoilBlocks,
  supply: ReturnType<typeof liquidSupply>,
  sort: CoilSorting,
): CoilChoice {
  const { limits } = values;
  const flow = dryAirFlowOf(values, () => blocks.present.faceArea);
  const rows = [limits?.fewestRows ?? 1, Math.min(limits?.mostRows ?? 12, blocks.cools ? 12 : 8)] as const;
  const fins = [(limits?.fewestFins ?? 6 / inch) * inch, (limits?.mostFins ?? 14 / inch) * inch] as const;
  const most = Number.POSITIVE_INFINITY;
  // The coil's own full flow comes before the water's, as in its section.
  const own =
    coil.fullFlow === undefined ? undefined : coil.fullFlow * liquidDensity(supply.liquid, supply.supplyTemperature);
  const task = {
    ...blocks,
    air: enteringAir(values, flow),
    supply: own === undefined ? supply : { ...supply, massFlow: own },
    wanted: values.air.leaving,
    rows: wholeNumbers(rows[0], rows[1]),
    fins: wholeNumbers(fins[0], fins[1]).map((each) => each / inch),
    turbulators: [false, true],
    limits: {
      faceVelocity: limits?.faceVelocity ?? most,
      airPressureDrop: limits?.airPressureDrop ?? most,
      liquidPressureDrop: limits?.waterPressureDrop ?? most,
      leastTubeVelocity: limits?.leastTubeVelocity ?? 0.3048,
      mostTubeVelocity: limits?.mostTubeVelocity ?? 2.37744,
      depth: coil.length ?? most,
    },
  };
  return coilAlternatives(task, sort);
}

function wholeNumbers(least: number, most: number): number[] {
  const first = Math.ceil(least - 1e-6);
  return Array.from({ length: Math.max(0, Math.floor(most + 1e-6) - first + 1) }, (_, k) => first + k);
}

/** Every surface of the catalogue; the records of distributing tubes say in their names that they are for steam. */
function surfacesOf(catalogue: Catalogue): FinnedSurface[] {
  return catalogue
    .names("finned surface")
    .filter((name) => !/\bsteam\b/.test(name))
    .map((name) => catalogue.component("finned surface", name) as FinnedSurface);
}
