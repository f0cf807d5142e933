import { spliceEdit } from "#form/splice";
import type { Way } from "./contradiction.ts";
import type { Failure, Once } from "./size-once.ts";
import { type Change, capacityWays, frostproofWater, lessAir, lessPressure, moreRoom, steadierFlow } from "./way.ts";

/** The nearest duties that work; where none was found, what was tried and what came of it. */
export interface NearestDuties {
  readonly ways: readonly Way[];
  readonly why: string;
}

/** Ways that are told, and whole sizings that are made to prove them. */
const mostTold = 2;
const mostSized = 18;

/** Sizes for a changed duty. */
type Size = (text: string) => Once;

/**
 * The nearest duties that work, each alone and each proven by sizing for it: what the contradictions themselves ask, what
 * is missing of a coil's water, more room, less air, and what else usually gives way.
 */
export function nearestDuties(text: string, failure: Failure, size: Size): NearestDuties {
  const desk = new Desk(size);
  const ways: Way[] = [];
  for (const find of finders) {
    if (ways.length >= mostTold) break;
    const way = find({ text, failure, desk });
    if (way !== undefined) ways.push(way);
  }
  return { ways, why: ways.length > 0 ? "" : `no change was found that helps: ${desk.tried()}` };
}

/** Keeps count of the sizings, and of what those came to that gave no unit. */
class Desk {
  /** By what came of them. */
  readonly #tried = new Map<string, string[]>();
  readonly #size: Size;
  #left = mostSized;

  constructor(size: Size) {
    this.#size = size;
  }

  /** Sizes for the duty with a way taken; undefined where the way does not splice, or enough was sized. */
  take(text: string, way: Way): Once | undefined {
    const changed = this.#left > 0 ? changedText(text, way) : undefined;
    if (changed === undefined) return undefined;
    this.#left--;
    const once = this.#size(changed);
    if (once.outcome !== "unit") {
      const words = shortWords(once);
      const others = this.#tried.get(words) ?? [];
      this.#tried.set(words, [...others, `${way.path} ${way.value}${way.also ? " and more" : ""}`]);
    }
    return once;
  }

