import { finEfficiency, surfaceEfficiency } from "#component/finned-surface/fin-efficiency";
import { inBothUnits } from "../both-units.ts";
import { compareDeclaredSteam } from "../coil/declared.ts";
import { steamCoilBuild } from "../coil/order.ts";
import { bandTable } from "../coil/rivals.ts";
import { steamFigureLines, steamSideWorking } from "../coil/steam-figures.ts";
import { heatingHeld, steamBand, steamCoilNotes } from "../coil/steam-notes.ts";
import { defineKind } from "../contract.ts";
import { openSound } from "../passing-sound.ts";
import { type FaceBypassDesign, faceBypassFields, prepareFaceBypass } from "./design.ts";
import { faceBypassLosses } from "./losses.ts";
import { faceBypassParts } from "./parts.ts";
import { drawFaceBypass } from "./picture.ts";
import { completeFaceBypass, createFaceBypassRating, type FaceBypassRating, rateFaceBypass } from "./rate.ts";

/** A steam coil whose steam stays on and whose dampers share the air between its lanes and channels beside them. */
export const steamCoilFaceBypass = defineKind({
  name: "steam coil with face and bypass",
  role: "heating",
  meaning: "Steam coil in lanes with integral bypass channels: full steam always, dampers hold the leaving air",
  fields: faceBypassFields,
  prepare: prepareFaceBypass,
  createRating: createFaceBypassRating,
  rate: rateFaceBypass,
  complete: completeFaceBypass,
  layout: (design) => ({ length: design.block.length, outside: 0 }),
  parts: faceBypassParts,
  picture: drawFaceBypass,
  sound: (_, { laneVelocity }) => openSound(laneVelocity),
  losses: faceBypassLosses,
  orderBy: ["capacity", "steamGaugePressure", "condensate", "trapCapacity", "leavingDryBulb", "totalPressureLoss"],
  orderBuild: steamCoilBuild,
  figures: [
    { figure: "leavingDryBulb", name: "leaving dry bulb", quantity: "temperature" },
    { figure: "faceShare", name: "share of the air over the lanes", quantity: "share" },
    { figure: "laneLeaving", name: "air behind the lanes", quantity: "temperature" },
    { figure: "laneVelocity", name: "velocity on the lanes", quantity: "velocity" },
    { figure: "bypassVelocity", name: "velocity in the channels", quantity: "velocity" },
    { figure: "facePathLoss", name: "loss through the lanes", quantity: "pressureDifference" },
    { figure: "bypassPathLoss", name: "loss through the channels", quantity: "pressureDifference" },
    ...steamFigureLines.filter(({ figure }) => figure !== "leavingDryBulb"),
  ],
  working: [
    ...steamSideWorking<FaceBypassDesign, FaceBypassRating>(),
    {
      figure: "surfaceEfficiency",
      name: "efficiency of the surface",
      quantity: "share",
      equation: "η₀ = 1 − (A_f/A)(1 − tanh(m L)/(m L)), m = √(2 h/(k t))",
      terms: [
        { symbol: "h", name: "air film", quantity: "heatTransferCoefficient", value: (r) => r.airCoefficient },
        { symbol: "A_f", name: "fins of a lane", quantity: "area", value: (_, d) => d.block.coil.bank.finArea },
        {
          symbol: "A",
          name: "outside surface of a lane",
          quantity: "area",
          value: (_, d) => d.block.coil.bank.outsideArea,
        },
        {
          symbol: "L",
          name: "equivalent fin length",
          quantity: "smallLength",
          value: (_, d) => d.block.coil.bank.finLength,
        },
      ],
      evaluate: (r, { block: { coil } }) =>
        surfaceEfficiency(
          coil.bank.finArea / coil.bank.outsideArea,
          finEfficiency(r.airCoefficient, coil.finConductivity, coil.finThickness, coil.bank.finLength),
        ),
      source: "schmidt-1949",
    },
  ],
  workingTables: (design, rating) => {
    const band = steamBand(
      design.block,
      (rating.faceShare * rating.entering.dryAirFlow) / design.block.stacked,
      rating,
    );
    return band === undefined ? [] : [bandTable(band)];
  },
  shortfalls: (_, rating, at) => {
    const wanted = at.operation.heatingLeaving;
    if (wanted === undefined || rating.leavingDryBulb >= wanted - heatingHeld) return [];
    return [{ what: "dry bulb behind the steam coil", quantity: "temperature", wanted, got: rating.leavingDryBulb }];
  },
  declared: (design, rating, at) => compareDeclaredSteam(design, rating, at.condition.utilities.steam?.pressure),
  notes: (design, rating, at) => {
    const flow = (rating.faceShare * rating.entering.dryAirFlow) / design.block.stacked;
    const notes = steamCoilNotes(design, flow, rating, at.operation.fansRunning);
    const over = rating.leavingDryBulb - (at.operation.heatingLeaving ?? Number.POSITIVE_INFINITY);
    if (over > heatingHeld) {
      notes.push({
        what: `with the bypass open the lanes still heat the air ${inBothUnits(over, "temperatureDifference")} above what is wanted: damper leakage`,
        weight: "information",
      });
    }
    return notes;
  },
});
