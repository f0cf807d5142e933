import { compareDeclaredLiquid } from "../coil/declared.ts";
import { airSideWorking, liquidSideWorking } from "../coil/figures.ts";
import { coilLosses } from "../coil/loss.ts";
import { defineKind } from "../contract.ts";
import { coilSound } from "../passing-sound.ts";
import { type ChilledWaterCoilDesign, chilledWaterCoilFields, prepareChilledWaterCoil } from "./design.ts";
import { coolingNotes, coolingShortfalls } from "./notes.ts";
import { chilledWaterCoilParts } from "./parts.ts";
import { drawChilledWaterCoil } from "./picture.ts";
import { type ChilledWaterCoilRating, createChilledWaterCoilRating, rateChilledWaterCoil } from "./rate.ts";

/** A cooling coil on chilled water or glycol, single or stacked, with its pans. */
export const chilledWaterCoil = defineKind({
  name: "chilled-water coil",
  role: "cooling",
  meaning: "Finned coil that cools and dries the air with chilled water or glycol; single, or stacked with pans",
  fields: chilledWaterCoilFields,
  prepare: prepareChilledWaterCoil,
  createRating: createChilledWaterCoilRating,
  rate: rateChilledWaterCoil,
  layout: (design) => ({ length: design.block.length, outside: 0 }),
  parts: chilledWaterCoilParts,
  picture: drawChilledWaterCoil,
  sound: coilSound,
  losses: coilLosses,
  orderBy: ["capacity", "sensibleCapacity", "liquidVolumeFlow", "liquidPressureDrop", "totalPressureLoss"],
  figures: [
    { figure: "leavingDryBulb", name: "leaving dry bulb", quantity: "temperature" },
    { figure: "leavingWetBulb", name: "leaving wet bulb", quantity: "temperature" },
    { figure: "leavingDewPoint", name: "leaving dew point", quantity: "temperature" },
    { figure: "capacity", name: "total capacity", quantity: "power" },
    { figure: "sensibleCapacity", name: "sensible capacity", quantity: "power" },
    { figure: "latentCapacity", name: "latent capacity", quantity: "power" },
    { figure: "condensate", name: "water drained", quantity: "massFlow" },
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
    { figure: "coldestTubeWall", name: "coldest tube wall", quantity: "temperature" },
    { figure: "freezeMargin", name: "coldest tube wall above freezing", quantity: "temperatureDifference" },
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
    ...airSideWorking<ChilledWaterCoilDesign, ChilledWaterCoilRating>(),
    ...liquidSideWorking<ChilledWaterCoilDesign, ChilledWaterCoilRating>(),
  ],
  shortfalls: coolingShortfalls,
  notes: coolingNotes,
  declared: (design, rating, at) => compareDeclaredLiquid(design, rating, at.condition.utilities.chilledWater?.liquid),
});
