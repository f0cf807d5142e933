import { inBothUnits } from "../both-units.ts";
import { certifiedRangeNotes } from "../coil/certified-range.ts";
import { compareDeclaredLiquid } from "../coil/declared.ts";
import { airSideWorking, liquidSideWorking } from "../coil/figures.ts";
import { freezeFigureLines } from "../coil/freeze.ts";
import { connectionFigureLines } from "../coil/liquid.ts";
import { coilLosses } from "../coil/loss.ts";
import { liquidCoilNotes, ratedInlet } from "../coil/notes.ts";
import { liquidCoilBuild } from "../coil/order.ts";
import { liquidCoilTables } from "../coil/row-table.ts";
import { defineKind } from "../contract.ts";
import { coilSound } from "../passing-sound.ts";
import { prepareRecoveryCoil, type RecoveryCoilDesign, recoveryCoilFields } from "./design.ts";
import { recoveryCoilParts } from "./parts.ts";
import { drawRecoveryCoil } from "./picture.ts";
import {
  completeRecoveryCoil,
  createRecoveryCoilRating,
  exhaustInlet,
  type RecoveryCoilRating,
  rateRecoveryCoil,
} from "./rate.ts";

/** The supply-side coil of a run-around loop, with its remote coil in the exhaust. */
export const recoveryCoil = defineKind({
  name: "recovery coil",
  meaning: "Coil of a run-around loop that carries heat between the exhaust and the outside air by glycol",
  fields: recoveryCoilFields,
  prepare: prepareRecoveryCoil,
  createRating: createRecoveryCoilRating,
  rate: rateRecoveryCoil,
  complete: completeRecoveryCoil,
  layout: (design) => ({ length: design.block.length, outside: 0 }),
  parts: recoveryCoilParts,
  picture: drawRecoveryCoil,
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
    { figure: "capacity", name: "heat recovered", quantity: "power" },
    { figure: "fullCapacity", name: "heat recovered without bypass", quantity: "power" },
    { figure: "temperatureEffectiveness", name: "temperature effectiveness", quantity: "share" },
    { figure: "bypassShare", name: "liquid led round the supply coil", quantity: "share" },
    { figure: "liquidVolumeFlow", name: "flow through the supply coil", quantity: "liquidFlow" },
    { figure: "liquidEntering", name: "liquid into the supply coil", quantity: "temperature" },
    { figure: "liquidLeaving", name: "liquid out of the supply coil", quantity: "temperature" },
    { figure: "intoExhaust", name: "liquid into the exhaust coil", quantity: "temperature" },
    { figure: "exhaustLeavingDryBulb", name: "exhaust air, leaving", quantity: "temperature" },
    { figure: "exhaustDryLoss", name: "exhaust air pressure loss, dry fins", quantity: "pressureDifference" },
    { figure: "exhaustCondensate", name: "condensate in the exhaust", quantity: "massFlow" },
    { figure: "exhaustColdestSurface", name: "coldest surface in the exhaust", quantity: "temperature" },
    { figure: "frostLimit", name: "coldest liquid let into the exhaust coil", quantity: "temperature" },
    { figure: "frostMargin", name: "coldest exhaust surface above 0 °C", quantity: "temperatureDifference" },
    { figure: "frostGivenUp", name: "heat given up to the frost limit", quantity: "power" },
    ...connectionFigureLines,
    { figure: "freezePoint", name: "freezing point of the loop", quantity: "temperature" },
    ...freezeFigureLines("liquid, supply side", "the loop's pump stops"),
    { figure: "liquidPressureDrop", name: "liquid pressure drop, supply coil", quantity: "liquidPressureDrop" },
    { figure: "loopPressureDrop", name: "liquid pressure drop, both coils", quantity: "liquidPressureDrop" },
    { figure: "tubeVelocity", name: "tube velocity, supply coil", quantity: "liquidVelocity" },
    { figure: "tubeReynolds", name: "Reynolds number in the tubes", quantity: "count" },
    { figure: "faceVelocity", name: "face velocity", quantity: "velocity" },
    { figure: "totalPressureLoss", name: "air pressure loss", quantity: "pressureDifference" },
    { figure: "dryLoss", name: "air pressure loss, dry", quantity: "pressureDifference" },
    { figure: "wetLoss", name: "air pressure loss, wet", quantity: "pressureDifference" },
    { figure: "rangeDistance", name: "distance from the correlation's range", quantity: "share" },
  ],
  working: [
    ...airSideWorking<RecoveryCoilDesign, RecoveryCoilRating>(),
    ...liquidSideWorking<RecoveryCoilDesign, RecoveryCoilRating>(),
    {
      figure: "frostMargin",
      name: "coldest exhaust surface above 0 °C",
      quantity: "temperatureDifference",
      equation: "Δ = t_surface − 0 °C",
      terms: [
        {
          symbol: "t_surface",
          name: "coldest root of the exhaust coil's fins",
          quantity: "temperature",
          value: (r) => r.exhaustColdestSurface,
        },
      ],
      evaluate: (r) => r.exhaustColdestSurface,
      source: "definition",
    },
  ],
  workingTables: (design, rating, at) => {
    const { block, exhaust, liquid, loopFlow } = design;
    const stream = at.condition.exhaust;
    const supplyTables = liquidCoilTables(
      "supply coil, one coil row by row",
      block.coil,
      ratedInlet(block, liquid, rating),
    );
    if (stream === undefined || rating.liquidMassFlow === 0) return supplyTables;
    const inlet = exhaustInlet(design, stream, rating.entering.barometricPressure);
    inlet.liquidFlow = loopFlow / exhaust.stacked;
    inlet.liquidTemperature = rating.intoExhaust;
    return [...supplyTables, ...liquidCoilTables("exhaust coil, one coil row by row", exhaust.coil, inlet)];
  },
  declared: (design, rating) => compareDeclaredLiquid(design, rating, design.liquid),
  notes: (design, rating, at) => {
    const notes = liquidCoilNotes(design.block, design.liquid, undefined, rating);
    notes.push(...certifiedRangeNotes(rating.heatToAir < 0 ? "cooling" : "heating", rating, design.liquid));
    if (at.condition.exhaust === undefined) {
      notes.push({ what: "the duty names no exhaust air: the loop rests", weight: "caution" });
    }
    if (rating.bypassFor === "the frost limit") {
      const share = Math.round((100 * rating.frostGivenUp) / (rating.frostGivenUp + rating.capacity));
      notes.push({
        what: `frost control: the valve leads ${Math.round(100 * rating.bypassShare)} % of the liquid round the supply coil, so that none colder than ${inBothUnits(design.frostLimit, "temperature")} enters the exhaust coil; that gives up ${inBothUnits(rating.frostGivenUp, "power")}, ${share} % of the heat`,
        weight: "information",
        source: "from-memory",
      });
      if (rating.intoExhaust < design.frostLimit - 0.05) {
        notes.push({ what: "the frost limit is not held with all liquid led round", weight: "caution" });
      }
    }
    if (rating.exhaustCondensate > 0 && rating.exhaustColdestSurface < 0) {
      notes.push({ what: "condensate freezes on the exhaust coil: raise the frost limit", weight: "caution" });
    }
    return notes;
  },
});
