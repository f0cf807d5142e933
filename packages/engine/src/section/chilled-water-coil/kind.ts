import { compareDeclaredLiquid } from "../coil/declared.ts";
import { airSideWorking, liquidSideWorking } from "../coil/figures.ts";
import { freezeFigureLines } from "../coil/freeze.ts";
import { connectionFigureLines } from "../coil/liquid.ts";
import { coilLosses } from "../coil/loss.ts";
import { ratedInlet } from "../coil/notes.ts";
import { liquidCoilBuild } from "../coil/order.ts";
import { liquidCoilTables } from "../coil/row-table.ts";
import { defineKind } from "../contract.ts";
import { coilSound } from "../passing-sound.ts";
import { type ChilledWaterCoilDesign, chilledWaterCoilFields, prepareChilledWaterCoil } from "./design.ts";
import { coolingNotes, coolingShortfalls } from "./notes.ts";
import { chilledWaterCoilParts } from "./parts.ts";
import { drawChilledWaterCoil } from "./picture.ts";
import {
  type ChilledWaterCoilRating,
  completeChilledWaterCoil,
  createChilledWaterCoilRating,
  filmShareOf,
  rateChilledWaterCoil,
} from "./rate.ts";

/** A cooling coil on chilled water or glycol, single or stacked, with its pans. */
export const chilledWaterCoil = defineKind({
  name: "chilled-water coil",
  role: "cooling",
  meaning: "Finned coil that cools and dries the air with chilled water or glycol; single, or stacked with pans",
  fields: chilledWaterCoilFields,
  prepare: prepareChilledWaterCoil,
  createRating: createChilledWaterCoilRating,
  rate: rateChilledWaterCoil,
  complete: completeChilledWaterCoil,
  layout: (design) => ({ length: design.block.length, outside: 0 }),
  parts: chilledWaterCoilParts,
  picture: drawChilledWaterCoil,
  sound: coilSound,
  losses: coilLosses,
  orderBy: [
    "capacity",
    "sensibleCapacity",
    "liquidVolumeFlow",
    "liquidPressureDrop",
    "totalPressureLoss",
    "liquidEntering",
    "liquidLeaving",
  ],
  orderBuild: liquidCoilBuild,
  figures: [
    { figure: "leavingDryBulb", name: "leaving dry bulb", quantity: "temperature" },
    { figure: "leavingWetBulb", name: "leaving wet bulb", quantity: "temperature" },
    { figure: "leavingDewPoint", name: "leaving dew point", quantity: "temperature" },
    { figure: "capacity", name: "total capacity", quantity: "power" },
    { figure: "sensibleCapacity", name: "sensible capacity", quantity: "power" },
    { figure: "latentCapacity", name: "latent capacity", quantity: "power" },
    { figure: "condensate", name: "water drained", quantity: "massFlow" },
    { figure: "panPitch", name: "fins above one drain pan", quantity: "length" },
    { figure: "filmLoading", name: "condensate onto a metre of pan", quantity: "massFlow" },
    { figure: "filmShare", name: "gap between fins taken up by the film at their foot", quantity: "share" },
    { figure: "liquidVolumeFlow", name: "water flow", quantity: "liquidFlow" },
    { figure: "flowShare", name: "share of the full flow", quantity: "share" },
    { figure: "valveStroke", name: "stroke of an equal-percentage valve", quantity: "share" },
    { figure: "liquidEntering", name: "entering water", quantity: "temperature" },
    { figure: "liquidLeaving", name: "leaving water", quantity: "temperature" },
    { figure: "liquidPressureDrop", name: "water pressure drop", quantity: "liquidPressureDrop" },
    { figure: "tubeVelocity", name: "tube velocity", quantity: "liquidVelocity" },
    { figure: "tubeReynolds", name: "Reynolds number in the tubes", quantity: "count" },
    { figure: "faceVelocity", name: "face velocity", quantity: "velocity" },
    { figure: "peakFaceVelocity", name: "face velocity where it peaks", quantity: "velocity" },
    { figure: "carryOverVelocity", name: "velocity that throws water", quantity: "velocity" },
    { figure: "totalPressureLoss", name: "air pressure loss", quantity: "pressureDifference" },
    { figure: "dryLoss", name: "air pressure loss, dry", quantity: "pressureDifference" },
    { figure: "wetLoss", name: "air pressure loss, wet", quantity: "pressureDifference" },
    { figure: "wetShare", name: "share of rows that are wet", quantity: "share" },
    ...connectionFigureLines,
    ...freezeFigureLines("water", "its water stops"),
    { figure: "airCoefficient", name: "air film, dry", quantity: "heatTransferCoefficient" },
    { figure: "wetFactor", name: "air film wet over dry", quantity: "factor" },
    { figure: "surfaceEfficiency", name: "efficiency of the surface, dry", quantity: "share" },
    { figure: "wetSurfaceEfficiency", name: "efficiency of the surface, wet", quantity: "share" },
    { figure: "tubeCoefficient", name: "water film", quantity: "heatTransferCoefficient" },
    { figure: "rangeDistance", name: "distance from the correlation's range", quantity: "share" },
  ],
  working: [
    {
      figure: "latentCapacity",
      name: "latent capacity",
      quantity: "power",
      equation:
        "Q_l = Q − Q_s (what the water takes up, less the air's dry-bulb change; the condensate's heat stays out)",
      terms: [
        { symbol: "Q", name: "heat into the water", quantity: "power", value: (r) => -r.heatToAir },
        { symbol: "Q_s", name: "sensible capacity", quantity: "power", value: (r) => r.sensibleCapacity },
      ],
      evaluate: (r) => -r.heatToAir - r.sensibleCapacity,
      source: "ashrae-hvac-2020-ch23",
    },
    {
      figure: "filmLoading",
      name: "condensate that the fins above a pan bring each metre of it",
      quantity: "massFlow",
      equation: "Γ = ṁ/(n L)",
      terms: [
        { symbol: "ṁ", name: "water drained", quantity: "massFlow", value: (r) => r.condensate },
        {
          symbol: "n",
          name: "pans under coils",
          quantity: "count",
          value: (_, d) => (d.intermediatePans ? d.block.stacked : 1),
        },
        { symbol: "L", name: "tubes between sheets", quantity: "length", value: (_, d) => d.block.coil.finnedLength },
      ],
      evaluate: (r, d) => r.condensate / ((d.intermediatePans ? d.block.stacked : 1) * d.block.coil.finnedLength),
      source: "definition",
    },
    {
      figure: "filmShare",
      name: "gap between fins taken up by the film at their foot",
      quantity: "share",
      equation: "s = 2 δ/(1/n − t), δ = (3 μ Γ/(2 n D ρ² g))^(1/3)",
      terms: [
        { symbol: "Γ", name: "condensate onto a metre of pan", quantity: "massFlow", value: (r) => r.filmLoading },
        { symbol: "n", name: "fins", quantity: "pitch", value: (_, d) => d.block.coil.finsPerLength },
        { symbol: "t", name: "fin thickness", quantity: "smallLength", value: (_, d) => d.block.coil.finThickness },
        { symbol: "D", name: "depth of the fins", quantity: "length", value: (_, d) => d.block.coil.bank.depth },
      ],
      evaluate: (r, { block: { coil } }) =>
        filmShareOf(r.filmLoading, coil.finsPerLength, coil.finThickness, coil.bank.depth),
      source: "derived-here Nusselt's falling film on both faces of each fin",
    },
    ...airSideWorking<ChilledWaterCoilDesign, ChilledWaterCoilRating>(),
    ...liquidSideWorking<ChilledWaterCoilDesign, ChilledWaterCoilRating>(),
  ],
  workingTables: ({ block }, rating, { condition: { utilities } }) => {
    const { chilledWater } = utilities;
    if (chilledWater === undefined) return [];
    return liquidCoilTables("one coil, row by row", block.coil, ratedInlet(block, chilledWater.liquid, rating));
  },
  shortfalls: coolingShortfalls,
  notes: coolingNotes,
  declared: (design, rating, at) => compareDeclaredLiquid(design, rating, at.condition.utilities.chilledWater?.liquid),
});
