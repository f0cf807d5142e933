import type { PartBox, SectionPart } from "#section/part";
import { type FastenerName, fastenerMass, fastenerPitch, fastenerSource, fasteners } from "#standard/fastener";
import type { Unit } from "#unit/unit";
import { type Part, partGroup, placedPart, visitParts } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";
import { standsWet, type WetZone } from "./wet-zone.ts";

const origin = { x: 0, y: 0, z: 0 };

/** Screws of a hinge or a latch, bolts of a coil, of a spring or foot, of a motor; common practice. */
const screwsOfHinge = 4;
const boltsOfCoil = 8;
const boltsOfSpring = 1;
const boltsOfMotor = 4;
/** mm of door that one hinge or latch holds. */
const hingePitch = 750;

/** What holds a part, and how many of it. */
interface Held {
  readonly fastener: FastenerName;
  readonly count: number;
}

/** Screws and bolts of casing, roof, joints, doors and what is fitted inside, set by set: stainless where it is wet. */
export function fastenerParts(
  unit: Unit,
  sections: readonly PlacedSection[],
  shell: readonly (Part | undefined)[],
  joints: readonly number[],
  wetZones: readonly WetZone[],
): Part {
  const sets = new FastenerSets(unit);
  const outdoors = new Set(
    sections.filter(({ section }) => section.layout.outside > 0).map(({ section }) => section.name),
  );
  const take = (part: Part) => {
    const held = heldBy(part);
    if (held !== undefined)
      sets.add(held, part, part.wet || outdoors.has(part.section ?? "") || standsWet(part, wetZones));
  };
  for (const group of shell) if (group !== undefined) visitParts(group, take);
  for (const { part } of sections) visitParts(part, take);
  const { panelThickness } = unit.casing;
  const panel = 1000 * panelThickness;
  const [length, width, height] = [1000 * unit.length, 1000 * unit.frame.width, 1000 * unit.frame.height];
  joints.forEach((at, index) => {
    const box = { x: at - panel, y: 0, z: 0, length: 2 * panel, width, height };
    const isWet = wetZones.some(({ from, to }) => at > from && at < to);
    sets.addAt(
      { fastener: "joint bolt with nut", count: spaced(2 * (width + height), fastenerPitch.joint) },
      box,
      isWet,
      `joint ${index + 1}`,
    );
  });
  if (unit.casing.railHeight >= 0.03) {
    const box = { x: 0, y: 0, z: -panel, length, width, height: panel };
    sets.addAt(
      { fastener: "floor bolt with nut", count: spaced(2 * (length + width), fastenerPitch.floor) },
      box,
      false,
      "rail",
    );
  }
  return partGroup("fasteners", "fasteners", undefined, sets.parts());
}

function spaced(around: number, pitch: number): number {
  return Math.ceil(around / pitch - 1e-9);
}

/** mm around the two longer sides of a part's box. */
function around({ x, y, z }: Part["size"]): number {
  return 2 * (x + y + z - Math.min(x, y, z));
}

/** What holds a part to its neighbours; undefined for what is welded, folded, hung or bought with its own. */
function heldBy(part: Part): Held | undefined {
  const { kind, name, size, key } = part;
  switch (kind) {
    case "panel":
      return { fastener: "panel screw with sealing washer", count: spaced(around(size), fastenerPitch.panel) };
    case "roof":
      if (!key.endsWith("roof/sheet")) return undefined;
      // Along the edges, and across at every seam of sheets 1.2 m wide.
      return {
        fastener: "roof screw with sealing washer",
        count: spaced(around(size) + size.y * Math.floor(size.x / 1200), fastenerPitch.roof),
      };
    case "door": {
      const hinges = Math.max(2, Math.ceil(size.z / hingePitch));
      return { fastener: "hinge and latch screw with nut", count: 2 * hinges * screwsOfHinge };
    }
    case "sheet":
      if (!name.startsWith("blank-off") && name !== "inlet wall") return undefined;
      return { fastener: "sheet screw", count: spaced(around(size), fastenerPitch.sheet) };
    case "collar":
      return { fastener: "sheet screw", count: spaced(around(size), fastenerPitch.sheet) };
    case "frame":
      if (name === "frame edge" || part.section === undefined) return undefined;
      return { fastener: "sheet screw", count: spaced(around(size), fastenerPitch.sheet) };
    case "spring":
      return { fastener: "foot bolt with nut", count: boltsOfSpring };
    case "motor":
      return { fastener: "foot bolt with nut", count: boltsOfMotor };
    case "assembly":
      return part.pulled && name.startsWith("coil")
        ? { fastener: "coil bolt with nut", count: boltsOfCoil }
        : undefined;
    default:
      return undefined;
  }
}

interface FastenerSet {
  readonly fastener: FastenerName;
  readonly section: string | undefined;
  readonly where: string;
  readonly isWet: boolean;
  count: number;
  low: { x: number; y: number; z: number };
  high: { x: number; y: number; z: number };
}

/** Fasteners alike of one section, or of one place of the whole unit, gathered. */
class FastenerSets {
  private readonly sets = new Map<string, FastenerSet>();
  private readonly isStainless: boolean;

  constructor(unit: Unit) {
    this.isStainless = unit.casing.outerMetal.startsWith("stainless");
  }

  add({ fastener, count }: Held, { section, place, size }: Part, isWet: boolean): void {
    const set = this.setOf(fastener, section, section ?? "unit", isWet);
    set.count += count;
    for (const axis of ["x", "y", "z"] as const) {
      set.low[axis] = Math.min(set.low[axis], place[axis]);
      set.high[axis] = Math.max(set.high[axis], place[axis] + size[axis]);
    }
  }

  addAt(held: Held, box: PartBox, isWet: boolean, where: string): void {
    const set = this.setOf(held.fastener, undefined, where, isWet);
    set.count += held.count;
    set.low = { x: box.x, y: box.y, z: box.z };
    set.high = { x: box.x + box.length, y: box.y + box.width, z: box.z + box.height };
  }

  parts(): readonly Part[] {
    return [...this.sets.values()].map((set) => placedPart(this.partOf(set), "fasteners", set.section, origin));
  }

  private setOf(fastener: FastenerName, section: string | undefined, where: string, isWet: boolean): FastenerSet {
    const key = `${where}|${fastener}|${isWet}`;
    let set = this.sets.get(key);
    if (set === undefined) {
      const [none, all] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
      const [low, high] = [
        { x: none, y: none, z: none },
        { x: all, y: all, z: all },
      ];
      set = { fastener, section, where, isWet, count: 0, low, high };
      this.sets.set(key, set);
    }
    return set;
  }

  private partOf({ fastener, where, isWet, count, low, high }: FastenerSet): SectionPart {
    const isStainless = isWet || this.isStainless;
    const material = isStainless ? "stainless steel 304" : "steel";
    const { size, diameter, length } = fasteners[fastener];
    return {
      key: `${where}, ${fastener}${isWet ? ", wet" : ""}`,
      name: fastener,
      kind: "fastener",
      material,
      box: { ...low, length: high.x - low.x, width: high.y - low.y, height: high.z - low.z },
      mass: count * fastenerMass(fastener, material),
      massSource: fastenerSource,
      wet: isWet,
      shares: true,
      count,
      pieces: [{ size: [length, diameter, diameter], count }],
      bought: `${isStainless ? "stainless" : "zinc-plated"} ${fastener}, ${size}`,
    };
  }
}
