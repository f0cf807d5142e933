import { defineKind, type Opening, type WorkingLine } from "../contract.ts";
import { type DischargePlenumDesign, dischargePlenumFields, prepareDischargePlenum } from "./design.ts";
import { dischargePlenumLosses } from "./losses.ts";
import { dischargePlenumParts } from "./parts.ts";
import { drawDischargePlenum } from "./picture.ts";
import { createDischargePlenumRating, type DischargePlenumRating, rateDischargePlenum } from "./rate.ts";
import { dischargePlenumSound } from "./sound.ts";

const working: readonly WorkingLine<DischargePlenumDesign, DischargePlenumRating>[] = [
  {
    figure: "expansionLoss",
    name: "loss of spreading into the plenum",
    quantity: "pressureDifference",
    equation: "Δp = ½ ρ (v₁ − v₂)², nothing when v₁ < v₂",
    terms: [
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "v₁", name: "velocity at which the stream comes", quantity: "velocity", value: (r) => r.entryVelocity },
      { symbol: "v₂", name: "velocity in the plenum", quantity: "velocity", value: (r) => r.plenumVelocity },
    ],
    evaluate: (r) => 0.5 * r.density * Math.max(r.entryVelocity - r.plenumVelocity, 0) ** 2,
    source: "idelchik-handbook sudden expansion, Borda and Carnot",
  },
  {
    figure: "turnLoss",
    name: "loss of the turn",
    quantity: "pressureDifference",
    equation: "Δp = K ½ ρ v₂²",
    terms: [
      { symbol: "K", name: "1 where the duct leaves up or down", quantity: "factor", value: (_, d) => d.turnLoss },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "v₂", name: "velocity in the plenum", quantity: "velocity", value: (r) => r.plenumVelocity },
    ],
    evaluate: (r, d) => d.turnLoss * 0.5 * r.density * r.plenumVelocity ** 2,
    source: "derived-here the plenum's velocity pressure is lost whole",
  },
  {
    figure: "ductEntryLoss",
    name: "loss at the duct's edge",
    quantity: "pressureDifference",
    equation: "Δp = K ½ ρ v₃²",
    terms: [
      { symbol: "K", name: "loss of the edge", quantity: "factor", value: (_, d) => d.entryLoss },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "v₃", name: "velocity in the duct", quantity: "velocity", value: (r) => r.ductVelocity },
    ],
    evaluate: (r, d) => d.entryLoss * 0.5 * r.density * r.ductVelocity ** 2,
    source: "rennels-hudson-2012 entrance, less what the plenum is larger by",
  },
];

/** Where the unit hands its air to the duct. */
export const dischargePlenum = defineKind({
  name: "discharge plenum",
  meaning: "Chamber behind the fan from which the supply duct leaves, horizontally, up or down",
  fields: dischargePlenumFields,
  prepare: prepareDischargePlenum,
  createRating: createDischargePlenumRating,
  rate: (design, air, _condition, out) => rateDischargePlenum(design, air, out),
  layout: (design, frame) => ({ length: design.length, outside: 0, openings: [openingOf(design, frame.height)] }),
  parts: dischargePlenumParts,
  picture: drawDischargePlenum,
  sound: (design, _rating, room) => dischargePlenumSound(design, room),
  // The plenum holds the pressure of the stream before the duct speeds it up again.
  wallPressure: (rating) =>
    rating.entering.totalPressure -
    rating.expansionLoss -
    0.5 * rating.density * Math.min(rating.plenumVelocity, rating.entryVelocity) ** 2,
  losses: dischargePlenumLosses,
  figures: [
    { figure: "ductStaticPressure", name: "static pressure into the duct", quantity: "pressureDifference" },
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
    { figure: "expansionLoss", name: "of it spreading", quantity: "pressureDifference" },
    { figure: "turnLoss", name: "of it turn", quantity: "pressureDifference" },
    { figure: "ductEntryLoss", name: "of it duct's edge", quantity: "pressureDifference" },
    { figure: "entryVelocity", name: "velocity of the stream that comes", quantity: "velocity" },
    { figure: "plenumVelocity", name: "velocity in the plenum", quantity: "velocity" },
    { figure: "ductVelocity", name: "velocity in the duct", quantity: "velocity" },
  ],
  working,
});

function openingOf(design: DischargePlenumDesign, frameHeight: number): Opening {
  const wall = design.direction === "horizontal" ? frameHeight : design.length;
  const from = (wall - design.outletHeight) / 2;
  const face = design.direction === "horizontal" ? "exit" : design.direction === "up" ? "top" : "bottom";
  return { air: "supply", face, from, to: from + design.outletHeight };
}
