import type { WireScreen } from "#component/wire-screen";
import { choice, component, factor, quantity, type ValuesOf } from "#form/field";
import { fittingLosses } from "#standard/fitting-loss";
import type { Frame } from "../contract.ts";
import { frameArea } from "../damper-part.ts";
import { requireFit } from "../fit.ts";

/** What a person writes about an intake hood. */
export const intakeHoodFields = {
  opening: choice(["facing down", "vertical"], {
    meaning: "Where the hood is open: underneath, so that air rises into it, or in front",
    default: "facing down",
  }),
  projection: quantity("length", {
    meaning: "How far the hood stands out from the cabinet",
    default: "42 in",
    minimum: "6 in",
    maximum: "15 ft",
  }),
  width: quantity("length", {
    meaning: "Width of the hood; the cabinet's clear width when left out",
    optional: true,
    minimum: "12 in",
    maximum: "30 ft",
  }),
  throatHeight: quantity("length", {
    meaning: "Height of the opening from the hood into the cabinet; the cabinet's clear height when left out",
    optional: true,
    minimum: "12 in",
    maximum: "20 ft",
  }),
  screen: component<WireScreen>()("wire screen", {
    meaning: "The bird screen's record in the catalogue",
    default: "typical bird screen 1/2 in",
  }),
  cloggedShare: quantity("share", {
    meaning: "Part of the screen's open area that leaves and frost have closed",
    default: "10 %",
    minimum: "0 %",
    maximum: "90 %",
  }),
  lossCoefficient: factor({
    meaning: "Loss of the opening and the turn behind it, on the velocity in the opening, without the screen",
    optional: true,
    minimum: 0,
    maximum: 10,
  }),
} as const;

/** A hood ready to be rated. */
export interface IntakeHoodDesign {
  readonly facesDown: boolean;
  readonly projection: number;
  readonly width: number;
  readonly throatHeight: number;
  readonly screen: WireScreen;
  readonly cloggedShare: number;
  readonly lossCoefficient: number;
  /** Bibliography key and place of the coefficient, or that the job gives it. */
  readonly lossSource: string;
  /** m²: the opening with its screen, the way into the cabinet, the clear cabinet. */
  readonly openingArea: number;
  readonly throatArea: number;
  readonly cabinetArea: number;
}

/** Fits the hood to the cabinet. */
export function prepareIntakeHood(values: ValuesOf<typeof intakeHoodFields>, frame: Frame): IntakeHoodDesign {
  const width = values.width ?? frame.width;
  const throatHeight = values.throatHeight ?? frame.height;
  requireFit("width", "the hood is wider than the cabinet", width, frame.width);
  requireFit("throatHeight", "the hood's throat is higher than the cabinet", throatHeight, frame.height);
  const facesDown = values.opening === "facing down";
  const usual = facesDown ? fittingLosses.downFacingHood : fittingLosses.flushEntry;
  const throatArea = width * throatHeight;
  return {
    facesDown,
    projection: values.projection,
    width,
    throatHeight,
    screen: values.screen,
    cloggedShare: values.cloggedShare,
    lossCoefficient: values.lossCoefficient ?? usual.coefficient,
    lossSource:
      values.lossCoefficient === undefined ? `${usual.source} on the opening's velocity` : "as entered in the job",
    openingArea: facesDown ? width * values.projection : throatArea,
    throatArea,
    cabinetArea: frameArea(frame),
  };
}
