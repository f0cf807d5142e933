import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { defineKind, type Note, type SectionCondition, type SectionRating } from "../contract.ts";
import { pencilFor } from "../pencil.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import { enteredLoss, prepareSpecial, type SpecialDesign, specialFields } from "./design.ts";
import { specialParts } from "./parts.ts";

/** A special section at a condition. */
export interface SpecialRating extends SectionRating {
  actualAirflow: number;
  density: number;
  /** Pa by the entered curve at its reference density. */
  enteredLoss: number;
}

function rate(design: SpecialDesign, air: Air, _: SectionCondition, out: SpecialRating): void {
  beginRating(air, out);
  out.actualAirflow = actualAirflow(air);
  out.density = airDensity(air);
  out.faceVelocity = out.actualAirflow / design.area;
  out.enteredLoss = enteredLoss(design, out.actualAirflow);
  out.totalPressureLoss = (out.enteredLoss * out.density) / design.referenceDensity;
  endRating(out, design.area);
}

const atRest = recordAtRest<SpecialRating>({ ...createSectionRating(), actualAirflow: 0, density: 0, enteredLoss: 0 });

/** A one-off that the engineer describes. */
export const special = defineKind({
  name: "special",
  meaning: "A one-off section described by its entered pressure curve, length, mass, price and source",
  fields: specialFields,
  prepare: prepareSpecial,
  createRating: () => ({ ...atRest, entering: createAir(), leaving: createAir() }),
  rate,
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: specialParts,
  picture: (design, frame, name) => {
    const pencil = pencilFor(name);
    const height = design.boxHeight * 1000;
    const y = (frame.height * 1000 - height) / 2;
    const inset = Math.min(15, design.length * 100);
    const [left, right] = [inset, design.length * 1000 - inset];
    pencil.box("special", "outline", left, y + inset, right - left, height - 2 * inset, {
      dash: "long",
      label: design.what,
    });
    pencil.line("special", "hairline", [left, y + inset, right, y + height - inset]);
    pencil.line("special", "hairline", [left, y + height - inset, right, y + inset]);
    pencil.text("special", "quiet", (left + right) / 2, y + height / 2, design.what);
    return pencil.items;
  },
  losses: (design, rating) => [
    {
      part: design.what,
      pressure: rating.totalPressureLoss,
      plane: "section",
      area: design.area,
      velocity: rating.faceVelocity,
      density: rating.density,
      source: `"${design.source}" as the job says`,
    },
  ],
  figures: [
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
    { figure: "enteredLoss", name: "by the curve at its density", quantity: "pressureDifference" },
    { figure: "faceVelocity", name: "velocity in the section", quantity: "velocity" },
  ],
  working: [
    {
      figure: "totalPressureLoss",
      name: "loss at the air's own density",
      quantity: "pressureDifference",
      equation: "Δp = Δp_entered ρ/ρ₀",
      terms: [
        {
          symbol: "Δp_entered",
          name: "by the entered curve",
          quantity: "pressureDifference",
          value: (r) => r.enteredLoss,
        },
        { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
        { symbol: "ρ₀", name: "density of the curve", quantity: "density", value: (_, d) => d.referenceDensity },
      ],
      evaluate: (r, d) => (r.enteredLoss * r.density) / d.referenceDensity,
      source: "definition at equal volume flow, for losses that go with the square of velocity",
    },
  ],
  notes: (design, rating) => {
    const flow = Math.log(rating.actualAirflow);
    const notes: Note[] = [
      {
        what: "heat, moisture, sound and leakage of this section are not computed",
        weight: "information",
        source: design.source,
      },
    ];
    if (design.logFlow.length > 1 && (flow < design.logFlow[0]! - 1e-9 || flow > design.logFlow.at(-1)! + 1e-9)) {
      notes.push({ what: "the airflow lies outside the entered curve, which is carried on", weight: "caution" });
    }
    return notes;
  },
});
