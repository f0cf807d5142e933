import { defineKind, type Note, type Shortfall, type WorkingLine } from "../contract.ts";
import { openSound } from "../passing-sound.ts";
import { prepareSteamHumidifier, type SteamHumidifierDesign, steamHumidifierFields } from "./design.ts";
import { steamHumidifierLosses } from "./losses.ts";
import { steamHumidifierParts } from "./parts.ts";
import { drawSteamHumidifier } from "./picture.ts";
import { createSteamHumidifierRating, rateSteamHumidifier, type SteamHumidifierRating } from "./rate.ts";

const working: readonly WorkingLine<SteamHumidifierDesign, SteamHumidifierRating>[] = [
  {
    figure: "steamUsed",
    name: "steam from the supply",
    quantity: "massFlow",
    equation: "ṁ = ṁ_air / (1 − c)",
    terms: [
      { symbol: "ṁ_air", name: "steam into the air", quantity: "massFlow", value: (r) => r.steamToAir },
      {
        symbol: "c",
        name: "share that condenses in the tubes",
        quantity: "share",
        value: (_, d) => d.dispersion.condensingShare,
      },
    ],
    evaluate: (r, d) => r.steamToAir / (1 - d.dispersion.condensingShare),
    source: "definition",
  },
  {
    figure: "waterEnthalpyToAir",
    name: "enthalpy that the steam carries in",
    quantity: "power",
    equation: "Q = ṁ_air h",
    terms: [
      { symbol: "ṁ_air", name: "steam into the air", quantity: "massFlow", value: (r) => r.steamToAir },
      { symbol: "h", name: "enthalpy of the steam", quantity: "enthalpyDifference", value: (r) => r.steamEnthalpy },
    ],
    evaluate: (r) => r.steamToAir * r.steamEnthalpy,
    source: "definition with dry saturated steam at the supply",
  },
];

/** Steam let into the air through a panel of tubes. */
export const steamHumidifier = defineKind({
  name: "steam humidifier",
  role: "humidifying",
  meaning: "Steam dispersed into the air through a panel of tubes",
  fields: steamHumidifierFields,
  prepare: prepareSteamHumidifier,
  createRating: createSteamHumidifierRating,
  rate: rateSteamHumidifier,
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: steamHumidifierParts,
  picture: drawSteamHumidifier,
  sound: (_, { faceVelocity }) => openSound(faceVelocity),
  losses: steamHumidifierLosses,
  orderBy: ["steamUsed", "steamToAir", "absorptionDistance", "faceVelocity"],
  figures: [
    { figure: "humidityRatio", name: "humidity ratio after the tubes", quantity: "humidityRatio" },
    { figure: "relativeHumidity", name: "relative humidity after the tubes", quantity: "share" },
    { figure: "steamToAir", name: "steam into the air", quantity: "massFlow" },
    { figure: "steamUsed", name: "steam from the supply", quantity: "massFlow" },
    { figure: "condensate", name: "condensate of the tubes", quantity: "massFlow" },
    { figure: "absorptionDistance", name: "absorption distance", quantity: "length" },
    { figure: "faceVelocity", name: "face velocity", quantity: "velocity" },
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
  ],
  working,
  shortfalls: (_, rating, { operation }) => {
    const shortfalls: Shortfall[] = [];
    const wanted = operation.humidifierLeaving;
    if (wanted !== undefined && operation.fansRunning && rating.humidityRatio < wanted - 1e-6) {
      shortfalls.push({
        what: "humidity ratio after the humidifier",
        quantity: "humidityRatio",
        wanted,
        got: rating.humidityRatio,
      });
    }
    return shortfalls;
  },
  notes: (design, rating) => {
    const notes: Note[] = [];
    if (rating.limit === "saturation") {
      notes.push({
        what: "the air takes no more steam: the rest would rain out on walls and filters",
        weight: "caution",
      });
    }
    if (rating.limit === "capacity") notes.push({ what: "valve and panel pass no more steam", weight: "information" });
    if (rating.absorptionDistance > design.absorptionRoom) {
      notes.push({
        what: "the steam needs more length than the section has behind the tubes: what follows gets wet",
        weight: "caution",
        source: "derived-here",
      });
    }
    if (rating.steamToAir > 0) {
      notes.push({
        what: "hot steam: close off and vent before opening; drip-leg, trap and high-limit humidistat as local codes ask",
        weight: "caution",
        source: "common-practice",
      });
    }
    return notes;
  },
});
