import { certifiedRangeNotes } from "../coil/certified-range.ts";
import { compareDeclaredLiquid } from "../coil/declared.ts";
import { airSideWorking, liquidSideWorking } from "../coil/figures.ts";
import { freezeFigureLines } from "../coil/freeze.ts";
import { freezestatFigureLines, freezestatNotes, freezestatWorking } from "../coil/freezestat.ts";
import { connectionFigureLines } from "../coil/liquid.ts";
import { coilLosses } from "../coil/loss.ts";
import { liquidCoilNotes, ratedInlet } from "../coil/notes.ts";
import { liquidCoilBuild } from "../coil/order.ts";
import { fillingWater as noLiquid } from "../coil/parts.ts";
import { liquidCoilTables } from "../coil/row-table.ts";
import { heatingHeld } from "../coil/steam-notes.ts";
import { defineKind } from "../contract.ts";
import { coilSound } from "../passing-sound.ts";
import { type HotWaterCoilDesign, hotWaterCoilFields, prepareHotWaterCoil } from "./design.ts";
import { hotWaterCoilParts } from "./parts.ts";
import { drawHotWaterCoil } from "./picture.ts";
import { completeHotWaterCoil, createHotWaterCoilRating, type HotWaterCoilRating, rateHotWaterCoil } from "./rate.ts";

/** K that the coldest tube wall should keep above freezing. */
const freezeReserve = 2;

/** A heating coil on hot water or glycol. */
export const hotWaterCoil = defineKind({
  name: "hot-water coil",
  role: "heating",
  meaning: "Finned coil that heats the air with hot water or glycol, throttled or on a pumped loop",
  fields: hotWaterCoilFields,
  prepare: prepareHotWaterCoil,
  createRating: createHotWaterCoilRating,
  rate: rateHotWaterCoil,
  complete: completeHotWaterCoil,
  layout: (design) => ({ length: design.block.length, outside: 0 }),
  parts: hotWaterCoilParts,
  picture: drawHotWaterCoil,
  sound: coilSound,
  losses: coilLosses,
  orderBy: [
    "capacity",
    "liquidVolumeFlow",
    "liquidPressureDrop",
    "totalPressureLoss",
    "liquidEntering",
    "liquidLeaving",
  ],
  orderBuild: liquidCoilBuild,
  figures: [
    { figure: "leavingDryBulb", name: "leaving dry bulb", quantity: "temperature" },
    { figure: "capacity", name: "capacity", quantity: "power" },
    { figure: "fullCapacity", name: "capacity with the valve open", quantity: "power" },
    { figure: "liquidVolumeFlow", name: "flow in the tubes", quantity: "liquidFlow" },
    { figure: "supplyMassFlow", name: "drawn from the supply", quantity: "massFlow" },
    { figure: "flowShare", name: "share of the full flow", quantity: "share" },
    { figure: "valveStroke", name: "stroke of an equal-percentage valve", quantity: "share" },
    { figure: "liquidEntering", name: "entering liquid", quantity: "temperature" },
    { figure: "liquidLeaving", name: "leaving liquid", quantity: "temperature" },
    { figure: "liquidPressureDrop", name: "liquid pressure drop", quantity: "liquidPressureDrop" },
    { figure: "tubeVelocity", name: "tube velocity", quantity: "liquidVelocity" },
    { figure: "tubeReynolds", name: "Reynolds number in the tubes", quantity: "count" },
    ...connectionFigureLines,
    { figure: "freezePoint", name: "freezing point of the liquid", quantity: "temperature" },
    ...freezeFigureLines("liquid", "its liquid stops"),
    ...freezestatFigureLines,
    { figure: "faceVelocity", name: "face velocity", quantity: "velocity" },
    { figure: "totalPressureLoss", name: "air pressure loss", quantity: "pressureDifference" },
    { figure: "airCoefficient", name: "air film", quantity: "heatTransferCoefficient" },
    { figure: "surfaceEfficiency", name: "efficiency of the surface", quantity: "share" },
    { figure: "tubeCoefficient", name: "liquid film", quantity: "heatTransferCoefficient" },
    { figure: "rangeDistance", name: "distance from the correlation's range", quantity: "share" },
  ],
  working: [
    ...airSideWorking<HotWaterCoilDesign, HotWaterCoilRating>(),
    ...liquidSideWorking<HotWaterCoilDesign, HotWaterCoilRating>(),
    ...freezestatWorking<HotWaterCoilDesign, HotWaterCoilRating>(),
  ],
  workingTables: ({ block }, rating, { condition: { utilities } }) => {
    const { heatingWater } = utilities;
    if (heatingWater === undefined) return [];
    return liquidCoilTables("one coil, row by row", block.coil, ratedInlet(block, heatingWater.liquid, rating));
  },
  shortfalls: (_, rating, at) => {
    const wanted = at.operation.heatingLeaving;
    if (wanted === undefined || rating.leavingDryBulb >= wanted - heatingHeld) return [];
    return [
      { what: "dry bulb behind the hot-water coil", quantity: "temperature", wanted, got: rating.leavingDryBulb },
    ];
  },
  declared: (design, rating, at) => compareDeclaredLiquid(design, rating, at.condition.utilities.heatingWater?.liquid),
  notes: (design, rating, at) => {
    const supply = at.condition.utilities.heatingWater;
    const notes = liquidCoilNotes(design.block, supply?.liquid ?? noLiquid, supply, rating);
    notes.push(
      ...certifiedRangeNotes("heating", rating, supply?.liquid ?? noLiquid),
      ...freezestatNotes(rating, at.operation.fansRunning),
    );
    if (rating.freezeMargin < freezeReserve) {
      notes.push({
        what: "the coldest tube wall comes within 2 K of freezing: keep the flow up with a pump of its own, use glycol, or preheat",
        weight: "caution",
      });
    }
    return notes;
  },
});
