import { quantity } from "#form/field";
import { inBothUnits } from "../both-units.ts";
import type { FigureLine, Note, SectionRating, WorkingLine } from "../contract.ts";
import type { CoilBlock } from "./block.ts";

/** What a person writes about the freezestat behind a heating coil. */
export const freezestatFields = {
  freezestat: quantity("temperature", {
    meaning: "Air temperature at which the freezestat behind the coil stops the unit; 35 to 38 °F is usual",
    default: "37 °F",
    minimum: "33 °F",
    maximum: "50 °F",
  }),
} as const;

/** What a heating coil reports about the freezestat behind it. */
export interface FreezestatFigures extends SectionRating {
  /** m of element, °C of its set point, K of the coldest filament that reaches it above that. */
  freezestatLength: number;
  freezestatSet: number;
  freezestatMargin: number;
}

/** Zeros for `FreezestatFigures`, to be spread. */
export const noFreezestatFigures = { freezestatLength: 0, freezestatSet: 0, freezestatMargin: 0 } as const;

/** m of element for each m² of face: a foot for each square foot. */
const elementPerFace = 1 / 0.3048;

/** The element that a coil's face asks for, and what its coldest filament has in hand. */
export function setFreezestat(block: CoilBlock, set: number, out: FreezestatFigures): void {
  out.freezestatLength = elementPerFace * block.faceArea;
  out.freezestatSet = set;
  out.freezestatMargin = out.leaving.coldestFilament - set;
}

/** The figures of the freezestat. */
export const freezestatFigureLines: readonly FigureLine<FreezestatFigures>[] = [
  { figure: "freezestatLength", name: "freezestat element", quantity: "length" },
  { figure: "freezestatSet", name: "freezestat set point", quantity: "temperature" },
  { figure: "freezestatMargin", name: "coldest filament above it", quantity: "temperatureDifference" },
];

/** The working of the freezestat. */
export function freezestatWorking<
  Design extends { readonly block: CoilBlock; readonly freezestat: number },
  Rating extends FreezestatFigures,
>(): WorkingLine<Design, Rating>[] {
  return [
    {
      figure: "freezestatLength",
      name: "freezestat element, in serpentine over the face",
      quantity: "length",
      equation: "L = A · 1 ft/ft²",
      terms: [{ symbol: "A", name: "face of all coils", quantity: "area", value: (_, d) => d.block.faceArea }],
      evaluate: (_, d) => elementPerFace * d.block.faceArea,
      source: "freezestat-guide",
    },
    {
      figure: "freezestatMargin",
      name: "coldest filament above the freezestat's set point",
      quantity: "temperatureDifference",
      equation: "Δ = t_filament − t_set",
      terms: [
        {
          symbol: "t_filament",
          name: "coldest filament behind the coil",
          quantity: "temperature",
          value: (r) => r.leaving.coldestFilament,
        },
        { symbol: "t_set", name: "set point", quantity: "temperature", value: (_, d) => d.freezestat },
      ],
      evaluate: (r, d) => r.leaving.coldestFilament - d.freezestat,
      source: "definition",
    },
  ];
}

/** A filament that would trip the freezestat while the unit runs. */
export function freezestatNotes(rating: FreezestatFigures, fansRunning: boolean): Note[] {
  if (!fansRunning || rating.freezestatMargin >= 0) return [];
  return [
    {
      what: `the freezestat trips: the coldest filament behind the coil lies ${inBothUnits(-rating.freezestatMargin, "temperatureDifference")} below its set point, and a foot of the element is enough`,
      weight: "caution",
      source: "freezestat-guide",
    },
  ];
}
