import { textSizes } from "@oncethrough/engine/chart/text-size";
import type { DisplayItem, DisplayList, LineItem, TextItem } from "@oncethrough/engine/section/display";
import { memo, useMemo } from "react";
import "./ink.css";

/** How the plane of a list lies on the page: px per unit, and where the list's origin falls. */
export interface Placing {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** The placing that puts the list's box with its upper left corner at a point of the page. */
export function placedAt(list: DisplayList, scale: number, left: number, top: number): Placing {
  const { x, y, height } = list.box;
  return { scale, x: left - x * scale, y: list.up ? top + (y + height) * scale : top - y * scale };
}

/**
 * Paints a display list as SVG: ink roles become classes, whose looks the style sheet gives. Coordinates are put on the
 * page here, so that hairlines and letters keep their size at every scale.
 */
export const PaintedList = memo(function PaintedList({ list, placing }: { list: DisplayList; placing: Placing }) {
  const up = list.up ? -1 : 1;
  const runs = useMemo(() => runsOf(list.items), [list]);
  return (
    <g className="painted">
      {runs.map(({ key, items }) => (
        <PaintedRun key={key} items={items} scale={placing.scale} x={placing.x} y={placing.y} up={up} />
      ))}
    </g>
  );
});

/** Items that follow one another and belong to one section: most edits leave all of them as they are. */
interface Run {
  readonly key: string;
  readonly items: readonly DisplayItem[];
}

function runsOf(items: readonly DisplayItem[]): readonly Run[] {
  const runs: { key: string; section: string | undefined; items: DisplayItem[] }[] = [];
  const counts = new Map<string, number>();
  for (const item of items) {
    const { section } = item.reference;
    const last = runs.at(-1);
    if (last !== undefined && last.section === section) {
      last.items.push(item);
      continue;
    }
    const name = section ?? "";
    const count = counts.get(name) ?? 0;
    counts.set(name, count + 1);
    runs.push({ key: `${name} ${count}`, section, items: [item] });
  }
  return runs;
}

interface RunProps extends Omit<ItemProps, "item"> {
  readonly items: readonly DisplayItem[];
}

const PaintedRun = memo(function PaintedRun({ items, scale, x, y, up }: RunProps) {
  return items.map((item) => <PaintedItem key={item.key} item={item} scale={scale} x={x} y={y} up={up} />);
}, isSameRun);

function isSameRun(one: RunProps, other: RunProps): boolean {
  if (one.scale !== other.scale || one.x !== other.x || one.y !== other.y || one.up !== other.up) return false;
  return one.items.length === other.items.length && one.items.every((item, index) => item === other.items[index]);
}

interface ItemProps {
  readonly item: DisplayItem;
  readonly scale: number;
  readonly x: number;
  readonly y: number;
  readonly up: 1 | -1;
}

const PaintedItem = memo(function PaintedItem({ item, scale, x, y, up }: ItemProps) {
  const title = item.label === undefined ? undefined : <title>{item.label}</title>;
  switch (item.shape) {
    case "line":
      return (
        <path
          className={`ink-${item.ink}${item.fill === undefined ? "" : ` fill-${item.fill}`}${item.dash === undefined ? "" : ` dash-${item.dash}`}`}
          d={pathData(item, scale, x, y, up)}
          style={item.tone === undefined ? undefined : { fillOpacity: rounded(item.tone), stroke: "none" }}
          data-section={item.reference.section}
        >
          {title}
        </path>
      );
    case "circle":
      return (
        <circle
          className={`ink-${item.ink}${item.fill === undefined ? "" : ` fill-${item.fill}`}`}
          cx={rounded(x + item.x * scale)}
          cy={rounded(y + up * item.y * scale)}
          r={rounded(item.radius * scale)}
          data-section={item.reference.section}
        >
          {title}
        </circle>
      );
    case "text":
      return <PaintedText item={item} x={rounded(x + item.x * scale)} y={rounded(y + up * item.y * scale)} />;
  }
});

function PaintedText({ item, x, y }: { item: TextItem; x: number; y: number }) {
  const turn = item.turn === undefined ? undefined : `rotate(${rounded(-item.turn)} ${x} ${y})`;
  return (
    <text
      className={`text-${item.ink}`}
      x={x}
      y={y}
      fontSize={textSizes[item.size]}
      textAnchor={item.anchor}
      transform={turn}
      data-section={item.reference.section}
    >
      {item.text}
    </text>
  );
}

function pathData({ points, breaks, closed }: LineItem, scale: number, x: number, y: number, up: 1 | -1): string {
  const begins = new Set(breaks);
  const end = closed === true ? "Z" : "";
  let data = "";
  for (let index = 0; index + 1 < points.length; index += 2) {
    const px = rounded(x + points[index]! * scale);
    const py = rounded(y + up * points[index + 1]! * scale);
    const isBegin = begins.has(index / 2);
    data += `${isBegin ? end : ""}${index === 0 || isBegin ? "M" : "L"}${px} ${py}`;
  }
  return `${data}${end}`;
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
