import { listOf, number, published, record, text } from "../schema/describe.ts";

const flag = { type: "boolean" };
const months = listOf(number(), "January to December");

const total = record({
  key: text(),
  name: text(),
  unit: text("of total and months"),
  total: number(),
  months,
  peak: number("highest hour"),
  peakUnit: text(),
  peakTime: text("end of that hour, standard time"),
  peakOutdoor: record({ dryBulb: number("°C"), wetBulb: number("°C"), dewPoint: number("°C") }),
  designPeak: number("highest figure at the running conditions of the job"),
  designCondition: text("key of that condition; empty where there is none"),
});

const cost = record({
  currency: text(),
  lines: listOf(
    record({ name: text(), cost: number("cents"), carbon: number("kg of carbon dioxide and its like"), months }),
  ),
  cost: number("cents a year"),
  carbon: number("kg a year"),
  presentWorth: number("cents today for all years, prices growing"),
  years: number(),
});

const rule = record(
  {
    section: text(),
    rule: text("name, as docs/rules.md has it"),
    outcome: { enum: ["pass", "fail", "advice", "cannot tell"] },
    thin: flag,
    unit: text("of value and limit; 1 for bare numbers"),
    value: number("where the margin is smallest"),
    limit: number(),
    margin: number("share of the limit that is left"),
    time: text(),
    missed: number("hours in which the limit is missed"),
    told: number("hours in which it could be told"),
  },
  "value",
  "limit",
  "margin",
  "time",
);

const spread = { low: number("a twentieth of the trials lies below"), middle: number(), high: number() };

const representative = record({
  hours: listOf(record({ time: text(), hour: number("of the year, from 0"), weight: number("hours it stands for") })),
  errors: listOf(
    record({
      key: text(),
      unit: text(),
      full: number("by all hours"),
      estimate: number(),
      error: number("estimate less full, over full"),
    }),
  ),
  missedHours: record({ full: number(), estimate: number() }),
});

const uncertainty = record(
  {
    trials: number(),
    seed: number(),
    hours: number("that stand for the year in each trial"),
    heldShare: number("probability that the leaving air is held at an hour in which the fan runs"),
    alwaysHeld: number("share of trials in which it is held in every hour"),
    alwaysHeldError: number("standard error of that"),
    totals: listOf(record({ key: text(), unit: text(), ...spread })),
    cost: record(spread),
    freezeMargin: record(spread),
    rules: listOf(record({ section: text(), rule: text(), missed: number("share of trials"), ...spread })),
    unsolved: number("hours of all trials that could not be solved"),
    tolerances: listOf(record({ key: text(), name: text(), spread: text(), source: text() })),
  },
  "freezeMargin",
);

const jobYear = record(
  {
    job: text("file"),
    tag: text("of the unit"),
    isWhole: { ...flag, description: "false where hours could not be solved: the sums are then not those of a year" },
    isSynthetic: { ...flag, description: "true where the weather was made up from design days" },
    runningHours: number(),
    notes: listOf(text()),
    totals: listOf(total),
    cost,
    filterChanges: listOf(text("the hour after which")),
    misses: listOf(
      record({
        section: text(),
        what: text(),
        hours: number(),
        wanted: number("in the worst hour"),
        got: number(),
        unit: text(),
        time: text(),
      }),
    ),
    hoursMissed: number("in which anything that is asked is not held"),
    hoursRulesMissed: number("in which any rule that decides is missed"),
    freezing: listOf(
      record(
        {
          section: text(),
          kind: text(),
          hours: number("with the coldest wall below freezing"),
          longest: number("of them in a row"),
          longestFrom: text(),
          margin: number("K, the smallest"),
          time: text(),
        },
        "longestFrom",
        "margin",
        "time",
      ),
    ),
    watches: listOf(
      record(
        {
          name: text(),
          hours: number(),
          sense: { enum: ["above", "below"] },
          limit: number(),
          source: text(),
          worst: number(),
          time: text(),
        },
        "worst",
        "time",
      ),
    ),
    freezeTimes: listOf(
      record(
        {
          failure: text(),
          section: text(),
          air: number("°C of the coldest filament that meets the coil"),
          time: text("the hour in which it is shortest"),
          firstIce: number("s; left out where it does not freeze"),
          solid: number("s"),
        },
        "firstIce",
        "solid",
      ),
    ),
    rules: listOf(rule, "that look at the running unit, at their smallest margin over the year"),
    unsolved: listOf(record({ time: text(), reason: text() })),
    imbalance: number("energy that does not balance, as a share of what passed"),
    representative,
    uncertainty,
  },
  "representative",
  "uncertainty",
);

/** The published schema of `oncethrough year --json`. */
export function yearSchema(): object {
  return published("year", "Years of units, as printed by `oncethrough year --json`; numbers in SI units", {
    ...record({
      format: { const: "oncethrough year 1" },
      weather: record({ origin: { enum: ["EPW", "CSV", "synthetic"] }, name: text(), hours: number() }),
      jobs: listOf(jobYear, "in the order given"),
      comparison: listOf(
        record(
          {
            key: text(),
            name: text(),
            unit: text("of the values; 1 for counts, cents for money"),
            currency: text("of money; left out where the jobs count in different currencies"),
            values: listOf(number(), "one for each job"),
          },
          "currency",
        ),
        "of several jobs, figure by figure; empty for one",
      ),
    }),
  });
}
