import { abruptExpansionLoss } from "#component/fitting-loss";
import { defineKind, type Note, type WorkingLine } from "../contract.ts";
import { snowAdvice } from "../snow-advice.ts";
import { type IntakeHoodDesign, intakeHoodFields, prepareIntakeHood } from "./design.ts";
import { intakeHoodLosses } from "./losses.ts";
import { intakeHoodParts } from "./parts.ts";
import { drawIntakeHood } from "./picture.ts";
import { createIntakeHoodRating, type IntakeHoodRating, rateIntakeHood } from "./rate.ts";
import { intakeHoodSound } from "./sound.ts";

const working: readonly WorkingLine<IntakeHoodDesign, IntakeHoodRating>[] = [
  {
    figure: "openingVelocity",
    name: "velocity in the opening",
    quantity: "velocity",
    equation: "V = Q / A",
    terms: [
      { symbol: "Q", name: "airflow at its own density", quantity: "actualAirflow", value: (r) => r.actualAirflow },
      { symbol: "A", name: "area of the opening", quantity: "area", value: (_, d) => d.openingArea },
    ],
    evaluate: (r, d) => r.actualAirflow / d.openingArea,
    source: "definition",
  },
  {
    figure: "turnLoss",
    name: "loss of opening and turn",
    quantity: "pressureDifference",
    equation: "Δp = K ½ ρ V²",
    terms: [
      {
        symbol: "K",
        name: "loss on the velocity in the opening",
        quantity: "factor",
        value: (_, d) => d.lossCoefficient,
      },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "V", name: "velocity in the opening", quantity: "velocity", value: (r) => r.openingVelocity },
    ],
    evaluate: (r, d) => d.lossCoefficient * 0.5 * r.density * r.openingVelocity * r.openingVelocity,
    source: "from-memory hood loss; enter a better one where it is known",
  },
  {
    figure: "expansionLoss",
    name: "loss of widening into the cabinet",
    quantity: "pressureDifference",
    equation: "Δp = (1 − A₁/A₂)² ½ ρ V²",
    terms: [
      { symbol: "A₁", name: "area of the throat", quantity: "area", value: (_, d) => d.throatArea },
      { symbol: "A₂", name: "clear area of the cabinet", quantity: "area", value: (_, d) => d.cabinetArea },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "V", name: "velocity in the throat", quantity: "velocity", value: (r) => r.throatVelocity },
    ],
    evaluate: (r, d) =>
      abruptExpansionLoss(d.throatArea / d.cabinetArea) * 0.5 * r.density * r.throatVelocity * r.throatVelocity,
    source: "definition momentum balance of Borda and Carnot",
  },
];

/** Outdoor air rises into a hood through a bird screen. */
export const intakeHood = defineKind({
  name: "intake hood",
  meaning: "Weather hood before the intake, open underneath or in front, with its bird screen",
  fields: intakeHoodFields,
  prepare: prepareIntakeHood,
  createRating: createIntakeHoodRating,
  rate: rateIntakeHood,
  layout: (design, frame) => ({
    length: 0,
    outside: design.projection,
    openings: [
      {
        air: "outside",
        face: "entry",
        hood: design.facesDown ? "facing down" : "facing out",
        from: frame.height - design.throatHeight,
        to: frame.height,
      } as const,
    ],
  }),
  parts: intakeHoodParts,
  picture: drawIntakeHood,
  sound: intakeHoodSound,
  losses: intakeHoodLosses,
  figures: [
    { figure: "openingVelocity", name: "velocity in the opening", quantity: "velocity" },
    { figure: "throatVelocity", name: "velocity in the throat", quantity: "velocity" },
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
    { figure: "turnLoss", name: "of it opening and turn", quantity: "pressureDifference" },
    { figure: "screenLoss", name: "of it bird screen", quantity: "pressureDifference" },
    { figure: "expansionLoss", name: "of it widening into the cabinet", quantity: "pressureDifference" },
    { figure: "precipitationShare", name: "share of rain or snow lifted", quantity: "share" },
    { figure: "precipitation", name: "rain or snow taken in", quantity: "massFlow" },
  ],
  working,
  notes: (design, rating, { condition }) => {
    const notes: Note[] = [];
    if (condition.outdoor.rain > 0 && rating.entering.dryBulb < 0 && rating.precipitationShare > 0) {
      notes.push({
        what: "snow rises with the air into the hood: keep a drained, accessible space behind it",
        weight: "caution",
        source: "locatelli-hobbs-1974",
      });
    }
    if (condition.outdoor.rain > 0 && !design.facesDown) {
      notes.push({ what: "a hood open in front keeps no rain out that comes with the air", weight: "caution" });
    }
    const { openingVelocity: velocity, density } = rating;
    const { facesDown: isRising, openingArea: area } = design;
    return [...notes, ...snowAdvice(condition, { velocity, area, density, plane: "the hood's opening", isRising })];
  },
});
