import { leastSpringDeflection } from "#component/spring";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import { conditionRule, type Mend, machineRule, type Rule } from "../contract.ts";

const springs: readonly Mend[] = [
  { at: "section", field: "springs", way: "other" },
  { at: "duty", field: "supplyAirflow.minimum", way: "more" },
];
const common = { of: ["fan"], severity: "nuisance", protects: "the building from shaking" } as const;

/** Springs over the whole range of speed. */
export const vibrationRules: readonly Rule[] = [
  conditionRule<FanDesign, FanSectionRating>({
    ...common,
    id: "springs do not amplify",
    covers: ["VIB-07", "VIB-06"],
    measures: "disturbing over natural frequency at any speed of the job",
    quantity: "factor",
    sense: "at least",
    limit: Math.SQRT2,
    source: "derived-here transmissibility of a spring is above one below √2",
    certainty: "derived here",
    severity: "damage",
    remedy: "softer springs, or a higher lowest speed",
    mends: springs,
    value: ({ record }) => (record.fanSpeed > 0 && record.frequencyRatio > 0 ? record.frequencyRatio : undefined),
  }),
  conditionRule<FanDesign, FanSectionRating>({
    ...common,
    id: "springs isolate at design",
    covers: ["VIB-06", "VIB-07"],
    measures: "disturbing over natural frequency at design airflow",
    quantity: "factor",
    sense: "at least",
    limit: 3,
    source: "common-practice a frequency ratio of three",
    certainty: "common practice",
    remedy: "softer springs",
    mends: springs,
    value: ({ rating, record }) => {
      const isDesign = rating.supply.dryAirFlow > 0.98 * rating.condition.externalStatic.designDryAirFlow;
      return isDesign && record.frequencyRatio > 0 ? record.frequencyRatio : undefined;
    },
  }),
  machineRule<FanDesign>({
    ...common,
    id: "spring deflection",
    covers: ["VIB-05"],
    measures: "static deflection of the springs",
    quantity: "length",
    sense: "at least",
    limit: ({ design, weighing }) =>
      leastSpringDeflection(weighing.running.fanSpeed.most, design.floor, design.motorPower),
    limitWords: "the handbook's table by speed and span of the floor",
    source: "ashrae-applications-noise-vibration table, from memory",
    certainty: "from memory",
    remedy: "softer springs",
    mends: springs,
    value: ({ design }) => (design.isolation === "springs" ? design.springs.deflection : undefined),
  }),
];
