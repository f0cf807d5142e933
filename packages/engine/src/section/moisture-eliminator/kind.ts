import { eliminatorVelocityLimit } from "#component/moisture-eliminator";
import { defineKind, type Note } from "../contract.ts";
import { openSound } from "../passing-sound.ts";
import { moistureEliminatorFields, prepareMoistureEliminator } from "./design.ts";
import { moistureEliminatorLosses } from "./losses.ts";
import { moistureEliminatorParts } from "./parts.ts";
import { drawMoistureEliminator } from "./picture.ts";
import { createMoistureEliminatorRating, rateMoistureEliminator } from "./rate.ts";

/** Bent blades behind a wet coil or an intake. */
export const moistureEliminator = defineKind({
  name: "moisture eliminator",
  meaning: "Bent blades that catch carried drops and drain them",
  fields: moistureEliminatorFields,
  prepare: prepareMoistureEliminator,
  createRating: createMoistureEliminatorRating,
  rate: rateMoistureEliminator,
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: moistureEliminatorParts,
  picture: drawMoistureEliminator,
  sound: (_, { faceVelocity }) => openSound(faceVelocity),
  losses: moistureEliminatorLosses,
  orderBy: ["faceVelocity", "totalPressureLoss"],
  figures: [
    { figure: "faceVelocity", name: "face velocity", quantity: "velocity" },
    { figure: "velocityLimit", name: "velocity that tears water off", quantity: "velocity" },
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
    { figure: "capture", name: "share of drops caught", quantity: "share" },
    { figure: "drained", name: "water drained", quantity: "massFlow" },
    { figure: "cutSize", name: "drop of which half is caught", quantity: "smallLength" },
  ],
  working: [
    {
      figure: "totalPressureLoss",
      name: "loss of the blades",
      quantity: "pressureDifference",
      equation: "Δp = K ½ ρ V²",
      terms: [
        {
          symbol: "K",
          name: "loss on the face velocity",
          quantity: "factor",
          value: (_, d) => d.eliminator.lossCoefficient,
        },
        { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
        { symbol: "V", name: "face velocity", quantity: "velocity", value: (r) => r.faceVelocity },
      ],
      evaluate: (r, d) => d.eliminator.lossCoefficient * 0.5 * r.density * r.faceVelocity * r.faceVelocity,
      source: "definition of the record's loss coefficient",
    },
    {
      figure: "velocityLimit",
      name: "velocity that tears water off",
      quantity: "velocity",
      equation: "V = V₀ √(ρ₀/ρ)",
      terms: [
        {
          symbol: "V₀",
          name: "limit in standard air",
          quantity: "velocity",
          value: (_, d) => d.eliminator.highestVelocity,
        },
        { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      ],
      evaluate: (r, d) => eliminatorVelocityLimit(d.eliminator.highestVelocity, r.density),
      source: "souders-brown-1934",
    },
  ],
  notes: (design, rating) => {
    const notes: Note[] = [];
    if (rating.faceVelocity > rating.velocityLimit) {
      notes.push({
        what: "the air tears caught water off the blades again",
        weight: "caution",
        source: "souders-brown-1934",
      });
    }
    if (rating.faceVelocity < design.eliminator.lowestVelocity && rating.entering.freeLiquid > 0) {
      notes.push({ what: "the air is so slow that small drops follow the bends", weight: "information" });
    }
    return notes;
  },
});
