import { damperLeakage } from "#component/damper";
import type { DamperPart } from "#section/damper-part";
import type { MixingBoxDesign } from "#section/mixing-box/design";
import type { MixingBoxRating } from "#section/mixing-box/rate";
import type { ShutOffDamperDesign } from "#section/shut-off-damper/design";
import { damperLeakageClasses } from "#standard/damper-leakage";
import { conditionRule, type Machine, machineRule, type Rule } from "../contract.ts";
import { fahrenheit, fpm } from "../inch-pound-limits.ts";
import { heatingKinds } from "../neighbour.ts";

/** m³/s per m² of the energy code's best class at an inch of water: 3 cfm/ft². */
const codeLeakage = damperLeakageClasses["1A"].leakage;

/** The damper that shuts outside air off, in a mixing box or by itself. */
function outsideDamper({ design }: Machine): DamperPart {
  const { outside, part } = design as Partial<MixingBoxDesign> & Partial<ShutOffDamperDesign>;
  return (outside ?? part) as DamperPart;
}

/** Outside and return dampers: leakage at the pressure that they see, share, mixing, shutting off. */
export const damperRules: readonly Rule[] = [
  machineRule({
    id: "damper leakage at real pressure",
    isChosen: true,
    covers: ["DMP-01", "DMP-02", "DMP-03", "DMP-04", "DMP-05"],
    protects: "coils from winter air behind a closed damper, and the building's heat",
    measures: "leakage of the closed damper under the fan's shut-off pressure",
    quantity: "leakageFlux",
    sense: "at most",
    limit: ({ weighing }) => codeLeakage * Math.sqrt(weighing.running.shutOff.pressure / 249.08891),
    limitWords: "3 cfm/ft² at an inch of water (4 in older codes), with the root of pressure",
    source: "ashrae-90-1 6.4.3.4.3, quoted; root of pressure by a supplement on damper leakage",
    certainty: "second-hand",
    severity: "damage",
    remedy: "a damper of a tighter class",
    mends: [
      { at: { kind: "mixing box" }, field: "outsideAir.damper", way: "other" },
      { at: { kind: "shut-off damper" }, field: "damper", way: "other" },
    ],
    of: ["mixing box", "shut-off damper"],
    value: (at) => damperLeakage(outsideDamper(at).damper.leakageClass, at.weighing.running.shutOff.pressure),
    detail: (at) =>
      `class ${outsideDamper(at).damper.leakageClass} at ${Math.round(at.weighing.running.shutOff.pressure)} Pa; a seal that has aged leaks many times as much`,
  }),
  conditionRule<MixingBoxDesign, MixingBoxRating>({
    id: "outside-air share",
    covers: ["DMP-07", "DUT-11"],
    protects: "the laboratories' outside air at every filter state",
    measures: "share of outside air in what leaves the box",
    quantity: "share",
    sense: "at least",
    limit: ({ duty }) => duty.outsideAirShare - 0.005,
    limitWords: "the duty's share, half a point of tolerance",
    source: "definition of the duty",
    certainty: "derived here",
    severity: "shortfall",
    remedy: "the outside damper further open, or the return damper further closed",
    mends: [
      { at: "section", field: "outsideAir.bladeAngle", way: "more" },
      { at: "section", field: "returnAir.bladeAngle", way: "less" },
      { at: "section", field: "control", way: "other" },
    ],
    of: ["mixing box"],
    value: ({ record }) => record.outsideAirShare,
  }),
  conditionRule<MixingBoxDesign, MixingBoxRating>({
    id: "no backflow to the building",
    covers: ["DMP-07"],
    protects: "people from outside air pushed unconditioned through the return opening",
    measures: "velocity inward through the return damper",
    quantity: "velocity",
    sense: "at least",
    limit: 0,
    source: "definition of a return opening",
    certainty: "derived here",
    severity: "shortfall",
    remedy: "the outside damper further closed, so that the box is under suction",
    mends: [{ at: "section", field: "outsideAir.bladeAngle", way: "less" }],
    of: ["mixing box"],
    value: ({ design, record }) => (design.hasReturn ? record.returnVelocity : undefined),
  }),
  conditionRule<MixingBoxDesign, MixingBoxRating>({
    id: "outside damper velocity",
    covers: ["DMP-06"],
    protects: "the fan's energy, and even flow behind",
    measures: "velocity on the damper's face",
    quantity: "velocity",
    sense: "at most",
    limit: fpm(1500),
    source: "ashrae-handbook-systems about 1500 fpm for good control, paraphrased",
    certainty: "second-hand",
    isGuide: true,
    severity: "nuisance",
    remedy: "a larger damper",
    mends: [
      { at: "section", field: "outsideAir.width", way: "more" },
      { at: "section", field: "outsideAir.height", way: "more" },
    ],
    of: ["mixing box"],
    value: ({ record }) => record.outsideVelocity,
  }),
  machineRule<MixingBoxDesign>({
    id: "opposed or facing blades",
    covers: ["DMP-08"],
    protects: "coils from streaks of cold air",
    measures: "blades of both dampers opposed",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "mixing-damper-study parallel pairs often mix badly",
    certainty: "read",
    isGuide: true,
    severity: "nuisance",
    remedy: "opposed blades, or parallel ones that turn their streams onto each other",
    mends: [
      { at: "section", field: "outsideAir.damper", way: "other" },
      { at: "section", field: "returnAir.damper", way: "other" },
    ],
    of: ["mixing box"],
    value: ({ design }) => {
      if (design.returnOpening === undefined) return undefined;
      const dampers = [design.outside, design.returnOpening.part];
      return dampers.every(({ damper }) => damper.bladeAction === "opposed") ? 1 : 0;
    },
  }),
  machineRule({
    id: "outside air shut off in a winter stop",
    covers: ["DMP-12", "STM-17"],
    protects: "coils from frost when the fan stops or steam fails",
    measures: "an actuated damper that shuts outside air off",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source:
      "steam-coil-guide close outside air on low steam pressure; functional-testing-guide end switch before the fan starts",
    certainty: "read",
    severity: "damage",
    remedy: "an actuated outside-air damper, or a shut-off damper before hand-set blades",
    mends: [{ at: { kind: "mixing box" }, field: "control", way: "other" }],
    of: "unit",
    value: ({ duty, unit }) => {
      if (duty.winter.dryBulb >= 0) return undefined;
      const shuts = unit.sections.some(
        ({ kind, design }) =>
          kind === "shut-off damper" || (kind === "mixing box" && (design as MixingBoxDesign).control === "actuated"),
      );
      return shuts ? 1 : 0;
    },
  }),
  conditionRule({
    id: "mixing alone does not protect",
    covers: ["DMP-11"],
    protects: "the first wet coil from freezing air",
    measures: "mean temperature of air that no coil heats, behind the intake",
    quantity: "temperature",
    span: 10,
    sense: "at least",
    limit: fahrenheit(38),
    source: "derived-here heat balance: at 70 to 100 % outside air the mixture follows the outdoors",
    certainty: "derived here",
    severity: "damage",
    remedy: "a preheat coil before the first wet coil",
    mends: [],
    of: ["chilled-water coil"],
    value: ({ unit, index, record }) => {
      for (let place = 0; place < index; place++) {
        if ((heatingKinds as readonly string[]).includes(unit.sections[place]!.kind)) return undefined;
      }
      return record.entering.dryBulb;
    },
  }),
];
