import { ratedCoilKinds } from "@oncethrough/engine/design/choosable";
import { coilRefusals, coilSortings } from "@oncethrough/engine/design/coil-alternative";
import { listOf, number, published, record, text } from "../schema/describe.ts";
import { type AlternativeField, alternativeFields, alternativeFigures } from "./alternatives-columns.ts";

/** What an alternative of one sort of coil tells. */
function alternative(fields: readonly AlternativeField[]): object {
  return record(
    Object.fromEntries(
      fields.map((field) => {
        const { says } = alternativeFigures[field];
        if (field === "present" || field === "turbulators") return [field, { type: "boolean", description: says }];
        return [field, field === "surface" ? text(says) : number(says)];
      }),
    ),
  );
}

const anyAlternative = { anyOf: Object.values(alternativeFields).map(alternative) };

/** The published schema of `oncethrough coil --alternatives --json`. */
export function alternativesSchema(): object {
  return published(
    "coil-alternatives",
    "Other ways to build a coil, as printed by `oncethrough coil --alternatives --json`; all numbers in SI units",
    record(
      {
        format: { const: "oncethrough coil alternatives 1" },
        kind: { enum: ["chilled-water coil", "hot-water coil", ...ratedCoilKinds] },
        wantedLeaving: number("°C of dry bulb"),
        sortedBy: { enum: [...coilSortings] },
        priceFormula: text("how the price index comes about"),
        looked: number("ways looked at"),
        met: number("ways that do the duty within the limits; the list may be shorter"),
        refused: record(Object.fromEntries(coilRefusals.map((each) => [each, number("ways left out for this first")]))),
        present: anyAlternative,
        candidates: listOf(anyAlternative),
      },
      "present",
    ),
  );
}
