import { defineKind, type WorkingLine } from "../contract.ts";
import { drawDamperAcross } from "../damper-part.ts";
import { pencilFor } from "../pencil.ts";
import { prepareShutOffDamper, type ShutOffDamperDesign, shutOffDamperFields } from "./design.ts";
import { shutOffDamperLosses } from "./losses.ts";
import { shutOffDamperParts } from "./parts.ts";
import { createShutOffDamperRating, rateShutOffDamper, type ShutOffDamperRating } from "./rate.ts";
import { shutOffDamperSound } from "./sound.ts";

const working: readonly WorkingLine<ShutOffDamperDesign, ShutOffDamperRating>[] = [
  {
    figure: "totalPressureLoss",
    name: "loss of the damper",
    quantity: "pressureDifference",
    equation: "Δp = (K + K₀) ½ ρ V²",
    terms: [
      { symbol: "K", name: "loss of the blades at their angle", quantity: "factor", value: (r) => r.bladeLoss },
      { symbol: "K₀", name: "loss of the wall around the damper", quantity: "factor", value: (_, d) => d.wallLoss },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "V", name: "velocity in the damper's face", quantity: "velocity", value: (r) => r.faceVelocity },
    ],
    evaluate: (r, d) => (r.bladeLoss + d.wallLoss) * 0.5 * r.density * r.faceVelocity * r.faceVelocity,
    source: "ashrae-825-rp blade-angle law; idelchik-handbook contraction and expansion",
  },
];

/** A damper that closes the airway when the fan stops. */
export const shutOffDamper = defineKind({
  name: "shut-off damper",
  meaning: "Low-leakage damper across the airway that closes when the fan stops",
  fields: shutOffDamperFields,
  prepare: prepareShutOffDamper,
  createRating: createShutOffDamperRating,
  rate: rateShutOffDamper,
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: shutOffDamperParts,
  picture: (design, frame, name) => {
    const pencil = pencilFor(name);
    const height = frame.height * 1000;
    const bottom = (height - design.part.height * 1000) / 2;
    const x = design.length * 500;
    if (bottom > 1) {
      pencil.line("blank-off", "outline", [x, 0, x, bottom]);
      pencil.line("blank-off", "outline", [x, height - bottom, x, height]);
    }
    drawDamperAcross(pencil, "damper", design.part, x, bottom);
    return pencil.items;
  },
  sound: shutOffDamperSound,
  losses: shutOffDamperLosses,
  orderBy: ["torque", "faceVelocity", "totalPressureLoss"],
  figures: [
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
    { figure: "faceVelocity", name: "velocity in the damper's face", quantity: "velocity" },
    { figure: "bladeAngle", name: "blades from closed", quantity: "angle" },
    { figure: "torque", name: "torque", quantity: "torque" },
  ],
  working,
});
