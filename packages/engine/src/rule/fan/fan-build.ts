import { effectiveDuctLength } from "#component/fan-system-effect";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import { type Machine, type Mend, machineRule, type Rule } from "../contract.ts";
import { inches } from "../inch-pound-limits.ts";

const mend = (field: string, way: Mend["way"]): readonly Mend[] => [{ at: "section", field, way }];
const common = { of: ["fan"], severity: "shortfall" } as const;

/** The fan's record where it turns fastest; undefined when nothing was solved. */
function fastest({ ratings, index }: Machine): FanSectionRating | undefined {
  let found: FanSectionRating | undefined;
  for (const rating of ratings) {
    const record = rating.sections[index] as FanSectionRating;
    if (rating.solved && record.fanSpeed > (found?.fanSpeed ?? 0)) found = record;
  }
  return found;
}

/** Clearances, drive, control and redundancy of the fans. */
export const fanBuildRules: readonly Rule[] = [
  machineRule<FanDesign>({
    ...common,
    id: "fan inlet clearance",
    covers: ["FAN-14", "CLG-24"],
    protects: "the fan's pressure from a starved inlet",
    measures: "free distance before each inlet over the wheel's diameter",
    quantity: "factor",
    sense: "at least",
    limit: 1,
    source: "unit-design-guideline one wheel diameter from wall to inlet",
    certainty: "read",
    isGuide: true,
    remedy:
      "a wider cabinet, a smaller wheel, or more space before plenum wheels; the loss is counted in the fan's pressure",
    mends: [
      ...mend("diameter", "less"),
      ...mend("upstreamSpace", "more"),
      { at: "casing", field: "width", way: "more" },
    ],
    value: ({ design }) => design.clearance / design.diameter,
  }),
  machineRule<FanDesign>({
    ...common,
    id: "space from coil to fan",
    covers: ["FAN-14", "CLG-24"],
    protects: "even flow through coil and fan",
    measures: "clear space before the fan, accesses counted",
    quantity: "length",
    sense: "at least",
    limit: inches(24),
    source: "unit-design-guideline 24 in or one wheel diameter from a component to the fan",
    certainty: "read",
    remedy: "more space before the fan",
    mends: mend("upstreamSpace", "more"),
    value: ({ design, unit, index }) => {
      let space = design.upstreamSpace;
      for (let place = index - 1; place >= 0; place--) {
        const section = unit.sections[place]!;
        if (section.kind !== "access" && section.kind !== "spray gap") break;
        space += section.layout.length;
      }
      return space;
    },
  }),
  machineRule<FanDesign>({
    ...common,
    id: "fan outlet duct",
    covers: ["FAN-15"],
    protects: "the fan's pressure from an uneven outlet",
    measures: "straight duct behind a housed fan",
    quantity: "length",
    sense: "at least",
    limit: (at) => effectiveDuctLength(at.design.outletArea, fastest(at as Machine)?.outletVelocity ?? 0),
    limitWords: "2.5 duct diameters to 2500 fpm, one more for each 1000 fpm",
    source: "amca-201 effective duct length, from memory",
    certainty: "from memory",
    remedy: "straight duct of the outlet's size; the loss is counted in the fan's pressure",
    mends: mend("outletDuct", "more"),
    value: ({ design }) => (design.housed ? design.outletDuct : undefined),
  }),
  machineRule<FanDesign>({
    ...common,
    id: "speed control on large motors",
    covers: ["FAN-26", "FAN-11"],
    protects: "energy at part load",
    measures: "motors of 5 hp and above follow the flow",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "campus-specification speed control from 5 hp",
    certainty: "read",
    isGuide: true,
    remedy: "speed control",
    mends: mend("speedControlled", "other"),
    value: ({ design }) => (design.motorPower < 5 * 745.7 ? undefined : design.speedControlled ? 1 : 0),
  }),
  machineRule<FanDesign>({
    ...common,
    id: "fan turndown",
    covers: ["FAN-11"],
    protects: "the motor from heat at slow speed",
    measures: "highest over lowest speed of the job",
    quantity: "factor",
    sense: "at most",
    limit: 10,
    source: "motor-drive-article 10:1 in general, 20:1 for inverter duty",
    certainty: "read",
    severity: "damage",
    remedy: "less turndown, or an inverter-duty motor",
    mends: [{ at: "duty", field: "supplyAirflow.minimum", way: "more" }],
    value: ({ weighing: { running } }) =>
      running.fanSpeed.least > 0 ? running.fanSpeed.most / running.fanSpeed.least : undefined,
  }),
  machineRule<FanDesign>({
    ...common,
    id: "bearing life",
    isChosen: true,
    covers: ["FAN-12"],
    protects: "the fan from early bearings",
    measures: "mean life that is asked of the bearings, five times that of nine in ten",
    quantity: "time",
    sense: "at least",
    limit: 200_000 * 3600,
    source: "ufgs-15895 200 000 h mean life; five times L10 from-memory",
    certainty: "from memory",
    remedy: "ask for longer bearing life",
    mends: mend("bearingLife", "more"),
    value: ({ design }) => (design.drive === "belt" ? 5 * design.bearingLife : undefined),
  }),
  machineRule<FanDesign>({
    ...common,
    id: "motors of an array",
    covers: ["FAN-10"],
    protects: "handling of a failed motor",
    measures: "power of each motor of an array",
    quantity: "shaftPower",
    sense: "at most",
    limit: 10 * 745.7,
    source: "hospital-master-specification fan arrays, 10 hp each",
    certainty: "read",
    byDefault: false,
    remedy: "more and smaller fans",
    mends: mend("count", "more"),
    value: ({ design }) => (design.count > 1 ? design.motorPower : undefined),
  }),
  machineRule<FanDesign>({
    ...common,
    id: "redundant fans",
    covers: ["FAN-23", "FAN-22"],
    protects: "the laboratories when a fan fails",
    measures: "fans beside the one that fails, where the duty asks for airflow with one out",
    quantity: "count",
    sense: "at least",
    limit: 1,
    source: "definition of the duty's redundancy; hospital-master-specification two halves",
    certainty: "derived here",
    remedy: "an array of fans",
    mends: mend("count", "more"),
    value: ({ design, duty }) => (duty.redundancy.airflowWithOneFanOut > 0 ? design.count - 1 : undefined),
  }),
];
