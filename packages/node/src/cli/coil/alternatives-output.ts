import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { CoilAlternative, CoilChoice, CoilSorting } from "@oncethrough/engine/design/coil-alternative";
import { coilAlternatives } from "@oncethrough/engine/design/coil-alternatives";
import type { LiquidCoilValues } from "@oncethrough/engine/design/coil-choice";
import { coilLimitFields } from "@oncethrough/engine/design/coil-limits";
import { coilPriceFormula } from "@oncethrough/engine/design/coil-price";
import { coilTask } from "@oncethrough/engine/design/coil-task";
import { readForm } from "@oncethrough/engine/form/read";
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

/** Limits of a file that gives none. */
const noneGiven = readForm("{}", coilLimitFields, { component: () => undefined, componentNames: () => [] }).values!;

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
  const task = coilTask(
    {
      values: coil,
      frame: { ...(values.cabinet ?? roomyCabinet), hand: "right" },
      air: (blocks) =>
        enteringAir(
          values,
          dryAirFlowOf(values, () => blocks.present.faceArea),
        ),
      supply: liquidSupply(water),
      wanted: values.air.leaving,
      limits: limits ?? noneGiven,
    },
    catalogue,
  );
  const choice = coilAlternatives(task, wish.sort);
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
