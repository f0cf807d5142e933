import type { FinnedSurface } from "#component/finned-surface/family";
import type { CoilAlternative } from "#design/coil-alternative";
import { coilAlternatives } from "#design/coil-alternatives";
import { type CoilBlocks, coilBlocks, type LiquidCoilValues } from "#design/coil-choice";
import { metresPerInch as inch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import type { ChilledWaterCoilRating } from "#section/chilled-water-coil/rate";
import type { Frame } from "#section/contract";
import { enthalpyFlow } from "#section/station";
import type { UnitRating } from "#unit/rating";
import type { DraftSection, DraftValue } from "./draft.ts";
import { indexOf, runningRatings, tryValues } from "./trial.ts";
import { against, choose, readValues, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

/** What is looked at of a heating coil in outside air: wide fins, which snow and lint do not close. */
const heatingRows = [1, 6] as const;
const heatingFins = [6, 12] as const;
/** Surfaces looked at where the user names none: the common tube, plain and wavy. */
const usualSurfaces = ["typical plain 5/8 in", "typical wavy 5/8 in"];
/** m/s in the tubes: below it the film inside lames; common practice. */
const leastTubeVelocity = 0.45;
/** Of the velocity that throws water, so that a hair more air does not. */
const mostCarryOver = 0.98;
/** Cheapest candidates that are held against the other days. */
const mostTried = 30;

/** The cheapest coil on water or glycol that holds the leaving air at every condition of its season within the limits. */
export function settleLiquidCoils(room: Workroom, solved: Solved): boolean {
  let changed = false;
  for (const section of sectionsOfKind(room, "chilled-water coil", "hot-water coil")) {
    changed = settleCoil(room, solved, section) || changed;
  }
  return changed;
}

/** The first of the candidates that holds every condition of its season. */
function firstHeld(
  room: Workroom,
  solved: Solved,
  section: DraftSection,
  index: number,
  running: readonly UnitRating[],
  candidates: readonly CoilAlternative[],
  carryOver: number,
): CoilAlternative | undefined {
  let failed = 0;
  let tried = 0;
  for (const candidate of candidates) {
    // What just failed fails again with hardly more capacity.
    if (candidate.capacity < failed * 1.01 || tried > mostTried) continue;
    tried++;
    const values = { ...section.values, ...typedValues(room, candidate) };
    const trials = tryValues<ChilledWaterCoilRating>(room, solved, index, values, running);
    if (trials !== undefined && isHeld(trials, carryOver)) return candidate;
    failed = candidate.capacity;
  }
  return undefined;
}

/** How closely is looked: the common steps first; then every row and fin, and a few tubes less where circuits divide better. */
interface Search {
  readonly step: number;
  readonly tubesLeftOut: readonly number[];
  readonly mostCarryOver: number;
}

const searches: readonly Search[] = [
  { step: 2, tubesLeftOut: [0], mostCarryOver },
  { step: 1, tubesLeftOut: [0, 1, 2, 3], mostCarryOver },
  // A coil that throws water on one of the days, for an eliminator to catch.
  { step: 1, tubesLeftOut: [0], mostCarryOver: Number.POSITIVE_INFINITY },
];

/** What goes with a kind of coil on liquid. */
interface Use {
  readonly kind: "chilled-water coil" | "hot-water coil";
  readonly season: "cooling" | "heating";
  readonly wanted: (rating: UnitRating) => number | undefined;
  readonly rows: readonly number[];
  readonly fins: readonly number[];
}

function useOf(room: Workroom, section: DraftSection): Use {
  if (section.kind === "hot-water coil") {
    return {
      kind: "hot-water coil",
      season: "heating",
      wanted: ({ operation }) => operation.heatingLeaving,
      rows: range(...heatingRows),
      fins: range(...heatingFins),
    };
  }
  return {
    kind: "chilled-water coil",
    season: "cooling",
    wanted: ({ operation }) => operation.coolingLeaving,
    rows: range(3, room.limits.coolingRows),
    fins: range(8, Math.round(room.limits.coolingFins * inch)),
  };
}

function settleCoil(room: Workroom, solved: Solved, section: DraftSection): boolean {
  const index = indexOf(solved.unit, section.name);
  const use = useOf(room, section);
  const running = runningRatings(solved, use.season).filter((rating) => use.wanted(rating) !== undefined);
  const worst = heaviest(running, index, use);
  const key = `${section.name}: capacity`;
  if (worst === undefined) return false;
  // A coil that was chosen and does stays: its neighbours change by a hair from round to round.
  const present = tryValues<ChilledWaterCoilRating>(room, solved, index, section.values, running);
  if ("surface" in section.values && present !== undefined && isHeld(present, throwsAllowed(room))) {
    room.obstacles.delete(key);
    return false;
  }
  // What no coil reached, none does where hardly less is asked.
  const asked = { heat: heatFlow(worst, index, use), wanted: use.wanted(worst)! };
  const beyond = room.beyond.get(section.name);
  if (beyond !== undefined && isAsMuch(asked, beyond, use)) return false;
  for (const search of searches) {
    const candidates = alternatives(room, solved, section, index, worst, use, search);
    const found = firstHeld(room, solved, section, index, running, candidates, search.mostCarryOver);
    if (found === undefined) continue;
    room.obstacles.delete(key);
    return choose(room, section, typedValues(room, found), reasons(room, found, worst, use));
  }
  room.beyond.set(section.name, asked);
  room.obstacles.set(
    key,
    `no ${use.kind} up to ${use.rows.at(-1)} rows of ${use.fins.at(-1)} fins per inch holds ${printQuantity(use.wanted(worst)!, "temperature", "ip")} within the limits of air and water pressure`,
  );
  return false;
}

/** The condition with most heat to take out, or to bring in. */
function heaviest(ratings: readonly UnitRating[], index: number, use: Use): UnitRating | undefined {
  return ratings.reduce<UnitRating | undefined>(
    (found, each) => (found === undefined || heatFlow(each, index, use) > heatFlow(found, index, use) ? each : found),
    undefined,
  );
}

/** What tells how much heat is to be taken out, or brought in: the larger, the more. */
function heatFlow(rating: UnitRating, index: number, use: Use): number {
  const { entering } = rating.sections[index]!;
  return use.season === "cooling"
    ? enthalpyFlow(entering)
    : entering.dryAirFlow * (use.wanted(rating)! - entering.dryBulb);
}

interface Asked {
  readonly heat: number;
  readonly wanted: number;
}

/** True where as much is asked of the coil as before, but for 2 % of heat and 0.2 K. */
function isAsMuch(asked: Asked, before: Asked, { season }: Use): boolean {
  const sense = season === "cooling" ? 1 : -1;
  return asked.heat >= 0.98 * before.heat && sense * (asked.wanted - before.wanted) < 0.2;
}

function alternatives(
  room: Workroom,
  { unit }: Solved,
  section: DraftSection,
  index: number,
  worst: UnitRating,
  use: Use,
  search: Search,
): readonly CoilAlternative[] {
  const { behaviour } = unit.sections[index]!;
  const { limits } = room;
  const known = fixedOf(room, section);
  const values = readValues(room, behaviour, section.values) as unknown as LiquidCoilValues;
  const names = known.surface === undefined ? usualSurfaces : [String(known.surface)];
  const surfaces = names.map((name) => room.catalogue.component("finned surface", name) as FinnedSurface);
  const blocks = blocksOf(
    { ...values, kind: use.kind } as LiquidCoilValues,
    unit.frame,
    surfaces,
    known,
    search.tubesLeftOut,
  );
  const { chilledWater, heatingWater } = worst.condition.utilities;
  const supply = use.season === "cooling" ? chilledWater : heatingWater;
  const { candidates } = coilAlternatives(
    {
      ...blocks,
      air: worst.sections[index]!.entering,
      supply: supply!,
      wanted: use.wanted(worst),
      rows: known.rows === undefined ? stepped(use.rows, search.step) : [Number(known.rows)],
      fins: stepped(use.fins, search.step).map((each) => each / inch),
      turbulators: [false],
      limits: {
        faceVelocity: use.season === "cooling" ? limits.coolingVelocity : limits.heatingVelocity,
        airPressureDrop: limits.coolingAirPressure,
        liquidPressureDrop: limits.coolingWaterPressure,
        leastTubeVelocity,
        mostTubeVelocity: limits.tubeVelocity,
        depth: Number.POSITIVE_INFINITY,
      },
    },
    "price",
  );
  return candidates;
}

/** The coil's block for every surface, as high as the cabinet takes it and a few tubes lower. */
function blocksOf(
  values: LiquidCoilValues,
  frame: Frame,
  surfaces: readonly FinnedSurface[],
  known: Readonly<Record<string, DraftValue>>,
  tubesLeftOut: readonly number[],
): CoilBlocks {
  const open = { ...values, circuits: undefined };
  const full = coilBlocks({ ...open, finnedHeight: undefined }, frame, surfaces);
  if (known["finned height"] !== undefined) return coilBlocks(open, frame, surfaces);
  const blocks = full.blocks.flatMap(({ coil }) =>
    tubesLeftOut.flatMap((fewer) => {
      const finnedHeight = (coil.tubesPerRow - fewer) * coil.surface.transversePitch;
      return coilBlocks({ ...open, finnedHeight }, frame, [coil.surface]).blocks;
    }),
  );
  return { ...full, blocks };
}

function fixedOf(room: Workroom, section: DraftSection): Readonly<Record<string, DraftValue>> {
  return room.fixed.sections?.[room.draft.sections.indexOf(section)]?.values ?? {};
}

/** With an eliminator behind it a coil may throw water. */
function throwsAllowed(room: Workroom): number {
  return sectionsOfKind(room, "moisture eliminator").length > 0 ? Number.POSITIVE_INFINITY : mostCarryOver;
}

function isHeld(
  trials: readonly { readonly rating: ChilledWaterCoilRating; readonly shortfalls: readonly unknown[] }[],
  carryOver: number,
): boolean {
  return trials.every((trial) => trial.shortfalls.length === 0 && !(trial.rating.carryOverShare > carryOver));
}

function typedValues(room: Workroom, candidate: CoilAlternative): Record<string, DraftValue> {
  const { surface, rows, fins, circuits, tubesPerRow } = candidate;
  const { transversePitch } = room.catalogue.component("finned surface", surface) as FinnedSurface;
  const height = Number(((tubesPerRow * transversePitch) / inch).toFixed(3));
  return { surface, rows, fins: `${Math.round(fins * inch)} per in`, circuits, "finned height": `${height} in` };
}

function reasons(room: Workroom, candidate: CoilAlternative, worst: UnitRating, use: Use): string {
  const { limits } = room;
  return [
    `the cheapest that holds ${printQuantity(use.wanted(worst)!, "temperature", "ip")} on ${worst.condition.name}`,
    against("air pressure drop", candidate.airPressureDrop, limits.coolingAirPressure, "pressureDifference"),
    against("water pressure drop", candidate.liquidPressureDrop, limits.coolingWaterPressure, "liquidPressureDrop"),
    `water at ${printQuantity(candidate.tubeVelocity, "liquidVelocity", "ip")} in the tubes`,
  ].join("; ");
}

/** Those that a step divides. */
function stepped(values: readonly number[], step: number): readonly number[] {
  return values.filter((each) => each % step === 0);
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
}
