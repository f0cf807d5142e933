import type { Arrangement } from "#arrangement/arrange";
import type { Part } from "#arrangement/part";
import { circle, line, words } from "#chart/items";
import { textSizes, textWidth } from "#chart/text-size";
import type { DisplayItem } from "#section/display";
import type { Unit } from "#unit/unit";
import type { DimensionStyle } from "./dimension.ts";
import { dimensionText } from "./dimension-chain.ts";
import { onPaper, type View } from "./projection.ts";

/** What is joined to the unit on site, along the airflow and from below: pipes, drains at their traps, the disconnect. */
export function connectionsOf({ sections, whole }: Arrangement): readonly Part[] {
  const fitted = whole.children.find(({ key }) => key === "fitted")?.children ?? [];
  const own = sections.flatMap(({ part, section }) => [
    ...part.children.filter(
      (each) =>
        (each.kind === "pipe" && /connection|drain/.test(each.key) && !isTapping(each)) ||
        each.key.endsWith("/disconnect"),
    ),
    ...fitted.filter((trap) => trap.kind === "trap" && trap.section === section.name),
  ]);
  return own.sort((one, other) => placeAlong(one) - placeAlong(other) || one.place.z - other.place.z);
}

/** A small pipe beside a connection, with its vent, drain valve or vacuum breaker: told with the connection. */
function isTapping({ kind, fittings }: Part): boolean {
  return kind === "pipe" && fittings.length > 0;
}

/** What is told of a connection's tapping: the one of the same coil's same header. */
function tappingWords({ sections }: Arrangement, connection: Part): string {
  const own = sections.find(({ section }) => section.name === connection.section)?.part.children ?? [];
  const coil = / \d+$/.exec(connection.key)?.[0] ?? "none";
  const tapping = own.find(
    (each) => isTapping(each) && each.key.endsWith(coil) && placeAlong(each) === placeAlong(connection),
  );
  return tapping === undefined ? "" : `; ${tapping.fittings.join(", ")}`;
}

/** mm along the airflow, whole: what stands over one another has one place. */
function placeAlong(part: Part): number {
  return Math.round(outerEnd(part).x);
}

/** pt. */
const radius = 9.5;
const between = 2.2 * radius;

/**
 * Numbered circles at the connections: one column over another connection's place, the columns in a row beyond the open
 * doors, moved apart no more than they need, each with a line to what it names.
 */
export function connectionBalloons(unit: Unit, arrangement: Arrangement, textScale: number): readonly DisplayItem[] {
  const numbered = connectionsOf(arrangement).map((part, index) => ({ part, number: index + 1 }));
  return ([-1, 1] as const).flatMap((outside) => {
    const own = numbered.filter(({ part }) => sideOf(unit, part) === outside);
    return balloonsBeside(own, arrangement, outside, textScale);
  });
}

/** On which side a connection stands out: -1 on the right one. */
function sideOf(unit: Unit, { place, size }: Part): -1 | 1 {
  return place.y + size.y / 2 < 500 * unit.frame.width ? -1 : 1;
}

function balloonsBeside(
  numbered: readonly Numbered[],
  arrangement: Arrangement,
  outside: -1 | 1,
  textScale: number,
): readonly DisplayItem[] {
  const view: View = { side: "plan", width: 0 };
  const columns = columnsOf(numbered);
  const ends = columns.map((column) => onPaper(view, outerEnd(column[0]!.part)));
  const row = rowBeyond(arrangement, ends, outside) + outside * (radius + 12) * textScale;
  const places = spread(
    ends.map(([x]) => x),
    between * textScale,
  );
  return columns.flatMap((column, index) => {
    const x = places[index]!;
    const { part: first, number } = column[0]!;
    const leader = [...ends[index]!, x, row - outside * radius * textScale];
    return [
      line(`connection ${number}/leader`, "quiet", leader, { reference: referenceOf(first) }),
      ...column.flatMap((each, place) => balloon(each, [x, row + outside * place * between * textScale], textScale)),
    ];
  });
}

/** A connection by its number in the table. */
interface Numbered {
  readonly part: Part;
  readonly number: number;
}

/** What stands over one another, from below. */
function columnsOf(numbered: readonly Numbered[]): readonly (readonly Numbered[])[] {
  const columns: Numbered[][] = [];
  for (const each of numbered) {
    const last = columns.at(-1);
    if (last !== undefined && placeAlong(last[0]!.part) === placeAlong(each.part)) last.push(each);
    else columns.push([each]);
  }
  return columns;
}

