import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { isRatedCoil } from "@oncethrough/engine/design/choosable";
import type { CoilAlternative, CoilChoice, CoilSorting } from "@oncethrough/engine/design/coil-alternative";
import { coilAlternatives } from "@oncethrough/engine/design/coil-alternatives";
import type { LiquidCoilValues } from "@oncethrough/engine/design/coil-choice";
import { coilLimitFields } from "@oncethrough/engine/design/coil-limits";
import { coilPriceFormula } from "@oncethrough/engine/design/coil-price";
import { coilTask } from "@oncethrough/engine/design/coil-task";
import {
  type RatedCoilValues,
  type SectionCoilAlternative,
  sectionCoilAlternatives,
} from "@oncethrough/engine/design/section-alternatives";
import { sectionCoilTask } from "@oncethrough/engine/design/section-coil-task";
import { readForm } from "@oncethrough/engine/form/read";
import type { SectionKind } from "@oncethrough/engine/section/contract";
import { type CoilValues, coilKinds } from "./coil-file.ts";
import { coilCondition, dryAirFlowOf, enteringAir, liquidSupply, roomyCabinet } from "./coil-output.ts";

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
  readonly present?: AnyAlternative;
  readonly candidates: readonly AnyAlternative[];
}

/** A way to build a coil of any kind. */
export type AnyAlternative = CoilAlternative | SectionCoilAlternative;

/** Limits of a file that gives none. */
const noneGiven = readForm("{}", coilLimitFields, { component: () => undefined, componentNames: () => [] }).values!;

/**
 * Looks for other ways to build the coil of a file.
 *
 * @throws SectionProblem when the coil of the file cannot be built
 */
export function alternativesOf(values: CoilValues, catalogue: Catalogue, wish: Wish): AlternativesOutput {
  if (isRatedCoil(values.coil.kind)) return sectionAlternativesOf(values, catalogue, wish);
  const coil = values.coil as unknown as LiquidCoilValues;
  const { limits } = values;
  const task = coilTask(
    {
      values: coil,
      frame: { ...(values.cabinet ?? roomyCabinet), hand: "right" },
      air: (blocks) =>
        enteringAir(
          values,
          dryAirFlowOf(values, () => blocks.present.faceArea),
        ),
      // A file with a coil on water has its water; the check of the file sees to it.
      supply: liquidSupply(values.water!),
      wanted: values.air.leaving,
      limits: limits ?? noneGiven,
    },
    catalogue,
  );
  return toOutput(coil.kind, coilAlternatives(task, wish.sort), wish);
}

function sectionAlternativesOf(values: CoilValues, catalogue: Catalogue, wish: Wish): AlternativesOutput {
  const coil = values.coil as unknown as RatedCoilValues;
  const kind = coilKinds.find(({ name }) => name === coil.kind) as SectionKind;
  const task = sectionCoilTask(
    {
      values: coil,
      frame: { ...(values.cabinet ?? roomyCabinet), hand: "right" },
      air: (block) =>
        enteringAir(
          values,
          dryAirFlowOf(values, () => block.faceArea),
        ),
      at: (leaving, dryAirFlow) => coilCondition(kind, { ...values, air: { ...values.air, leaving } }, dryAirFlow),
      wanted: values.air.leaving,
      limits: values.limits ?? noneGiven,
    },
    catalogue,
  );
  return toOutput(coil.kind, sectionCoilAlternatives(task, wish.sort), wish);
}

interface Wish {
  readonly sort: CoilSorting;
  readonly most: number;
}

interface Choice {
  readonly looked: number;
  readonly refused: CoilChoice["refused"];
  readonly wanted: number;
  readonly present: AnyAlternative | undefined;
  readonly candidates: readonly AnyAlternative[];
}

function toOutput(kind: string, choice: Choice, wish: Wish): AlternativesOutput {
  return {
    format: "oncethrough coil alternatives 1",
    kind,
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