  /** What was tried in vain, and what came of it. */
  tried(): string {
    return [...this.#tried].map(([words, ways]) => `${ways.join(", ")}: ${words}`).join("; ");
  }
}

interface Search {
  readonly text: string;
  readonly failure: Failure;
  readonly desk: Desk;
}

type Finder = (search: Search) => Way | undefined;

/** The first of some ways that works. */
function firstThatWorks({ text, desk }: Search, ways: readonly Way[]): Way | undefined {
  return ways.find((way) => desk.take(text, way)?.outcome === "unit");
}

/** What the contradictions ask; where the duty then fails for another reason, with what mends that as well. */
const contradictionsMended =
  (kind: number): Finder =>
  (search) => {
    const { text, failure, desk } = search;
    if (failure.outcome !== "contradiction") return undefined;
    const [first, ...others] = failure.contradictions;
    const paths = [...new Set(first!.nearest.map(({ path }) => path))];
    const also = others.flatMap(({ nearest }) => nearest.slice(0, 1)).flatMap(changesOf);
    const ways = first!.nearest.filter(({ path }) => path === paths[kind]);
    for (const way of ways.map((each) => together(each, also))) {
      const once = desk.take(text, way);
      if (once === undefined || once.outcome === "not read") continue;
      if (once.outcome === "unit") return way;
      if (once.outcome === "contradiction") continue;
      const next = { text: changedText(text, way)!, failure: once, desk };
      const more =
        capacity("water")(next) ?? capacity("air")(next) ?? moreRoomThatWorks(next) ?? lessAirThatWorks(next);
      if (more !== undefined) return { ...together(way, changesOf(more)), words: `${way.words}; ${more.words}` };
    }
    return undefined;
  };

/** The most first: where that is of no use, less is not either. */
const capacity =
  (what: "water" | "air"): Finder =>
  (search) => {
    const [most, ...nearer] = capacityWays(search.failure, what);
    if (most === undefined || firstThatWorks(search, [most]) === undefined) return undefined;
    return firstThatWorks(search, nearer) ?? most;
  };

const moreCapacity: Finder = (search) => capacity("water")(search) ?? capacity("air")(search);

/** Water that does not freeze; where glycol makes the coil too small, with what helps that. */
const keptFromFrost: Finder = ({ text, failure, desk }) => {
  for (const way of frostproofWater(failure)) {
    const once = desk.take(text, way);
    if (once?.outcome === "unit") return way;
    if (once?.outcome !== "no unit") continue;
    const more = moreCapacity({ text: changedText(text, way)!, failure: once, desk });
    if (more !== undefined) return both(way, more);
  }
  return undefined;
};

/** More of what site and road take, step by step as far as the unit that came nearest says that it needs it. */
function moreRoomThatWorks({ text, failure, desk }: Search): Way | undefined {
  const changes = new Map<string, string>();
  let at: Failure = failure;
  for (let count = 0; count < 4; count++) {
    const wider = moreRoom(at).filter(({ path, value }) => changes.get(path) !== value);
    if (wider.length === 0) return undefined;
    for (const { path, value } of wider) changes.set(path, value);
    const [first, ...also] = [...changes].map(([path, value]) => ({ path, value }));
    const way = together({ ...first!, words: "only if the road and the site give more" }, also);
    const once = desk.take(text, way);
    if (once?.outcome === "unit") return way;
    if (once === undefined || once.outcome === "not read" || once.outcome === "contradiction") return undefined;
    const more = moreCapacity({ text: changedText(text, way)!, failure: once, desk });
    if (more !== undefined) return both(way, more);
    at = once;
  }
  return undefined;
}

/** To how much of itself the airflow is found; and sizings for it. */
const closeShare = 1.12;
const mostShares = 6;

/** As much of the air as one unit takes: begun with what the room takes; then more while it works, or less until it does. */
function lessAirThatWorks(search: Search): Way | undefined {
  const { text, failure, desk } = search;
  let found: Way | undefined;
  let low = 0;
  let high = 1;
  let share = Math.min(0.9, shareOfRoom(failure));
  for (let count = 0; count < mostShares && high > closeShare * low; count++) {
    const way = lessAir(failure.duty, share);
    const once = desk.take(text, way);
    if (once === undefined || once.outcome === "not read") return found;
    if (once.outcome === "unit") {
      found = way;
      low = share;
      share = Math.min(closeShare * low, 0.5 * (low + high));
      continue;
    }
    // Where a coil's capacity is what is lacking of less air, it is lacking of any.
    if (found === undefined && capacityWays(once, "air").length > 0) return lessAirBeside(search, way, once);
    high = share;
    share = low > 0 ? 0.5 * (low + high) : share * Math.min(0.85, Math.max(0.5, shareOfRoom(once)));
  }
  return found;
}

/** As much of the air as a unit takes whose coil is helped: `less` air alone failed as `once` says. */
function lessAirBeside(search: Search, less: Way, once: Failure): Way | undefined {
  const { text, desk } = search;
  const lacksRoom = once.outcome === "no unit" && once.nearest.failing.length > 0;
  const more = lacksRoom ? undefined : moreCapacity({ text: changedText(text, less)!, failure: once, desk });
  if (more !== undefined) return both(less, more);
  const [help] = [...capacityWays(once, "water"), ...capacityWays(once, "air")];
  const helped = help && changedText(text, help);
  const way = helped === undefined ? undefined : lessAirThatWorks({ ...search, text: helped });
  return way && both(way, help!);
}

/** Share of its air that the room takes at the velocities of the cross-section that the duty needs. */
function shareOfRoom(failure: Failure): number {
  if (failure.outcome === "contradiction") return 0.8;
  const { needed, most } = failure.room;
  const share = needed === undefined ? 0.5 : most / (needed.width * needed.height);
  return Math.max(0.1, 0.97 * share);
}

const finders: readonly Finder[] = [
  contradictionsMended(0),
  contradictionsMended(1),
  capacity("water"),
  capacity("air"),
  keptFromFrost,
  moreRoomThatWorks,
  (search) => firstThatWorks(search, steadierFlow(search.failure)),
  (search) => (search.failure.outcome === "contradiction" ? undefined : lessAirThatWorks(search)),
  (search) => firstThatWorks(search, lessPressure(search.failure)),
];

function changesOf({ path, value, also = [] }: Way): readonly Change[] {
  return [{ path, value }, ...also];
}

/** Two ways that must be gone together. */
function both(way: Way, more: Way): Way {
  return { ...together(way, changesOf(more)), words: `${way.words}; ${more.words}` };
}

/** A way with further changes; of one path the first counts. */
function together(way: Way, more: readonly Change[]): Way {
  const known = new Set(changesOf(way).map(({ path }) => path));
  const also = [...(way.also ?? []), ...more.filter(({ path }) => !known.has(path))];
  return also.length === 0 ? way : { ...way, also };
}

function changedText(text: string, way: Way): string | undefined {
  let changed = text;
  for (const { path, value } of changesOf(way)) {
    const splice = spliceEdit(changed, path, value);
    if (!splice.ok) return undefined;
    changed = splice.text;
  }
  return changed;
}

function shortWords(once: Exclude<Once, { outcome: "unit" }>): string {
  switch (once.outcome) {
    case "not read":
      return "the file would not read";
    case "contradiction":
      return once.contradictions[0]!.words;
    case "no cabinet":
      return "no cross-section within what site and road take";
    default:
      return once.nearest.obstacles[0] ?? "no unit was found";
  }
}
