import { defineKind, type Note, type Opening, type Shortfall, type WorkingLine } from "../contract.ts";
import { type MixingBoxDesign, mixingBoxFields, prepareMixingBox } from "./design.ts";
import { mixingBoxLosses } from "./losses.ts";
import { mixingBoxParts } from "./parts.ts";
import { drawMixingBox, returnStart } from "./picture.ts";
import { createMixingBoxRating, filamentBehind, type MixingBoxRating, rateMixingBox } from "./rate.ts";
import { mixingBoxSound } from "./sound.ts";

const working: readonly WorkingLine<MixingBoxDesign, MixingBoxRating>[] = [
  {
    figure: "outsideLoss",
    name: "loss of the outside damper",
    quantity: "pressureDifference",
    equation: "Δp = (K + K₀) ½ ρ V²",
    terms: [
      { symbol: "K", name: "loss of the blades at their angle", quantity: "factor", value: (r) => r.outsideBladeLoss },
      { symbol: "K₀", name: "loss of the wall around the damper", quantity: "factor", value: (_, d) => d.wallLoss },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.outsideDensity },
      { symbol: "V", name: "velocity in the damper's face", quantity: "velocity", value: (r) => r.outsideVelocity },
    ],
    evaluate: (r, d) =>
      (r.outsideBladeLoss + d.wallLoss) * 0.5 * r.outsideDensity * r.outsideVelocity * r.outsideVelocity,
    source: "ashrae-825-rp blade-angle law; idelchik-handbook contraction and expansion",
  },
  {
    figure: "returnImbalance",
    name: "pressure that the return path has to spare",
    quantity: "pressureDifference",
    equation: "Δ = p_return − Δp_return − p_plenum",
    terms: [
      {
        symbol: "p_return",
        name: "total pressure in the return opening",
        quantity: "pressureDifference",
        value: (r) => r.returnTotalPressure,
      },
      {
        symbol: "Δp_return",
        name: "loss of the return damper",
        quantity: "pressureDifference",
        value: (r) => r.returnLoss,
      },
      {
        symbol: "p_plenum",
        name: "total pressure in the box",
        quantity: "pressureDifference",
        value: (r) => r.leaving.totalPressure,
      },
    ],
    evaluate: (r, d) => (d.hasReturn ? r.returnTotalPressure - r.leaving.totalPressure - r.returnLoss : 0),
    source: "definition",
  },
  {
    figure: "outsideAirShare",
    name: "share of outside air",
    quantity: "share",
    equation: "s = ṁ_o / (ṁ_o + ṁ_r)",
    terms: [
      { symbol: "ṁ_o", name: "outside air, dry", quantity: "massFlow", value: (r) => r.entering.dryAirFlow },
      { symbol: "ṁ_r", name: "return air, dry", quantity: "massFlow", value: (r) => Math.max(0, r.returnDryAirFlow) },
    ],
    evaluate: (r) => r.entering.dryAirFlow / (r.entering.dryAirFlow + Math.max(0, r.returnDryAirFlow)),
    source: "definition",
  },
  {
    figure: "coldestFilament",
    name: "coldest filament behind the box",
    quantity: "temperature",
    equation:
      "t_min = the lower of t_o,min + E (t_m − t_o) and t_r + E (t_m − t_r); not below what came in nor above t_m",
    terms: [
      { symbol: "E", name: "mixing effectiveness", quantity: "share", value: (_, d) => d.mixingEffectiveness },
      { symbol: "t_m", name: "mixed air", quantity: "temperature", value: (r) => r.leaving.dryBulb },
      { symbol: "t_o", name: "outside air", quantity: "temperature", value: (r) => r.entering.dryBulb },
      {
        symbol: "t_o,min",
        name: "its coldest filament",
        quantity: "temperature",
        value: (r) => r.entering.coldestFilament,
      },
      { symbol: "t_r", name: "return air", quantity: "temperature", value: (r) => r.returnDryBulb },
    ],
    evaluate: (r, d) =>
      filamentBehind(d.mixingEffectiveness, r.entering, r.returnDryAirFlow > 0, r.returnDryBulb, r.leaving.dryBulb),
    source: "robinson-2003 incomplete mixing of two streams",
  },
];

