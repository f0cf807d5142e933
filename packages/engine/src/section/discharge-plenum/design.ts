import { choice, integer, quantity, type ValuesOf } from "#form/field";
import { ductEntryLosses } from "#standard/duct-entry";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";

/** What a job says of its discharge plenum. */
export const dischargePlenumFields = {
  direction: choice(["horizontal", "up", "down"], { meaning: "Where the supply duct leaves", default: "horizontal" }),
  outletWidth: quantity("length", { meaning: "Duct opening across the unit", minimum: "6 in", maximum: "20 ft" }),
  outletHeight: quantity("length", {
    meaning: "Duct opening's height, or its length along the airflow where it leaves up or down",
    minimum: "6 in",
    maximum: "20 ft",
  }),
  outlets: integer({ meaning: "Equal openings side by side", default: 1, minimum: 1, maximum: 8 }),
  edge: choice(["sharp", "rounded", "bell mouth"], {
    meaning: "Edge of the opening: sharp, rounded with a tenth, or with a fifth of its size",
    default: "sharp",
  }),
  length: quantity("length", {
    meaning: "Clear length along the airflow",
    default: "48 in",
    minimum: "6 in",
    maximum: "30 ft",
  }),
} as const;

/** What a job says of its discharge plenum, read. */
export type DischargePlenumValues = ValuesOf<typeof dischargePlenumFields>;

/** A plenum ready to be rated. */
export interface DischargePlenumDesign extends DischargePlenumValues {
  /** m². */
  readonly plenumArea: number;
  readonly ductArea: number;
  /** Velocity pressures in the duct. */
  readonly entryLoss: number;
  /** Velocity pressures in the plenum. */
  readonly turnLoss: number;
}

/** Checks that the openings fit and looks up the loss of their edge. */
export function prepareDischargePlenum(values: DischargePlenumValues, frame: Frame): DischargePlenumDesign {
  const { direction, outletWidth, outletHeight, outlets } = values;
  if (outlets * outletWidth > frame.width + 1e-6) {
    throw new SectionProblem(
      "outletWidth",
      `${outlets === 1 ? "the opening is" : `${outlets} openings are together`} wider than the cabinet`,
      `at most ${inBothUnits(frame.width / outlets, "length")}`,
    );
  }
  const room = direction === "horizontal" ? frame.height : values.length;
  if (outletHeight > room + 1e-6) {
    throw new SectionProblem(
      "outletHeight",
      direction === "horizontal" ? "the opening is higher than the cabinet" : "the opening is longer than the plenum",
      `at most ${inBothUnits(room, "length")}`,
    );
  }
  const plenumArea = frame.width * frame.height;
  const ductArea = outlets * outletWidth * outletHeight;
  const straight = direction === "horizontal";
  const edge = ductEntryLosses[values.edge].coefficient;
  return {
    ...values,
    plenumArea,
    ductArea,
    // An opening nearly as large as the plenum ahead of it narrows the stream little; one in the side wall is entered anew.
    entryLoss: straight ? edge * (1 - ductArea / plenumArea) : edge,
    turnLoss: straight ? 0 : 1,
  };
}
