import { boxFrictionLoss } from "#component/fitting-loss";
import { choice, flag, quantity, type ValuesOf } from "#form/field";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { defineKind, type Frame, type Note, type SectionCondition, type SectionRating } from "../contract.ts";
import { frameArea } from "../damper-part.ts";
import { requireFit } from "../fit.ts";
import { pencilFor } from "../pencil.ts";
import { drawDoor } from "../pencil-shape.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import { accessParts } from "./parts.ts";

const fields = {
  length: quantity("length", { meaning: "Clear length", default: "30 in", minimum: "12 in", maximum: "20 ft" }),
  doorWidth: quantity("length", {
    meaning: "Clear width of the door",
    default: "24 in",
    minimum: "12 in",
    maximum: "6 ft",
  }),
  doorHeight: quantity("length", {
    meaning: "Clear height of the door",
    default: "72 in",
    minimum: "18 in",
    maximum: "10 ft",
  }),
  hinges: choice(["upstream", "downstream"], { meaning: "Edge on which the door is hinged", default: "upstream" }),
  swing: choice(["outward", "inward"], { meaning: "Which way the door opens", default: "outward" }),
  window: flag({ meaning: "A view port in the door", default: true }),
  light: flag({ meaning: "A light inside", default: true }),
} as const;

/** A walk-in access ready to be rated. */
export interface AccessDesign extends ValuesOf<typeof fields> {
  readonly frictionLoss: number;
  readonly area: number;
}

/** A walk-in access at a condition. */
export interface AccessRating extends SectionRating {
  density: number;
  /** Pa of the compartment against its surroundings: what the door feels. */
  doorPressure: number;
  /** N at the handle, across the door from its hinges, that hold the door against the pressure. */
  handleForce: number;
}

function prepare(values: ValuesOf<typeof fields>, frame: Frame): AccessDesign {
  requireFit("doorWidth", "the door is wider than the section is long", values.doorWidth, values.length);
  requireFit("doorHeight", "the door is higher than the cabinet", values.doorHeight, frame.height);
  return { ...values, frictionLoss: boxFrictionLoss(values.length, frame.width, frame.height), area: frameArea(frame) };
}

function rate(design: AccessDesign, air: Air, _: SectionCondition, out: AccessRating): void {
  beginRating(air, out);
  out.density = airDensity(air);
  out.faceVelocity = actualAirflow(air) / design.area;
  out.totalPressureLoss = design.frictionLoss * 0.5 * out.density * out.faceVelocity * out.faceVelocity;
  endRating(out, design.area);
  out.doorPressure = out.leaving.staticPressure;
  out.handleForce = 0.5 * Math.abs(out.doorPressure) * design.doorWidth * design.doorHeight;
}

/** N above which a person finds a door hard to open or to hold: common practice of egress doors, from memory. */
const heavyDoor = 130;

const atRest = recordAtRest<AccessRating>({ ...createSectionRating(), density: 0, doorPressure: 0, handleForce: 0 });

/** A space that a person enters. */
export const access = defineKind({
  name: "access",
  meaning: "Walk-in space with a door, for cleaning and service",
  fields,
  prepare,
  createRating: () => ({ ...atRest, entering: createAir(), leaving: createAir() }),
  rate,
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: accessParts,
  picture: (design, frame, name) => {
    const pencil = pencilFor(name);
    const [width, height] = [design.doorWidth * 1000, design.doorHeight * 1000];
    const x = (design.length * 1000 - width) / 2;
    const y = Math.min(0.08 * frame.height * 1000, frame.height * 1000 - height);
    if (design.light) {
      const lightX = design.length * 500;
      pencil.line("light", "fine", [lightX - 60, frame.height * 1000 - 12, lightX + 60, frame.height * 1000 - 12], {
        label: "light",
      });
    }
    drawDoor(pencil, { x, y, width, height, hinges: design.hinges, window: design.window, label: "access door" });
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
    { figure: "doorPressure", name: "pressure on the door", quantity: "pressureDifference" },
    { figure: "handleForce", name: "force of it at the handle", quantity: "force" },
  ],
  working: [
    {
      figure: "handleForce",
      name: "force at the handle",
      quantity: "force",
      equation: "F = ½ |p| w h",
      terms: [
        { symbol: "p", name: "pressure on the door", quantity: "pressureDifference", value: (r) => r.doorPressure },
        { symbol: "w", name: "width of the door", quantity: "length", value: (_, d) => d.doorWidth },
        { symbol: "h", name: "height of the door", quantity: "length", value: (_, d) => d.doorHeight },
      ],
      evaluate: (r, d) => 0.5 * Math.abs(r.doorPressure) * d.doorWidth * d.doorHeight,
      source: "definition moments about the hinges",
    },
  ],
  notes: (design, rating) => {
    const notes: Note[] = [];
    const opensWithPressure = rating.doorPressure > 0 === (design.swing === "outward");
    if (rating.handleForce > heavyDoor) {
      const what = opensWithPressure
        ? "pressure throws this door open when it is unlatched: stop the fan before opening it, and fit a safety catch"
        : "pressure holds this door shut with more than a person pulls: stop the fan before opening it; nobody may be shut in";
      notes.push({ what, weight: "caution", source: "common-practice" });
    }
    return notes;
  },
});
