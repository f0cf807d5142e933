import { defineKind, type Note, type WorkingLine } from "../contract.ts";
import { snowAdvice } from "../snow-advice.ts";
import { type LouverDesign, louverFields, prepareLouver } from "./design.ts";
import { louverLosses } from "./losses.ts";
import { louverParts } from "./parts.ts";
import { drawLouver } from "./picture.ts";
import { createLouverRating, type LouverRating, rateLouver } from "./rate.ts";
import { louverSound } from "./sound.ts";

const working: readonly WorkingLine<LouverDesign, LouverRating>[] = [
  {
    figure: "freeVelocity",
    name: "velocity in the free area",
    quantity: "velocity",
    equation: "V = Q / A",
    terms: [
      { symbol: "Q", name: "airflow at its own density", quantity: "actualAirflow", value: (r) => r.actualAirflow },
      { symbol: "A", name: "free area", quantity: "area", value: (_, d) => d.freeArea },
    ],
    evaluate: (r, d) => r.actualAirflow / d.freeArea,
    source: "definition",
  },
  {
    figure: "marginToOnset",
    name: "margin to the onset of water penetration",
    quantity: "share",
    equation: "m = 1 − V / V₀",
    terms: [
      { symbol: "V", name: "velocity in the free area", quantity: "velocity", value: (r) => r.freeVelocity },
      {
        symbol: "V₀",
        name: "onset of water penetration",
        quantity: "velocity",
        value: (_, d) => d.louver.onsetVelocity,
      },
    ],
    evaluate: (r, d) => 1 - r.freeVelocity / d.louver.onsetVelocity,
    source: "amca-500-l beginning of water penetration",
  },
  {
    figure: "louverLoss",
    name: "loss of the louver",
    quantity: "pressureDifference",
    equation: "Δp = K ½ ρ V²",
    terms: [
      {
        symbol: "K",
        name: "loss on the free-area velocity",
        quantity: "factor",
        value: (_, d) => d.louver.lossCoefficient,
      },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "V", name: "velocity in the free area", quantity: "velocity", value: (r) => r.freeVelocity },
    ],
    evaluate: (r, d) => d.louver.lossCoefficient * 0.5 * r.density * r.freeVelocity * r.freeVelocity,
    source: "definition of the record's loss coefficient",
  },
];

/** Blades that keep rain out of the intake. */
export const louver = defineKind({
  name: "louver",
  meaning: "Moisture-eliminating louver in the intake, drained",
  fields: louverFields,
  prepare: prepareLouver,
  createRating: createLouverRating,
  rate: rateLouver,
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: louverParts,
  picture: drawLouver,
  sound: louverSound,
  losses: louverLosses,
  orderBy: ["freeVelocity", "totalPressureLoss"],
  figures: [
    { figure: "freeVelocity", name: "free-area velocity", quantity: "velocity" },
    { figure: "faceVelocity", name: "face velocity", quantity: "velocity" },
    { figure: "coreVelocity", name: "core velocity", quantity: "velocity" },
    { figure: "marginToOnset", name: "margin to water penetration", quantity: "share" },
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
    { figure: "louverLoss", name: "of it blades", quantity: "pressureDifference" },
    { figure: "screenLoss", name: "of it screen", quantity: "pressureDifference" },
    { figure: "carriedIn", name: "rain or snow that comes through", quantity: "massFlow" },
    { figure: "drained", name: "water drained", quantity: "massFlow" },
  ],
  working,
  notes: (design, rating, { condition }) => {
    const notes: Note[] = [];
    if (rating.marginToOnset < 0) {
      notes.push({
        what: "beyond the onset of water penetration: the amount that comes through is an estimate from memory of test plots",
        weight: "caution",
        source: "amca-500-l",
      });
    }
    if (rating.entering.dryBulb < 0 && rating.carriedIn > 0) {
      notes.push({ what: "no water test covers snow: it follows the air around the blades", weight: "caution" });
    }
    if (rating.carriedIn > 0 && !design.drainPan) {
      notes.push({ what: "water comes through and there is no drained pan behind the louver", weight: "caution" });
    }
    if (
      condition.outdoor.windSpeed > 0 &&
      condition.outdoor.rain > 0 &&
      design.louver.windDrivenClass === "none" &&
      design.isExposed
    ) {
      notes.push({
        what: "the louver has no wind-driven rain class: wind is taken to carry all rain through",
        weight: "information",
      });
    }
    if (!design.isExposed) return notes;
    const { faceVelocity: velocity, density } = rating;
    const intake = { velocity, area: design.faceArea, density, plane: "the louver's face", isRising: false };
    return [...notes, ...snowAdvice(condition, intake)];
  },
});
