import type { Arrangement } from "#arrangement/arrange";
import type { Part } from "#arrangement/part";
import { supportPlaces } from "#arrangement/support-places";
import { line, rectangle } from "#chart/items";
import type { DisplayItem } from "#section/display";
import type { Unit } from "#unit/unit";
import { paperBox, type View } from "./projection.ts";
import { outlineOf } from "./solids.ts";

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

/** mm: height of a support as it is drawn under the rail. */
export const supportHeight = 95;

/** The base rail on the near side as a channel, on its supports, with the lugs that hang on it. */
export function railLines(unit: Unit, arrangement: Arrangement, box: CabinetBox): readonly DisplayItem[] {
  const rail = partOf(arrangement.whole, "base/rail right");
  const items: DisplayItem[] = [];
  if (rail !== undefined) {
    const [left, low, right, high] = paperBox(sideView, rail);
    const flange = Math.min(14, (high - low) / 5);
    const of = { reference: { part: rail.key } };
    items.push(
      rectangle("rail", "outline", [left, low, right, high], { fill: "paper", label: "base rail", ...of }),
      line("rail-flange-high", "fine", [left, high - flange, right, high - flange], of),
      line("rail-flange-low", "fine", [left, low + flange, right, low + flange], of),
    );
  }
  supportPlaces(unit).forEach((place, index, all) => {
    // The outermost stand under the end rails, not beyond them.
    const x = index === 0 ? place + 90 : index === all.length - 1 ? place - 90 : place;
    const points = [x - 70, box.railFoot, x + 70, box.railFoot, x, box.railFoot - supportHeight];
    items.push(line(`support-${index}`, "outline", points, { closed: true, fill: "paper", ...part("support") }));
  });
  return items;
}

const sideView: View = { side: "side", width: 0 };

/** A weather roof from the side: the near edge of its sheet with the drip edge, the far edge where it is higher, its seams. */
export function roofLines(unit: Unit, arrangement: Arrangement): readonly DisplayItem[] {
  const sheet = partOf(arrangement.whole, "roof/sheet");
  if (sheet === undefined || sheet.form?.shape !== "prisms") return [];
  const outline = outlineOf(sheet, "x", sheet.form.outlines()[0] ?? []);
  const edges = edgesOf(outline);
  const { place, size } = sheet;
  const [left, right] = [place.x, place.x + size.x];
  const wall = 1000 * unit.casing.panelThickness;
  const of = { reference: { part: sheet.key } };
  const items: DisplayItem[] = [];
  if (edges.far.high > edges.near.high + 1) {
    items.push(
      line(
        "roof-ridge",
        "fine",
        [left, edges.near.high, left, edges.far.high, right, edges.far.high, right, edges.near.high],
        of,
      ),
    );
  }
  for (const [name, x] of [
    ["left", -wall],
    ["right", 1000 * unit.length + wall],
  ] as const) {
    items.push(line(`roof-gap-${name}`, "fine", [x, place.z, x, edges.near.high - 10], of));
  }
  const near = rectangle("roof-sheet", "outline", [left, edges.near.low, right, edges.near.high], {
    fill: "paper",
    label: "weather roof",
    ...of,
  });
  items.push(near, line("roof-fold", "fine", [left, edges.near.high - 12, right, edges.near.high - 12], of));
  const seams = Math.ceil(size.x / seamPitch);
  for (let index = 1; index < seams; index += 1) {
    const x = left + (size.x * index) / seams;
    items.push(line(`roof-seam-${index}`, "outline", [x, edges.near.high, x, edges.near.high + seamHeight], of));
  }
  return items;
}

/** mm between the standing seams of a roof, as its sheets are cut, and their height. */
const seamPitch = 1200;
const seamHeight = 32;

/** Least and greatest height of the sheet's edge at its near and its far side; pairs across and up. */
function edgesOf(outline: readonly number[]) {
  const across = outline.filter((_, index) => index % 2 === 0);
  const [low, high] = [Math.min(...across), Math.max(...across)];
  const heights = (isHere: (y: number) => boolean) => {
    const found = outline.filter((_, index) => index % 2 === 1 && isHere(outline[index - 1]!));
    return { low: Math.min(...found), high: Math.max(...found) };
  };
  const middle = (low + high) / 2;
  return { near: heights((y) => y < middle), far: heights((y) => y > middle) };
}

/** mm: the highest point of the roof over the near edge, seams included; the ceiling where there is none. */
export function roofTop(arrangement: Arrangement, box: CabinetBox): number {
  const sheet = partOf(arrangement.whole, "roof/sheet");
  return sheet === undefined ? box.ceiling : sheet.place.z + sheet.size.z + seamHeight;
}

/** A part of the tree by its key, where it is there. */
export function partOf(whole: Part, key: string): Part | undefined {
  for (const child of whole.children) {
    if (child.key === key) return child;
    if (key.startsWith(`${child.key}/`)) return partOf(child, key);
  }
  return undefined;
}