function balloon(
  { part, number }: Numbered,
  [x, y]: readonly [number, number],
  textScale: number,
): readonly DisplayItem[] {
  const reference = referenceOf(part);
  return [
    circle(`connection ${number}`, "outline", [x, y], radius * textScale, {
      fill: "paper",
      label: part.name,
      reference,
    }),
    words(`connection ${number}/number`, "strong", [x, y - 0.36 * textSizes.small * textScale], String(number), {
      size: "small",
      anchor: "middle",
      reference,
    }),
  ];
}

function referenceOf(part: Part): DisplayItem["reference"] {
  return part.section === undefined ? { part: part.key } : { section: part.section, part: part.key };
}

/** mm across: beyond what is joined, and beyond every door that stands open on that side. */
function rowBeyond({ swings }: Arrangement, ends: readonly (readonly [number, number])[], outside: -1 | 1): number {
  const open = swings
    .filter((swing) => swing.opens === "outward" && swing.open === outside)
    .map(({ hinge, radius: leaf }) => hinge.y + outside * leaf);
  const reaches = [...ends.map(([, y]) => y), ...open];
  return outside < 0 ? Math.min(0, ...reaches) : Math.max(0, ...reaches);
}

/** Places in rising order moved apart to `gap`, by least squares: neighbours that push one another stand about their mean. */
export function spread(wanted: readonly number[], gap: number): readonly number[] {
  const groups: { sum: number; count: number }[] = [];
  wanted.forEach((place, index) => {
    let group = { sum: place - index * gap, count: 1 };
    for (let last = groups.at(-1); last !== undefined && meanOf(last) > meanOf(group); last = groups.at(-1)) {
      group = { sum: group.sum + last.sum, count: group.count + last.count };
      groups.pop();
    }
    groups.push(group);
  });
  const places = groups.flatMap((group) => Array.from({ length: group.count }, () => meanOf(group)));
  return places.map((place, index) => place + index * gap);
}

function meanOf({ sum, count }: { readonly sum: number; readonly count: number }): number {
  return sum / count;
}

/** The end of a connection that the site's pipe is joined to. */
function outerEnd({ place, size }: Part): { x: number; y: number; z: number } {
  const isRight = place.y < 0;
  return { x: place.x + size.x / 2, y: isRight ? place.y : place.y + size.y, z: place.z + size.z / 2 };
}

/** The table of the connections: number, what, size, from the entry end, above the foot of the rail. */
export function connectionTable(
  unit: Unit,
  arrangement: Arrangement,
  { textScale, system }: DimensionStyle,
  left: number,
  top: number,
): readonly DisplayItem[] {
  const parts = connectionsOf(arrangement);
  if (parts.length === 0) return [];
  const foot = -1000 * (unit.casing.panelThickness + unit.casing.railHeight);
  const entry = -1000 * unit.casing.panelThickness;
  const rows = [
    ["", "connection", "outside", "from the entry", "above the rail's foot"],
    ...parts.map((part, index) => {
      const at = outerEnd(part);
      const size =
        part.kind === "box"
          ? ""
          : dimensionText(Math.min(part.size.x, part.kind === "trap" ? part.size.y : part.size.z) / 1000, system);
      const own = `${part.name}${tappingWords(arrangement, part)}`;
      const name = part.section === undefined ? own : `${part.section}: ${own}`;
      return [
        String(index + 1),
        name,
        size,
        dimensionText((at.x - entry) / 1000, system),
        dimensionText((at.z - foot) / 1000, system),
      ];
    }),
  ];
  return tableItems("connections", rows, ["end", "start", "end", "end", "end"], textScale, left, top);
}

/** A table of words: columns as wide as their widest word, a line under the head. */
export function tableItems(
  key: string,
  rows: readonly (readonly string[])[],
  anchors: readonly ("start" | "end")[],
  textScale: number,
  left: number,
  top: number,
): readonly DisplayItem[] {
  const step = 14 * textScale;
  const gap = 14 * textScale;
  const widths = anchors.map(
    (_, column) => Math.max(...rows.map((row) => textWidth(row[column] ?? "", "small"))) * textScale,
  );
  const starts = widths.map((_, column) => left + widths.slice(0, column).reduce((sum, width) => sum + width + gap, 0));
  const end = starts[starts.length - 1]! + widths[widths.length - 1]!;
  const items = rows.flatMap((row, index) =>
    row.map((text, column) => {
      const anchor = anchors[column]!;
      const x = anchor === "start" ? starts[column]! : starts[column]! + widths[column]!;
      return words(`${key}/${index}.${column}`, index === 0 ? "quiet" : "outline", [x, top - index * step], text, {
        size: "small",
        anchor,
      });
    }),
  );
  return [
    ...items.filter(({ text }) => text !== ""),
    line(`${key}/rule`, "quiet", [left, top - 0.35 * step, end, top - 0.35 * step]),
  ];
}
