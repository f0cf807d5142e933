import type { MoistureEliminator } from "#component/moisture-eliminator";
import { component, quantity, type ValuesOf } from "#form/field";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";
import { frameArea } from "../damper-part.ts";
import { requireFit } from "../fit.ts";

/** What a person writes about a moisture eliminator. */
export const moistureEliminatorFields = {
  eliminator: component<MoistureEliminator>()("moisture eliminator", {
    meaning: "The eliminator's record in the catalogue",
  }),
  width: quantity("length", {
    meaning: "Width of its face; the cabinet's clear width when left out",
    optional: true,
    minimum: "12 in",
    maximum: "30 ft",
  }),
  height: quantity("length", {
    meaning: "Height of its face; the cabinet's clear height when left out",
    optional: true,
    minimum: "12 in",
    maximum: "20 ft",
  }),
  length: quantity("length", { meaning: "Length of the section", default: "12 in", minimum: "3 in", maximum: "6 ft" }),
} as const;

/** An eliminator ready to be rated. */
export interface MoistureEliminatorDesign {
  readonly eliminator: MoistureEliminator;
  readonly width: number;
  readonly height: number;
  readonly faceArea: number;
  readonly cabinetArea: number;
  readonly length: number;
}

/** Fits the eliminator to the cabinet. */
export function prepareMoistureEliminator(
  values: ValuesOf<typeof moistureEliminatorFields>,
  frame: Frame,
): MoistureEliminatorDesign {
  const width = values.width ?? frame.width;
  const height = values.height ?? frame.height;
  requireFit("width", "the eliminator is larger than the cabinet", width, frame.width);
  requireFit("height", "the eliminator is larger than the cabinet", height, frame.height);
  if (values.length < values.eliminator.depth) {
    const depth = inBothUnits(values.eliminator.depth, "length");
    throw new SectionProblem("length", "the blades are deeper than the section is long", `at least ${depth}`);
  }
  const { eliminator, length } = values;
  return { eliminator, width, height, faceArea: width * height, cabinetArea: frameArea(frame), length };
}
