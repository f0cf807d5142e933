import { line, rectangle } from "#chart/items";
import type { DisplayItem } from "#section/display";
import type { Unit } from "#unit/unit";
import type { WallOpening } from "./wall-opening.ts";

/** mm, the cabinet's outer corners and what stands under and over it; floor of the clear frame at zero. */
export interface CabinetBox {
  readonly left: number;
  readonly right: number;
  readonly floor: number;
  readonly ceiling: number;
  readonly panel: number;
  /** Underside of the base rail. */
  readonly railFoot: number;
}

/** The cabinet of a unit in millimetres. */
export function cabinetBox(unit: Unit): CabinetBox {
  const panel = 1000 * unit.casing.panelThickness;
  return {
    left: -panel,
    right: 1000 * unit.length + panel,
    floor: -panel,
    ceiling: 1000 * unit.frame.height + panel,
    panel,
    railFoot: -panel - 1000 * unit.casing.railHeight,
  };
}

const part = (name: string) => ({ reference: { part: name } });

/** The double wall: outer and inner skin, cut where there are openings. */
export function wallLines(box: CabinetBox, openings: readonly WallOpening[]): readonly DisplayItem[] {
  const { left, right, floor, ceiling, panel } = box;
  const cut = (face: WallOpening["face"]) => openings.filter((opening) => opening.face === face);
  const walls = [
    ...pieces(left, right, cut("top")).map(([from, to]) => [from, ceiling - panel, to, ceiling] as const),
    ...pieces(left, right, cut("bottom")).map(([from, to]) => [from, floor, to, floor + panel] as const),
    ...pieces(floor, ceiling, cut("entry")).map(([from, to]) => [left, from, left + panel, to] as const),
    ...pieces(floor, ceiling, cut("exit")).map(([from, to]) => [right - panel, from, right, to] as const),
  ];
  return walls.map((corners, index) =>
    rectangle(`wall-${index}`, "outline", corners, { fill: "paper", ...part("casing") }),
  );
}

/** What is left of a wall from `low` to `high` beside its openings. */
function pieces(low: number, high: number, openings: readonly WallOpening[]): readonly (readonly [number, number])[] {
  const sorted = openings.toSorted((one, other) => one.from - other.from);
  const left: (readonly [number, number])[] = [];
  let from = low;
  for (const opening of sorted) {
    if (opening.from > from) left.push([from, opening.from]);
    from = Math.max(from, opening.to);
  }
  if (from < high) left.push([from, high]);
  return left;
}

/** mm: the supports under the rail, and the most between them. */
export const supportHeight = 95;
const supportSpacing = 2400;

/** Base rail as a channel on its supports. */
export function railLines(box: CabinetBox): readonly DisplayItem[] {
  const { left, right, floor, railFoot } = box;
  const items: DisplayItem[] = [];
  if (railFoot < floor) {
    const flange = Math.min(14, (floor - railFoot) / 5);
    items.push(
      rectangle("rail", "outline", [left, railFoot, right, floor], { fill: "paper", ...part("base rail") }),
      line("rail-flange-high", "fine", [left, floor - flange, right, floor - flange], part("base rail")),
      line("rail-flange-low", "fine", [left, railFoot + flange, right, railFoot + flange], part("base rail")),
    );
  }
  const bays = Math.max(1, Math.ceil((right - left - 600) / supportSpacing));
  for (let index = 0; index <= bays; index += 1) {
    const x = left + 300 + ((right - left - 600) * index) / bays;
    const points = [x - 70, railFoot, x + 70, railFoot, x, railFoot - supportHeight];
    items.push(line(`support-${index}`, "outline", points, { closed: true, fill: "paper", ...part("support") }));
  }
  return items;
}

/** mm that the roof reaches past the walls, and its rise. */
const overhang = 110;
const roofRise = 55;
const roofGap = 35;

/** A sloped weather roof with standing seams and drip edges, for units outdoors. */
export function roofLines(box: CabinetBox): readonly DisplayItem[] {
  const left = box.left - overhang;
  const right = box.right + overhang;
  const low = box.ceiling + roofGap;
  const high = low + roofRise;
  const at = (x: number) => low + ((x - left) / (right - left)) * roofRise;
  const sheet = 14;
  const items: DisplayItem[] = [
    line("roof-gap-left", "fine", [box.left, box.ceiling, box.left, at(box.left)], part("roof")),
    line("roof-gap-right", "fine", [box.right, box.ceiling, box.right, at(box.right)], part("roof")),
    line(
      "roof-sheet",
      "outline",
      [
        left,
        low - 40,
        left,
        low + sheet,
        right,
        high + sheet,
        right,
        high - 40,
        right - 10,
        high - 40,
        right - 10,
        high,
        left + 10,
        low,
        left + 10,
        low - 40,
      ],
      { closed: true, fill: "paper", label: "weather roof", ...part("roof") },
    ),
  ];
  const seams = Math.max(2, Math.round((right - left) / 1200));
  for (let index = 1; index < seams; index += 1) {
    const x = left + ((right - left) * index) / seams;
    items.push(line(`roof-seam-${index}`, "outline", [x, at(x) + sheet, x, at(x) + sheet + 38], part("roof")));
  }
  return items;
}

/** mm: the highest point of the roof. */
export function roofTop(box: CabinetBox): number {
  return box.ceiling + roofGap + roofRise + 52;
}
