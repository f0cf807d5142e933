import type { Arrangement } from "#arrangement/arrange";
import type { Part } from "#arrangement/part";
import { circle, line, words } from "#chart/items";
import { textSizes, textWidth } from "#chart/text-size";
import type { DisplayItem } from "#section/display";
import type { Unit } from "#unit/unit";
import type { DimensionStyle } from "./dimension.ts";
import { dimensionText } from "./dimension-chain.ts";
import { onPaper, type View } from "./projection.ts";

/** What is joined to the unit on site: pipes through the service side, drains at their traps, the disconnect. */
export function connectionsOf({ sections, whole }: Arrangement): readonly Part[] {
  const fitted = whole.children.find(({ key }) => key === "fitted")?.children ?? [];
  const own = sections.flatMap(({ part, section }) => [
    ...part.children.filter(
      ({ kind, key }) => (kind === "pipe" && /connection/.test(key)) || key.endsWith("/disconnect"),
    ),
    ...fitted.filter((trap) => trap.kind === "trap" && trap.section === section.name),
  ]);
  return own;
}

/** Numbered circles at the connections, moved along where they would stand on one another, with a line to what they name. */
export function connectionBalloons(arrangement: Arrangement, textScale: number): readonly DisplayItem[] {
  const view: View = { side: "plan", width: 0 };
  const radius = 8 * textScale;
  const parts = connectionsOf(arrangement).map((part, index) => ({ part, number: index + 1 }));
  const sorted = parts
    .map(({ part, number }) => ({ part, number, at: onPaper(view, outerEnd(part)) }))
    .sort((one, other) => one.at[0] - other.at[0]);
  const isLow = sorted.every(({ part }) => part.place.y < 0);
  const outside = isLow ? -1 : 1;
  let last = Number.NEGATIVE_INFINITY;
  const row =
    rowOf(
      sorted.map(({ at }) => at[1]),
      outside,
    ) +
    outside * 20 * textScale;
  return sorted.flatMap(({ part, number, at }) => {
    const x = Math.max(at[0], last + 2.2 * radius);
    last = x;
    const reference = part.section === undefined ? { part: part.key } : { section: part.section, part: part.key };
    const label = part.name;
    return [
      line(`connection ${number}/leader`, "quiet", [...at, x, row - outside * radius], { reference }),
      circle(`connection ${number}`, "outline", [x, row], radius, { fill: "paper", label, reference }),
      words(`connection ${number}/number`, "strong", [x, row - 0.36 * textSizes.small * textScale], String(number), {
        size: "small",
        anchor: "middle",
        reference,
      }),
    ];
  });
}

function rowOf(heights: readonly number[], outside: number): number {
  return outside < 0 ? Math.min(...heights, 0) : Math.max(...heights, 0);
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
      const name = part.section === undefined ? part.name : `${part.section}: ${part.name}`;
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
