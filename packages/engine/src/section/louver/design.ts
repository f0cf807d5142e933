import { type Louver, louverCoreArea, louverFreeArea } from "#component/louver";
import type { WireScreen } from "#component/wire-screen";
import { choice, component, flag, quantity, type ValuesOf } from "#form/field";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";
import { frameArea } from "../damper-part.ts";
import { requireFit } from "../fit.ts";

/** What a person writes about a louver. */
export const louverFields = {
  louver: component<Louver>()("louver", { meaning: "The louver's record in the catalogue" }),
  width: quantity("length", {
    meaning: "Gross width; the cabinet's clear width when left out",
    optional: true,
    minimum: "12 in",
    maximum: "30 ft",
  }),
  height: quantity("length", {
    meaning: "Gross height; the cabinet's clear height when left out",
    optional: true,
    minimum: "12 in",
    maximum: "20 ft",
  }),
  exposure: choice(["weather", "behind a hood"], {
    meaning: "Whether rain and snow fall onto the louver itself, or a hood stands before it",
    default: "weather",
  }),
  screen: component<WireScreen>()("wire screen", {
    meaning: "The record of a bird screen behind the louver, where it has one",
    optional: true,
  }),
  cloggedShare: quantity("share", {
    meaning: "Part of the screen's open area that leaves and frost have closed",
    default: "10 %",
    minimum: "0 %",
    maximum: "90 %",
  }),
  drainPan: flag({ meaning: "A drained pan behind the louver", default: true }),
  length: quantity("length", {
    meaning: "Length in the cabinet, drain pan included",
    default: "12 in",
    minimum: "2 in",
    maximum: "6 ft",
  }),
} as const;

/** A louver ready to be rated. Three areas, kept apart: gross, core, free. */
export interface LouverDesign {
  readonly louver: Louver;
  readonly width: number;
  readonly height: number;
  readonly faceArea: number;
  readonly coreArea: number;
  readonly freeArea: number;
  readonly cabinetArea: number;
  readonly isExposed: boolean;
  readonly screen: WireScreen | undefined;
  readonly cloggedShare: number;
  readonly drainPan: boolean;
  readonly length: number;
}

/** Fits the louver to the cabinet. */
export function prepareLouver(values: ValuesOf<typeof louverFields>, frame: Frame): LouverDesign {
  const width = values.width ?? frame.width;
  const height = values.height ?? frame.height;
  requireFit("width", "the louver is larger than the cabinet", width, frame.width);
  requireFit("height", "the louver is larger than the cabinet", height, frame.height);
  if (values.length < values.louver.bladeDepth) {
    const depth = inBothUnits(values.louver.bladeDepth, "length");
    throw new SectionProblem("length", "the blades are deeper than the section is long", `at least ${depth}`);
  }
  const freeArea = louverFreeArea(values.louver, width, height);
  if (!(freeArea > 0)) {
    throw new SectionProblem("height", "the louver's frame leaves no free area", "a larger louver");
  }
  return {
    louver: values.louver,
    width,
    height,
    faceArea: width * height,
    coreArea: louverCoreArea(values.louver, width, height),
    freeArea,
    cabinetArea: frameArea(frame),
    isExposed: values.exposure === "weather",
    screen: values.screen,
    cloggedShare: values.cloggedShare,
    drainPan: values.drainPan,
    length: values.length,
  };
}
