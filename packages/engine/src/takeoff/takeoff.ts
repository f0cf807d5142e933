import type { Arrangement } from "#arrangement/arrange";
import { type Part, visitLeaves } from "#arrangement/part";
import { sheetMass } from "#component/sheet-metal";
import type { Blank } from "#section/part";
import type { SheetMetal } from "#standard/material";
import type { SheetGaugeName } from "#standard/sheet-gauge";
import { type BoughtSet, boughtSets } from "./bought-set.ts";
import { type Nesting, nestBlanks } from "./nesting.ts";
import { ownerOf } from "./owner.ts";
import type { StockBook } from "./shop-book.ts";

/** A line of the parts list: parts of one owner that are alike. */
export interface PartLine {
  readonly owner: string;
  readonly name: string;
  readonly material: string;
  readonly count: number;
  /** mm, of one piece where all are alike, else of the box around them. */
  readonly size: readonly [number, number, number];
  /** kg, of all of them, dry. */
  readonly mass: number;
  readonly bought: string | undefined;
}

/** A line of the cut list: blanks alike, of one metal and gauge. */
export interface CutLine extends Blank {
  readonly metal: SheetMetal;
  readonly gauge: SheetGaugeName;
  /** Names of what is made of it. */
  readonly parts: readonly string[];
}

/** Sheets that the cut list takes of one metal and gauge. */
export interface SheetNeed extends Nesting {
  readonly metal: SheetMetal;
  readonly gauge: SheetGaugeName;
  /** mm of the sheet in stock; undefined when the stock book has none, and then no sheets are counted. */
  readonly sheet: { readonly length: number; readonly width: number } | undefined;
  /** kg of the blanks. */
  readonly mass: number;
}

/** A bought thing, alike in item and size, of one owner. */
export type BoughtLine = BoughtSet;

/** What it takes to build the unit. */
export interface Takeoff {
  readonly parts: readonly PartLine[];
  readonly cuts: readonly CutLine[];
  readonly sheets: readonly SheetNeed[];
  readonly bought: readonly BoughtLine[];
}

/** Counts parts, blanks, sheets and bought things of an arrangement. */
export function takeOff(arrangement: Arrangement, stock: StockBook): Takeoff {
  return {
    parts: partsList(arrangement.whole),
    cuts: cutList(arrangement.whole),
    sheets: sheetsOf(arrangement, stock),
    bought: boughtList(arrangement.whole),
  };
}

/** Sheets alone: what a price needs of the takeoff. */
export function sheetsOf(arrangement: Arrangement, stock: StockBook): readonly SheetNeed[] {
  return blanksBySheet(arrangement.whole).map((blanks) => sheetNeed(blanks, stock));
}

function partsList(whole: Part): readonly PartLine[] {
  const lines = new Map<string, PartLine>();
  visitLeaves(whole, (leaf) => {
    const [only, ...others] = leaf.pieces ?? [];
    const sides = only === undefined || others.length > 0 ? [leaf.size.x, leaf.size.y, leaf.size.z] : only.size;
    const size = sides.map((side) => Math.round(side)) as [number, number, number];
    const owner = ownerOf(leaf);
    const material = leaf.material ?? "";
    const key = [owner, leaf.name, material, ...size, leaf.bought ?? ""].join("|");
    const before = lines.get(key);
    const count = leaf.count + (before?.count ?? 0);
    const mass = leaf.mass + (before?.mass ?? 0);
    lines.set(key, { owner, name: leaf.name, material, count, size, mass, bought: leaf.bought });
  });
  return [...lines.values()];
}

function cutList(whole: Part): readonly CutLine[] {
  const lines = new Map<string, { line: Omit<CutLine, "parts" | "count">; count: number; parts: Set<string> }>();
  visitLeaves(whole, (leaf) => {
    for (const { metal, gauge, blanks } of leaf.sheets) {
      for (const { length, width, count } of blanks) {
        // Blanks within half a millimetre are cut alike.
        const [long, wide] = [Math.round(length), Math.round(width)].sort((a, b) => b - a) as [number, number];
        const key = `${metal} ${gauge} ${long} ${wide}`;
        const entry = lines.get(key) ?? {
          line: { metal, gauge, length: long, width: wide },
          count: 0,
          parts: new Set(),
        };
        entry.count += count;
        entry.parts.add(leaf.name);
        lines.set(key, entry);
      }
    }
  });
  return [...lines.values()]
    .map(({ line, count, parts }) => ({ ...line, count, parts: [...parts] }))
    .sort(
      (a, b) =>
        (a.metal < b.metal ? -1 : a.metal > b.metal ? 1 : 0) ||
        Number(a.gauge) - Number(b.gauge) ||
        b.length - a.length,
    );
}

/** Blanks of one metal and gauge. */
type SheetBlanks = Pick<CutLine, "metal" | "gauge"> & { readonly blanks: Blank[] };

/** Every blank of every part, by metal and gauge; sides in whole millimetres, as they are cut. */
function blanksBySheet(whole: Part): readonly SheetBlanks[] {
  const found: SheetBlanks[] = [];
  visitLeaves(whole, ({ sheets }) => {
    for (const { metal, gauge, blanks } of sheets) {
      let group = found.find((each) => each.metal === metal && each.gauge === gauge);
      if (group === undefined) {
        group = { metal, gauge, blanks: [] };
        found.push(group);
      }
      for (const { length, width, count } of blanks) {
        group.blanks.push({ length: Math.round(length), width: Math.round(width), count });
      }
    }
  });
  return found;
}

function sheetNeed({ metal, gauge, blanks }: SheetBlanks, stock: StockBook): SheetNeed {
  const kept = stock.sheets.findLast((each) => each.metal === metal && each.gauge === gauge);
  const area = blanks.reduce((sum, each) => sum + each.count * each.length * each.width, 0);
  const mass = (area / 1e6) * sheetMass(metal, gauge);
  const sheet = kept === undefined ? undefined : { length: 1000 * kept.length, width: 1000 * kept.width };
  const nesting =
    sheet === undefined
      ? { least: 0, shelves: 0, joined: [], area }
      : nestBlanks(blanks, sheet.length, sheet.width, 1000 * stock.kerf);
  return { metal, gauge, sheet, mass, ...nesting };
}

function boughtList(whole: Part): readonly BoughtLine[] {
  const lines = new Map<string, BoughtLine>();
  for (const set of boughtSets(whole)) {
    const key = [set.owner, set.item, ...(set.size ?? [])].join("|");
    const before = lines.get(key);
    lines.set(key, {
      ...set,
      count: set.count + (before?.count ?? 0),
      mass: set.mass + (before?.mass ?? 0),
    });
  }
  return [...lines.values()];
}
