import { correlationNames } from "#component/finned-surface/correlation";
import type { FinnedSurface } from "#component/finned-surface/family";
import { finMaterialNames, tubeMaterialNames } from "#component/finned-surface/material";
import { choice, component, integer, quantity } from "#form/field";

/** What a person writes about the core of any coil, steam or liquid. */
export const coilCoreFields = {
  finnedHeight: quantity("length", {
    meaning: "Height of the fins of one coil; what the cabinet leaves when left out",
    optional: true,
    minimum: "3 in",
    maximum: "12 ft",
  }),
  finnedLength: quantity("length", {
    meaning: "Length of the tubes between the tube sheets; what the cabinet leaves when left out",
    optional: true,
    minimum: "6 in",
    maximum: "28 ft",
  }),
  stacked: integer({ meaning: "Coils one above the other", default: 1, minimum: 1, maximum: 6 }),
  finThickness: quantity("smallLength", {
    meaning: "Fin thickness; the surface's when left out",
    optional: true,
    minimum: "0.003 in",
    maximum: "0.03 in",
  }),
  finMaterial: choice(finMaterialNames, {
    meaning: "What the fins are made of; the surface's when left out",
    optional: true,
  }),
  tubeWall: quantity("smallLength", {
    meaning: "Wall of the tubes; the surface's when left out",
    optional: true,
    minimum: "0.01 in",
    maximum: "0.15 in",
  }),
  tubeMaterial: choice(tubeMaterialNames, {
    meaning: "What the tubes are made of; the surface's when left out",
    optional: true,
  }),
  correlation: choice(correlationNames, {
    meaning:
      "Published air-side correlation; the surface's own when left out, and where its record names none the one in range or nearest to it",
    optional: true,
  }),
  foulingInside: quantity("foulingResistance", {
    meaning: "Fouling inside the tubes",
    default: "0.00005 m²K/W",
    minimum: "0 m²K/W",
    maximum: "0.002 m²K/W",
  }),
  foulingOutside: quantity("foulingResistance", {
    meaning: "Fouling on the fins",
    default: "0 m²K/W",
    minimum: "0 m²K/W",
    maximum: "0.02 m²K/W",
  }),
  length: quantity("length", {
    meaning: "Length of the section; the coil's casing and its clearances when left out",
    optional: true,
    minimum: "4 in",
    maximum: "12 ft",
  }),
} as const;

/** Rows and fins, with the defaults of a kind. */
export function rowFields<const Rows extends number, const Fins extends string>(rows: Rows, most: number, fins: Fins) {
  return {
    rows: integer({ meaning: "Tube rows along the flow", default: rows, minimum: 1, maximum: most }),
    fins: quantity("pitch", {
      meaning: "Fins per length of tube",
      default: fins,
      minimum: "3 per in",
      maximum: "18 per in",
    }),
  } as const;
}

/** The finned surface, with the record that a kind takes when none is named. */
export function surfaceField<const Name extends string>(name: Name) {
  return component<FinnedSurface>()("finned surface", {
    meaning: "Record of tubes, pitches and fins in the catalogue",
    default: name,
  });
}

/** Circuits and what goes with liquid in tubes. */
export const liquidCoilFields = {
  circuits: integer({
    meaning: "Liquid circuits of one coil; one for each tube of a row when left out",
    optional: true,
    minimum: 1,
    maximum: 800,
  }),
  connectionEnds: choice(["as the circuits give", "same end", "opposite ends"], {
    meaning:
      "Where supply and return have to be: an even number of passes brings them to the same end, an odd one to opposite ends",
    default: "as the circuits give",
  }),
  flowPath: choice(["counter", "parallel"], {
    meaning: "Liquid enters at the leaving-air side (counter) or with the air (parallel)",
    default: "counter",
  }),
  turbulators: choice(["none", "wire"], { meaning: "Inserts that keep slow flow turbulent", default: "none" }),
} as const;
