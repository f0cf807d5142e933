import type { HourLists } from "@oncethrough/engine/year/hour-figures";

/** Hours in a row in which something is wrong. */
export interface WrongRun {
  readonly key: string;
  readonly what: string;
  readonly first: number;
  readonly count: number;
  /** The hour of the run in which it is worst. */
  readonly worst: number;
}

/** What may be wrong in an hour: whether it is, and how bad, larger is worse. The gravest first. */
interface Kind {
  readonly key: string;
  readonly what: string;
  readonly badness: (lists: HourLists, hour: number) => number;
}

const ran = (lists: HourLists, hour: number) => lists.running[hour] === 1 && lists.solved[hour] === 1;

const kinds: readonly Kind[] = [
  { key: "unsolved", what: "not solved", badness: (lists, hour) => (lists.solved[hour] === 0 ? 1 : 0) },
  {
    key: "frost",
    what: "a coil wall below freezing",
    badness: (lists, hour) => (ran(lists, hour) ? Math.max(0, -lists.freezeMargin[hour]!) : 0),
  },
  { key: "missed", what: "asked and not held", badness: (lists, hour) => lists.missed[hour]! },
  {
    key: "springs",
    what: "springs amplify",
    badness: (lists, hour) => (lists.springRatio[hour]! > 0 ? Math.max(0, Math.SQRT2 - lists.springRatio[hour]!) : 0),
  },
  {
    key: "fan",
    what: "fan near instability",
    badness: (lists, hour) => (lists.fanSteadiness[hour]! > 0 ? Math.max(0, 1.1 - lists.fanSteadiness[hour]!) : 0),
  },
  {
    key: "carry-over",
    what: "water thrown from the coil",
    badness: (lists, hour) => Math.max(0, lists.carryOver[hour]! - 1),
  },
  { key: "rules", what: "a rule missed", badness: (lists, hour) => lists.rulesMissed[hour]! },
  {
    key: "filters",
    what: "filters in wet air",
    badness: (lists, hour) => Math.max(0, lists.filterHumidity[hour]! - 0.9),
  },
];

/** Every run of hours in which something is wrong: by kind, the gravest kind first, each by time. */
export function wrongRuns({
  lists,
  hours,
}: {
  readonly lists: HourLists;
  readonly hours: number;
}): readonly WrongRun[] {
  return kinds.flatMap(({ key, what, badness }) => {
    const runs: WrongRun[] = [];
    for (let hour = 0; hour < hours; hour++) {
      if (!(badness(lists, hour) > 0)) continue;
      const first = hour;
      let worst = hour;
      for (; hour < hours && badness(lists, hour) > 0; hour++) {
        if (badness(lists, hour) > badness(lists, worst)) worst = hour;
      }
      runs.push({ key: `${key}-${first}`, what, first, count: hour - first, worst });
    }
    return runs;
  });
}

/** Runs of one kind together, as a list is read: how many hours, and the longest runs of them. */
export interface WrongKind {
  readonly what: string;
  readonly hours: number;
  readonly runs: readonly WrongRun[];
}

/** The kinds that occur, each with its runs, longest first. */
export function wrongKinds(runs: readonly WrongRun[]): readonly WrongKind[] {
  return [...new Set(runs.map(({ what }) => what))].map((what) => {
    const own = runs.filter((run) => run.what === what);
    return {
      what,
      hours: own.reduce((sum, { count }) => sum + count, 0),
      runs: own.toSorted((a, b) => b.count - a.count || a.first - b.first),
    };
  });
}
