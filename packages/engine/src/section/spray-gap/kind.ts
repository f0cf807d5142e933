import { boxFrictionLoss } from "#component/fitting-loss";
import { quantity, type ValuesOf } from "#form/field";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { defineKind, type Frame, type SectionCondition, type SectionRating } from "../contract.ts";
import { frameArea } from "../damper-part.ts";
import { requireFit } from "../fit.ts";
import { pencilFor } from "../pencil.ts";
import { drawHatch } from "../pencil-shape.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import { sprayGapParts } from "./parts.ts";

const fields = {
  length: quantity("length", {
    meaning: "Clear length before the coil face",
    default: "12 in",
    minimum: "4 in",
    maximum: "4 ft",
  }),
  hatchWidth: quantity("length", { meaning: "Width of the hatch", default: "8 in", minimum: "3 in", maximum: "4 ft" }),
  hatchHeight: quantity("length", {
    meaning: "Height of the hatch",
    default: "36 in",
    minimum: "6 in",
    maximum: "10 ft",
  }),
} as const;

/** A spray gap ready to be rated. */
export interface SprayGapDesign extends ValuesOf<typeof fields> {
  readonly frictionLoss: number;
  readonly area: number;
}

/** A spray gap at a condition. */
export interface SprayGapRating extends SectionRating {
  density: number;
}

function prepare(values: ValuesOf<typeof fields>, frame: Frame): SprayGapDesign {
  requireFit("hatchWidth", "the hatch is wider than the gap is long", values.hatchWidth, values.length);
  requireFit("hatchHeight", "the hatch is higher than the cabinet", values.hatchHeight, frame.height);
  return { ...values, frictionLoss: boxFrictionLoss(values.length, frame.width, frame.height), area: frameArea(frame) };
}

function rate(design: SprayGapDesign, air: Air, _: SectionCondition, out: SprayGapRating): void {
  beginRating(air, out);
  out.density = airDensity(air);
  out.faceVelocity = actualAirflow(air) / design.area;
  out.totalPressureLoss = design.frictionLoss * 0.5 * out.density * out.faceVelocity * out.faceVelocity;
  endRating(out, design.area);
}

const atRest = recordAtRest<SprayGapRating>({ ...createSectionRating(), density: 0 });

/** A short space before a coil face. */
export const sprayGap = defineKind({
  name: "spray gap",
  meaning: "Short space before a coil face, washed through hatches, not entered",
  fields,
  prepare,
  createRating: () => ({ ...atRest, entering: createAir(), leaving: createAir() }),
  rate,
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: sprayGapParts,
  picture: (design, frame, name) => {
    const pencil = pencilFor(name);
    const [width, height] = [design.hatchWidth * 1000, design.hatchHeight * 1000];
    const x = (design.length * 1000 - width) / 2;
    drawHatch(pencil, x, (frame.height * 1000 - height) / 2, width, height, "spray hatch");
    return pencil.items;
  },
  losses: (design, rating) => [
    {
      part: "walls",
      pressure: rating.totalPressureLoss,
      plane: "section",
      area: design.area,
      velocity: rating.faceVelocity,
      density: rating.density,
      source: "common-practice Darcy friction factor of 0.02",
    },
  ],
  figures: [
    { figure: "faceVelocity", name: "velocity in the section", quantity: "velocity" },
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
  ],
  working: [
    {
      figure: "totalPressureLoss",
      name: "wall friction",
      quantity: "pressureDifference",
      equation: "Δp = K ½ ρ V²",
      terms: [
        { symbol: "K", name: "friction of the walls", quantity: "factor", value: (_, d) => d.frictionLoss },
        { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
        { symbol: "V", name: "velocity in the section", quantity: "velocity", value: (r) => r.faceVelocity },
      ],
      evaluate: (r, d) => d.frictionLoss * 0.5 * r.density * r.faceVelocity * r.faceVelocity,
      source: "common-practice Darcy friction factor of 0.02",
    },
  ],
});
