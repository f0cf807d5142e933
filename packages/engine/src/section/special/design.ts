import { group, list, quantity, text, type ValuesOf } from "#form/field";
import { type Frame, SectionProblem } from "../contract.ts";
import { frameArea } from "../damper-part.ts";

/** What a person writes about a special section. */
export const specialFields = {
  what: text({ meaning: "What the section is, in a line", longest: 120 }),
  curve: list(
    group(
      {
        airflow: quantity("actualAirflow", { meaning: "Airflow through the section", minimum: "1 cfm" }),
        pressureLoss: quantity("pressureDifference", {
          meaning: "Total pressure that it takes",
          minimum: "0.001 in.wg",
        }),
      },
      { meaning: "A point of the pressure curve" },
    ),
    { meaning: "The pressure curve as entered, at the reference density, with rising airflow", fewest: 1, most: 40 },
  ),
  referenceDensity: quantity("density", {
    meaning: "Density at which the curve holds",
    default: "0.075 lb/ft³",
    minimum: "0.04 lb/ft³",
    maximum: "0.1 lb/ft³",
  }),
  length: quantity("length", { meaning: "Length of the section", minimum: "1 in", maximum: "40 ft" }),
  mass: quantity("mass", { meaning: "Mass of the section's own parts", minimum: "0 lb", maximum: "40000 lb" }),
  price: quantity("money", { meaning: "Price of the section's own parts", optional: true }),
  source: text({ meaning: "Where the figures come from: quotation, test, letter", longest: 200 }),
  boxHeight: quantity("length", {
    meaning: "Height of the box that is drawn for it; the cabinet's clear height when left out",
    optional: true,
    minimum: "1 in",
    maximum: "20 ft",
  }),
} as const;

/** A special section ready to be rated. */
export interface SpecialDesign {
  readonly what: string;
  /** ln of airflow (m³/s) and of pressure (Pa), rising. */
  readonly logFlow: readonly number[];
  readonly logLoss: readonly number[];
  readonly referenceDensity: number;
  readonly length: number;
  readonly mass: number;
  /** Cents; undefined when not entered. */
  readonly price: number | undefined;
  readonly source: string;
  readonly boxHeight: number;
  readonly area: number;
}

/** Checks the curve: airflow and pressure rise from point to point. */
export function prepareSpecial(values: ValuesOf<typeof specialFields>, frame: Frame): SpecialDesign {
  values.curve.forEach((point, index) => {
    const before = values.curve[index - 1];
    if (before === undefined) return;
    const isFalling =
      point.airflow <= before.airflow ? "airflow" : point.pressureLoss < before.pressureLoss ? "pressureLoss" : "";
    if (isFalling !== "") {
      const what = isFalling === "airflow" ? "airflow" : "pressure loss";
      throw new SectionProblem(
        `curve[${index}].${isFalling}`,
        `the ${what} of point ${index + 1} does not lie above that of the point before`,
        "points with rising airflow and pressure",
      );
    }
  });
  return {
    what: values.what,
    logFlow: values.curve.map((point) => Math.log(point.airflow)),
    logLoss: values.curve.map((point) => Math.log(point.pressureLoss)),
    referenceDensity: values.referenceDensity,
    length: values.length,
    mass: values.mass,
    price: values.price,
    source: values.source,
    boxHeight: Math.min(frame.height, values.boxHeight ?? frame.height),
    area: frameArea(frame),
  };
}

/**
 * Pa at the reference density: a power law between neighbouring points, carried on with the end pieces' powers; through a
 * single point the square of flow.
 */
export function enteredLoss(design: SpecialDesign, flow: number): number {
  const { logFlow, logLoss } = design;
  const x = Math.log(flow);
  const last = logFlow.length - 1;
  if (last === 0) return Math.exp(logLoss[0]! + 2 * (x - logFlow[0]!));
  let piece = 0;
  while (piece < last - 1 && x > logFlow[piece + 1]!) piece++;
  const power = (logLoss[piece + 1]! - logLoss[piece]!) / (logFlow[piece + 1]! - logFlow[piece]!);
  return Math.exp(logLoss[piece]! + power * (x - logFlow[piece]!));
}
