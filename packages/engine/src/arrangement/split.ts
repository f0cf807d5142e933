import { inBothUnits } from "#section/both-units";
import type { Unit } from "#unit/unit";
import type { Lug } from "./base-parts.ts";
import type { ArrangementNotice } from "./notice.ts";
import { type Part, visitLeaves } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";

/** What site and road allow, m and kg; the site's undefined where it says nothing. */
export interface ShippingLimits {
  readonly length: number | undefined;
  readonly width: number | undefined;
  readonly height: number | undefined;
  readonly shippingLength: number;
  readonly shippingWidth: number;
  readonly shippingHeight: number;
  readonly shippingMass: number;
}

/** A piece that is shipped and lifted as one. */
export interface Split {
  readonly name: string;
  /** Names of its sections, in airflow order. */
  readonly sections: readonly string[];
  /** mm along the airflow, of the clear cabinet. */
  readonly from: number;
  readonly to: number;
}

/** mm that a part may stand over a joint and still be bolted later: a gasket, a flange. */
const overJoint = 60;
/** kg/m of base, frame and roof that a first count of pieces assumes, for each m around the cabinet. */
const restPerLength = 25;

/** Where the unit comes apart: before the sections that the job names, or as few and as even pieces as the limits take. */
export function splitUnit(
  unit: Unit,
  placed: readonly PlacedSection[],
  casing: Part,
  limits: ShippingLimits,
  outside: { readonly width: number; readonly height: number },
): { readonly splits: readonly Split[]; readonly notices: readonly ArrangementNotice[] } {
  const blocked = blockedJoints(placed);
  const masses = sectionMasses(unit, placed, casing);
  const wanted = unit.casing.splitsBefore;
  const notices: ArrangementNotice[] = [];
  const starts =
    wanted === undefined
      ? chosenStarts(unit, placed, blocked, masses, limits)
      : wantedStarts(placed, wanted, blocked, notices);
  const splits = piecesFrom(unit, placed, starts);
  for (const split of splits) notices.push(...pieceNotices(unit, split, placed, masses, limits, outside));
  return { splits, notices };
}

/** For every section, the part that stands over the joint before it, if any. */
function blockedJoints(placed: readonly PlacedSection[]): readonly (Part | undefined)[] {
  const joints = placed.map(({ section }) => 1000 * section.start);
  const found: (Part | undefined)[] = placed.map(() => undefined);
  placed.forEach(({ part }, place) => {
    visitLeaves(part, (leaf) => {
      if (leaf.kind === "door" || leaf.kind === "collar") return;
      const [from, to] = [leaf.place.x, leaf.place.x + leaf.size.x];
      for (let index = 1; index < joints.length; index++) {
        const isBefore = from < joints[index]! - overJoint;
        if (isBefore && (place >= index || to > joints[index]! + overJoint)) found[index] ??= leaf;
      }
    });
  });
  return found;
}

/** kg of each section as shipped, with its casing and its share of base, frame and roof. */
function sectionMasses(unit: Unit, placed: readonly PlacedSection[], casing: Part): readonly number[] {
  const panels = new Map<string, number>();
  for (const panel of casing.children) {
    if (panel.section !== undefined) panels.set(panel.section, (panels.get(panel.section) ?? 0) + panel.mass);
  }
  const around = 2 * (unit.frame.width + unit.frame.height);
  return placed.map(
    ({ section, part }) =>
      part.mass + (panels.get(section.name) ?? 0) + restPerLength * around * section.layout.length * 0.5,
  );
}

/** Fewest pieces within the limits; among those, the ones whose longest is shortest. */
function chosenStarts(
  unit: Unit,
  placed: readonly PlacedSection[],
  blocked: readonly (Part | undefined)[],
  masses: readonly number[],
  limits: ShippingLimits,
): readonly number[] {
  const ends = 2 * unit.casing.panelThickness;
  const lengths = placed.map(({ section }) => section.layout.length);
  const count = placed.length;
  // best[i]: pieces and longest piece of the sections before i.
  const best: { pieces: number; longest: number; last: number }[] = [{ pieces: 0, longest: 0, last: 0 }];
  for (let end = 1; end <= count; end++) {
    let found = { pieces: Number.POSITIVE_INFINITY, longest: Number.POSITIVE_INFINITY, last: 0 };
    let [length, mass] = [0, 0];
    for (let start = end - 1; start >= 0; start--) {
      length += lengths[start]!;
      mass += masses[start]!;
      const fits = length + ends <= limits.shippingLength + 1e-9 && mass <= limits.shippingMass;
      const before = best[start]!;
      if (start > 0 && blocked[start] !== undefined) continue;
      // What exceeds the limits by itself is counted dear, not refused.
      const pieces = before.pieces + (fits ? 1 : 1000 * (1 + length));
      const longest = Math.max(before.longest, length);
      if (pieces < found.pieces || (pieces === found.pieces && longest < found.longest - 1e-9)) {
        found = { pieces, longest, last: start };
      }
    }
    best.push(found);
  }
  const starts: number[] = [];
  for (let end = count; end > 0; end = best[end]!.last) starts.unshift(best[end]!.last);
  return starts;
}