/** Outside and return air meet behind their dampers. */
export const mixingBox = defineKind({
  name: "mixing box",
  role: "mixing",
  meaning: "Outside-air and return-air dampers with airfoil blades, hand set or actuated, and the space where they mix",
  fields: mixingBoxFields,
  prepare: prepareMixingBox,
  createRating: createMixingBoxRating,
  rate: rateMixingBox,
  layout: (design) => ({ length: design.length, outside: 0, openings: returnOpenings(design) }),
  parts: mixingBoxParts,
  picture: drawMixingBox,
  sound: mixingBoxSound,
  losses: mixingBoxLosses,
  orderBy: ["outsideTorque", "outsideVelocity", "outsideLoss", "returnVelocity", "returnLoss", "returnTorque"],
  figures: [
    { figure: "outsideAirShare", name: "share of outside air", quantity: "share" },
    { figure: "outsideVelocity", name: "outside damper velocity", quantity: "velocity" },
    { figure: "outsideLoss", name: "outside damper loss", quantity: "pressureDifference" },
    { figure: "outsideBladeAngle", name: "outside blades from closed", quantity: "angle" },
    { figure: "returnVelocity", name: "return damper velocity", quantity: "velocity" },
    { figure: "returnLoss", name: "return damper loss", quantity: "pressureDifference" },
    { figure: "returnBladeAngle", name: "return blades from closed", quantity: "angle" },
    { figure: "coldestFilament", name: "coldest filament", quantity: "temperature" },
    { figure: "fog", name: "fog from mixing", quantity: "massFlow" },
    { figure: "returnImbalance", name: "return path to spare", quantity: "pressureDifference" },
    { figure: "outsideTorque", name: "outside damper torque", quantity: "torque" },
    { figure: "returnTorque", name: "return damper torque", quantity: "torque" },
  ],
  working,
  shortfalls: (design, rating, { condition, operation }) => {
    const shortfalls: Shortfall[] = [];
    const isMeant = design.hasReturn && operation.dampers === "as set" && operation.fansRunning;
    const wanted = condition.returnAir.outsideAirShare;
    if (isMeant && rating.outsideAirShare < wanted - 0.005) {
      shortfalls.push({ what: "share of outside air", quantity: "share", wanted, got: rating.outsideAirShare });
    }
    return shortfalls;
  },
  notes: (design, rating, { operation }) => {
    const notes: Note[] = [];
    if (rating.fog > 0) {
      notes.push({
        what: "the mixture is oversaturated: fog or snow forms in the box and wets what follows",
        weight: "caution",
      });
    }
    if (rating.returnDryAirFlow < 0) {
      notes.push({ what: "air leaves backwards through the return opening", weight: "caution" });
    }
    if (design.control === "actuated" && Math.abs(rating.returnImbalance) > 0.5) {
      notes.push({
        what:
          rating.returnImbalance < 0
            ? "the return damper is wide open and still takes too much for the wanted share: set the outside blades nearer to closed"
            : "the return damper is closed and still leaks more than the wanted share",
        weight: "caution",
      });
    }
    if (operation.dampers === "closed" && design.control === "hand set") {
      notes.push({
        what: "blades that are locked by hand do not close when the fan stops: outdoor air goes on through the unit",
        weight: "caution",
      });
    }
    return notes;
  },
});

function returnOpenings(design: MixingBoxDesign): Opening[] {
  const opening = design.returnOpening;
  if (opening === undefined || opening.place === "side") return [];
  const from = returnStart(design);
  return [{ air: "return", face: opening.place, from, to: from + opening.part.height }];
}
