import type { LouverDesign } from "#section/louver/design";
import type { LouverRating } from "#section/louver/rate";
import { conditionRule, type Mend, machineRule, type Rule } from "../contract.ts";
import { fpm } from "../inch-pound-limits.ts";

const larger: readonly Mend[] = [
  { at: "section", field: "height", way: "more" },
  { at: "section", field: "louver", way: "other" },
  { at: "casing", field: "width", way: "more" },
];
const common = {
  quantity: "velocity",
  sense: "at most",
  severity: "damage",
  protects: "filters and floor from rain",
  remedy: "a larger louver, or blades whose onset lies higher",
  mends: larger,
  of: ["louver"],
} as const;

/** Rain at the louver. Face, core and free-area velocity are three figures, each with its own limit. */
export const louverRules: readonly Rule[] = [
  conditionRule<LouverDesign, LouverRating>({
    ...common,
    id: "louver below its onset of penetration",
    covers: ["LVR-01", "LVR-02", "LVR-06"],
    measures: "velocity in the free area of this size, at the largest flow",
    when: "largest flow",
    limit: ({ design }) => design.louver.onsetVelocity,
    limitWords: "the velocity at which 0.01 oz/ft² came through in the still-air test, by the louver's record",
    source: "amca-500-l water penetration; ashrae-62-1 5.5.2",
    certainty: "read",
    value: ({ record }) => record.freeVelocity,
  }),
  conditionRule<LouverDesign, LouverRating>({
    ...common,
    id: "louver margin to its onset",
    covers: ["LVR-03"],
    measures: "free-area velocity over the onset of penetration",
    quantity: "share",
    limit: 0.8,
    source: "from-memory practice of 0.75 to 0.8",
    certainty: "from memory",
    value: ({ design, record }) => record.freeVelocity / design.louver.onsetVelocity,
  }),
  conditionRule<LouverDesign, LouverRating>({
    ...common,
    id: "louver face velocity",
    covers: ["INT-07"],
    measures: "velocity on the gross face",
    limit: fpm(450),
    source: "ventilation-trade-texts louver 350 to 450 fpm",
    certainty: "read",
    isGuide: true,
    value: ({ design, record }) => (design.isExposed ? record.faceVelocity : undefined),
  }),
  conditionRule<LouverDesign, LouverRating>({
    ...common,
    id: "louver pressure loss",
    covers: ["LVR-07"],
    protects: "the fan's energy",
    measures: "pressure loss of blades and screen",
    quantity: "pressureDifference",
    limit: 25,
    source: "ashrae-handbook-systems louvers, 25 Pa preferred, paraphrased",
    certainty: "second-hand",
    isGuide: true,
    severity: "nuisance",
    value: ({ record }) => record.totalPressureLoss,
  }),
  machineRule<LouverDesign>({
    ...common,
    id: "drain behind the louver",
    covers: ["LVR-08"],
    measures: "a drained pan behind the louver",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "ashrae-62-1 5.5.2 drainage behind the louver",
    certainty: "second-hand",
    remedy: "a drain pan behind the louver",
    mends: [{ at: "section", field: "drainPan", way: "other" }],
    value: ({ design }) => (design.drainPan ? 1 : 0),
  }),
  machineRule<LouverDesign>({
    ...common,
    id: "wind-driven rain class",
    covers: ["LVR-04"],
    measures: "an exposed louver of a tested class A or B",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "amca-500-l wind-driven rain, class B 95 % and class A 99 % kept out; the demand is common practice",
    certainty: "common practice",
    isGuide: true,
    remedy: "a louver of class A or B, or a hood before it",
    mends: [
      { at: "section", field: "louver", way: "other" },
      { at: "section", field: "exposure", way: "other" },
    ],
    value: ({ design }) => {
      if (!design.isExposed) return undefined;
      return design.louver.windDrivenClass === "A" || design.louver.windDrivenClass === "B" ? 1 : 0;
    },
  }),
];
