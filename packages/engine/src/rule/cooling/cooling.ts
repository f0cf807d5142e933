import { carryOverVelocity } from "#component/coil/carry-over";
import type { ChilledWaterCoilDesign } from "#section/chilled-water-coil/design";
import type { ChilledWaterCoilRating } from "#section/chilled-water-coil/rate";
import type { Unit } from "#unit/unit";
import { conditionRule, type Mend, type Rule } from "../contract.ts";
import { fpm } from "../inch-pound-limits.ts";

const largerFace: readonly Mend[] = [
  { at: "casing", field: "width", way: "more" },
  { at: "casing", field: "height", way: "more" },
  { at: "section", field: "finnedHeight", way: "more" },
];

/** The face of the cooling coil, and water that the air takes off it. */
export const coolingRules: readonly Rule[] = [
  conditionRule<ChilledWaterCoilDesign, ChilledWaterCoilRating>({
    id: "cooling face velocity",
    covers: ["CLG-01", "CLG-02", "CLG-03", "CLG-05", "CLG-06", "CLG-07"],
    protects: "the filters and ducts behind from carried water, and the fan from pressure",
    measures: "velocity on the coil's face",
    quantity: "velocity",
    sense: "at most",
    limit: fpm(500),
    source: "va-hvac-manual 2.3.1.5(a) constant volume",
    certainty: "read",
    contested:
      "300 fpm drawn through and 350 blown through (Army), 400 before an eliminator (facilities guide specification), 500 constant and 550 variable volume (VA), 550 (Navy; coil makers up to 10 fins per inch)",
    severity: "damage",
    remedy: "a larger coil face",
    mends: largerFace,
    of: ["chilled-water coil"],
    value: ({ record }) => record.faceVelocity,
  }),
  conditionRule<ChilledWaterCoilDesign, ChilledWaterCoilRating>({
    id: "carry-over at the largest flow",
    covers: ["CLG-04", "CLG-08", "CLG-30"],
    protects: "what stands behind the coil from thrown water",
    measures: "velocity where the flow on the wet face peaks, clean filters at the highest fan speed included",
    quantity: "velocity",
    sense: "at most",
    when: "largest flow",
    limit: ({ design }) => carryOverVelocity(design.block.coil.finsPerLength, "aluminium"),
    limitWords: "550 fpm to 10 fins per inch, 500 above",
    source: "coil-guide-carry-over plain and wavy aluminium fins",
    certainty: "read",
    severity: "damage",
    remedy: "a larger coil face, wider fins, or a moisture eliminator behind the coil",
    mends: [...largerFace, { at: "section", field: "fins", way: "less" }],
    of: ["chilled-water coil"],
    value: ({ unit, index, record }) =>
      record.condensate > 0 && !isCaught(unit, index) ? record.peakFaceVelocity : undefined,
  }),
  conditionRule<ChilledWaterCoilDesign, ChilledWaterCoilRating>({
    id: "carry-over with the fins' coat",
    covers: ["CLG-04"],
    protects: "what stands behind the coil from thrown water",
    measures: "velocity where the flow on the wet face peaks, clean filters at the highest fan speed included",
    quantity: "velocity",
    sense: "at most",
    when: "largest flow",
    limit: ({ design }) => design.carryOverVelocity,
    limitWords: "the limit of plain fins, a tenth less for epoxy coats and a tenth more for hydrophilic ones",
    source: "from-memory effect of coats on the limit of coil-guide-carry-over",
    certainty: "from memory",
    severity: "damage",
    remedy: "a larger coil face, bare or hydrophilic fins, or a moisture eliminator behind the coil",
    mends: [...largerFace, { at: "section", field: "finMaterial", way: "other" }],
    of: ["chilled-water coil"],
    value: ({ unit, index, design, record }) =>
      record.condensate > 0 && isCoated(design) && !isCaught(unit, index) ? record.peakFaceVelocity : undefined,
  }),
];

/** An eliminator right behind the coil catches what it throws; its own range of velocity is its own matter. */
function isCaught(unit: Unit, index: number): boolean {
  return unit.sections[index + 1]?.kind === "moisture eliminator";
}

function isCoated({ block }: ChilledWaterCoilDesign): boolean {
  return block.coil.finMaterial.startsWith("epoxy") || block.coil.finMaterial.startsWith("hydrophilic");
}