/** The sections named, where the unit does come apart before them. */
function wantedStarts(
  placed: readonly PlacedSection[],
  wanted: readonly string[],
  blocked: readonly (Part | undefined)[],
  notices: ArrangementNotice[],
): readonly number[] {
  const starts = new Set([0]);
  for (const name of wanted) {
    const index = placed.findIndex(({ section }) => section.name === name);
    const at = index < 0 ? undefined : 1000 * placed[index]!.section.start;
    if (index <= 0) {
      const names = placed.slice(1).map(({ section }) => section.name);
      const what =
        index < 0
          ? `no section is called so; a split can stand before ${names.join(", ")}`
          : "nothing stands before the first section; no split is there";
      notices.push({ part: name, at, what, weight: "caution" });
      continue;
    }
    starts.add(index);
    const part = blocked[index];
    if (part !== undefined) {
      const what = `the split before it goes through ${part.name} of ${part.section ?? "the unit"}`;
      notices.push({ part: name, at, what, weight: "caution" });
    }
  }
  return [...starts].sort((a, b) => a - b);
}

function piecesFrom(unit: Unit, placed: readonly PlacedSection[], starts: readonly number[]): readonly Split[] {
  return starts.map((start, index) => {
    const end = starts[index + 1] ?? placed.length;
    const sections = placed.slice(start, end).map(({ section }) => section.name);
    const from = 1000 * (placed[start]?.section.start ?? 0);
    const to = 1000 * (placed[end]?.section.start ?? unit.length);
    return { name: `piece ${index + 1}`, sections, from, to };
  });
}

function pieceNotices(
  unit: Unit,
  split: Split,
  placed: readonly PlacedSection[],
  masses: readonly number[],
  limits: ShippingLimits,
  outside: { readonly width: number; readonly height: number },
): readonly ArrangementNotice[] {
  const length = split.to - split.from + 2000 * unit.casing.panelThickness;
  const mass = placed.reduce(
    (sum, { section }, index) => sum + (split.sections.includes(section.name) ? masses[index]! : 0),
    0,
  );
  const say = (what: string): ArrangementNotice => ({
    part: split.name,
    at: split.from,
    what,
    weight: "caution",
    source: "common-practice transport guides",
  });
  const checks = [
    ["longer", length / 1000, limits.shippingLength, "length"],
    ["wider", outside.width / 1000, limits.shippingWidth, "length"],
    ["higher", outside.height / 1000, limits.shippingHeight, "length"],
    ["heavier", mass, limits.shippingMass, "mass"],
  ] as const;
  return checks
    .filter(([, size, limit]) => size > limit * (1 + 1e-6))
    .map(([word, size, limit, quantity]) =>
      say(
        `${word} than can be shipped: ${inBothUnits(size, quantity)}, at most ${inBothUnits(limit, quantity)}; a permit, or smaller pieces`,
      ),
    );
}

/** Lugs of a piece: half of them on each side; two on a side stand where the rail bends least under an even load. */
export function lugPlaces(unit: Unit, split: Split): readonly Lug[] {
  const { panelThickness, liftingLugs, railHeight } = unit.casing;
  if (railHeight < 0.03) return [];
  const along = Math.floor(liftingLugs / 2);
  const length = split.to - split.from;
  const share = (index: number) => (along === 2 ? 0.2071 + 0.5858 * index : (index + 0.5) / along);
  const sides = [-1000 * panelThickness, 1000 * (unit.frame.width + panelThickness)];
  return Array.from({ length: along }, (_, index) => split.from + length * share(index)).flatMap((x) =>
    sides.map((y) => ({ x, y })),
  );
}
