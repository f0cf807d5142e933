import type { SteamDispersion } from "#component/steam-dispersion";
import { component, quantity, type ValuesOf } from "#form/field";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";
import { frameArea } from "../damper-part.ts";
import { requireFit } from "../fit.ts";

/** What a person writes about a steam humidifier. */
export const steamHumidifierFields = {
  dispersion: component<SteamDispersion>()("steam dispersion", {
    meaning: "The dispersion panel's record in the catalogue",
  }),
  width: quantity("length", {
    meaning: "Width of the panel; the cabinet's clear width when left out",
    optional: true,
    minimum: "6 in",
    maximum: "30 ft",
  }),
  height: quantity("length", {
    meaning: "Height of the panel; the cabinet's clear height when left out",
    optional: true,
    minimum: "6 in",
    maximum: "20 ft",
  }),
  capacity: quantity("massFlow", {
    meaning: "Most steam that valve and panel let into the air; without limit when left out",
    optional: true,
    minimum: "1 lb/h",
    maximum: "20000 lb/h",
  }),
  position: quantity("length", {
    meaning: "From the entry of the section to the tubes",
    default: "6 in",
    minimum: "1 in",
    maximum: "6 ft",
  }),
  length: quantity("length", { meaning: "Length of the section", default: "42 in", minimum: "6 in", maximum: "20 ft" }),
} as const;

/** A humidifier ready to be rated. */
export interface SteamHumidifierDesign {
  readonly dispersion: SteamDispersion;
  readonly width: number;
  readonly height: number;
  readonly faceArea: number;
  readonly cabinetArea: number;
  readonly capacity: number;
  readonly position: number;
  readonly length: number;
  /** m behind the tubes in this section. */
  readonly absorptionRoom: number;
}

/** Fits the panel to the cabinet. */
export function prepareSteamHumidifier(
  values: ValuesOf<typeof steamHumidifierFields>,
  frame: Frame,
): SteamHumidifierDesign {
  const width = values.width ?? frame.width;
  const height = values.height ?? frame.height;
  requireFit("width", "the panel is larger than the cabinet", width, frame.width);
  requireFit("height", "the panel is larger than the cabinet", height, frame.height);
  if (values.position >= values.length) {
    throw new SectionProblem(
      "position",
      "the tubes lie behind the section's end",
      `less than ${inBothUnits(values.length, "length")}`,
    );
  }
  return {
    dispersion: values.dispersion,
    width,
    height,
    faceArea: width * height,
    cabinetArea: frameArea(frame),
    capacity: values.capacity ?? Number.POSITIVE_INFINITY,
    position: values.position,
    length: values.length,
    absorptionRoom: values.length - values.position,
  };
}
