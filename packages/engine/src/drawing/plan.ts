import { massOf } from "#arrangement/mass";
import type { Weighing } from "#arrangement/weigh";
import { type AirwayAxis, airwayAxis } from "#chart/airway-axis";
import { line, rectangle, words } from "#chart/items";
import { textWidth } from "#chart/text-size";
import type { UnitSystem } from "#quantity/kind";
import { printQuantity } from "#quantity/print";
import type { DisplayItem, DisplayList } from "#section/display";
import type { Unit } from "#unit/unit";
import { connectionBalloons, connectionTable, tableItems } from "./connections.ts";
import { cutWalls } from "./cut-walls.ts";
import { type DimensionStyle, levelDimension, uprightDimension } from "./dimension.ts";
import { dimensionChain, dimensionText } from "./dimension-chain.ts";
import { listBox } from "./list-box.ts";
import { planInsides } from "./plan-parts.ts";
import { type CentreMark, centreMarks, lugMark, splitMarks } from "./rigging-marks.ts";
import { spaceLines, swingLines } from "./service-lines.ts";

/** What a view is drawn on and for. */
export interface ViewOptions {
  /** pt; 900 when left out. */
  readonly width?: number;
  readonly system?: UnitSystem;
  readonly picked?: string;
}

/** pt behind the discharge for dimensions up the paper. */
const dimensionRoom = 86;

/** The axis along the airflow of side elevation and plan, so that one stands over the other. */
export function viewAxis(unit: Unit, width = 900): AirwayAxis {
  const axis = airwayAxis(unit, width - dimensionRoom, 0);
  return { ...axis, to: axis.from + width / axis.scale };
}

/**
 * The unit from above without roof and ceiling, to scale: walls, what stands in it, doors and their swing, room for coils and
 * for electrical work, joints of pieces, lugs, centre of gravity, lengths and widths, connections with their table.
 */
export function planView(unit: Unit, weighing: Weighing, options: ViewOptions = {}): DisplayList {
  const { system = "ip", picked } = options;
  const { arrangement } = weighing;
  const axis = viewAxis(unit, options.width);
  const style: DimensionStyle = { textScale: 1 / axis.scale, system };
  const { textScale } = style;
  const panel = 1000 * unit.casing.panelThickness;
  const width = 1000 * unit.frame.width;
  const balloons = connectionBalloons(unit, arrangement, textScale);
  const drawing = [
    ...airLine(unit, textScale),
    ...planInsides(arrangement),
    ...cutWalls(arrangement, { side: "plan", width }),
    ...roofEdge(weighing),
    ...spaceLines(arrangement, style),
    ...swingLines(arrangement.swings),
    ...sectionLimits(unit),
    ...splitMarks(arrangement.splits, -panel - 10 * textScale, width + panel + 10 * textScale, textScale),
    ...arrangement.lugs.flatMap(({ x, y }, index) =>
      lugMark(`lug ${index + 1}`, [x, y < 0 ? y - 50 : y + 50], 9 * textScale),
    ),
    ...centres(weighing, style),
    ...balloons,
    ...sideWords(unit, balloons, style),
  ];
  const own = listBox(drawing, textScale);
  const overall = overallDimensions(unit, weighing, style, own);
  const chain = dimensionChain(unit, own.low - 4 * textScale, textScale, system, picked);
  const left = axis.from + 20 * textScale;
  const table = connectionTable(unit, arrangement, style, left, own.low - (chain.depth + 22) * textScale);
  const foot = listBox([...chain.items, ...table], textScale).low - 20 * textScale;
  const items = [...drawing, ...overall, ...chain.items, ...table, ...pieceTable(weighing, style, left, foot)];
  const { low, high } = listBox(items, textScale);
  const edge = 6 * textScale;
  return {
    title: "Plan",
    unit: "mm",
    up: true,
    box: { x: axis.from, y: low - edge, width: axis.to - axis.from, height: high - low + 2 * edge },
    items,
  };
}

/** The middle of the airway, with arrowheads along the airflow. */
function airLine(unit: Unit, textScale: number): readonly DisplayItem[] {
  const y = 500 * unit.frame.width;
  const end = 1000 * unit.length;
  const head = 6 * textScale;
  const heads = [0.04, 0.97].map((share, index) => {
    const x = share * end;
    return line(`airflow-head-${index}`, "air", [x - head, y + 0.5 * head, x, y, x - head, y - 0.5 * head]);
  });
  return [line("airflow", "hairline", [0, y, end, y], { dash: "long", label: "airflow" }), ...heads];
}

/** The roof over everything, as a line of long dashes. */
function roofEdge({ arrangement }: Weighing): readonly DisplayItem[] {
  const roof = arrangement.whole.children.find(({ key }) => key === "roof");
  if (roof === undefined) return [];
  const { place, size } = roof;
  const corners = [place.x, place.y, place.x + size.x, place.y + size.y] as const;
  return [
    rectangle("roof-edge", "quiet", corners, {
      dash: "long",
      label: "edge of the weather roof above",
      reference: { part: "roof" },
    }),
  ];
}

function sectionLimits(unit: Unit): readonly DisplayItem[] {
  const width = 1000 * unit.frame.width;
  return unit.sections.slice(1).map((section) => {
    const x = 1000 * section.start;
    return line(`limit-${section.name}`, "hairline", [x, 0, x, width], { dash: "short" });
  });
}

/** Centres of gravity: of the whole as it runs, and of every piece as it ships. */
function centres({ arrangement, pieces }: Weighing, { textScale, system }: DimensionStyle): readonly DisplayItem[] {
  const whole = massOf(arrangement.whole, "operating");
  const mass = (value: number) => printQuantity(value, "mass", system);
  const each = pieces.length < 2 ? [] : pieces;
  const marks: readonly CentreMark[] = [
    { key: "centre of gravity", at: [whole.centre.x, whole.centre.y], text: `running ${mass(whole.mass)}` },
    ...each.map(({ name, dry, shippingMass }) => ({
      key: `centre of ${name}`,
      at: [dry.centre.x, dry.centre.y] as const,
      text: `${name} ${mass(shippingMass)}`,
      size: 5,
    })),
  ];
  return centreMarks(marks, textScale);
}

/** Length with hood and without over the drawing, widths at its left end. */
function overallDimensions(
  unit: Unit,
  { arrangement }: Weighing,
  style: DimensionStyle,
  own: { readonly high: number },
): readonly DisplayItem[] {
  const { textScale } = style;
  const panel = 1000 * unit.casing.panelThickness;
  const width = 1000 * unit.frame.width;
  const end = 1000 * unit.length + panel;
  const outside = 1000 * Math.max(0, ...unit.sections.map(({ layout }) => layout.outside));
  const first = own.high + 14 * textScale;
  const row = 18 * textScale;
  const pieces = arrangement.splits.length < 2 ? [] : arrangement.splits;
  const top = first + (pieces.length > 0 ? row : 0);
  const right = end + dimensionRoom * textScale;
  return [
    ...pieces.flatMap(({ name, from, to }) => levelDimension({ key: `length of ${name}`, from, to, at: first }, style)),
    ...levelDimension({ key: "cabinet length", from: -panel, to: end, at: top, thing: width + panel }, style),
    ...(outside > 0
      ? levelDimension({ key: "length with hood", from: -panel - outside, to: end, at: top + row }, style)
      : []),
    ...uprightDimension({ key: "clear width", from: 0, to: width, at: right, thing: end }, style),
    ...uprightDimension({ key: "cabinet width", from: -panel, to: width + panel, at: right + row, thing: end }, style),
    ...(arrangement.size.y > width + 2 * panel + 1
      ? uprightDimension(
          {
            key: "width with roof",
            from: width / 2 - arrangement.size.y / 2,
            to: width / 2 + arrangement.size.y / 2,
            at: right + 2 * row,
            thing: end,
          },
          style,
        )
      : []),
  ];
}

/** Which side is which, for who stands on the roof with the paper in hand; beyond the balloons that stand there. */
function sideWords(
  unit: Unit,
  balloons: readonly DisplayItem[],
  { textScale }: DimensionStyle,
): readonly DisplayItem[] {
  const { hand, width } = unit.frame;
  const outside = Math.max(0, ...unit.sections.map(({ layout }) => layout.outside));
  const x = -1000 * (unit.casing.panelThickness + outside);
  const wall = 1000 * unit.casing.panelThickness + 10 * textScale;
  return (["left", "right"] as const).map((side) => {
    const text = `${side}${side === hand ? ", service side" : ""}`;
    const end = x + (textWidth(text, "small") + 20) * textScale;
    const near = side === hand ? balloons.filter((item) => item.shape === "circle" && item.x < end) : [];
    const { low, high } = listBox(near, textScale);
    const y =
      side === "left"
        ? Math.max(1000 * width + wall, high + 8 * textScale)
        : Math.min(-wall - 8 * textScale, low - 16 * textScale);
    return words(`side ${side}`, "quiet", [x, y], text, { size: "small" });
  });
}

/** The pieces: size outside, mass as shipped, and the most that hangs on a lug. */
function pieceTable(
  { pieces }: Weighing,
  { textScale, system }: DimensionStyle,
  left: number,
  top: number,
): readonly DisplayItem[] {
  const length = (value: number) => dimensionText(value / 1000, system);
  const mass = (value: number) => printQuantity(value, "mass", system);
  const rows = [
    ["piece", "long", "wide", "high", "ships at", "lugs", "most on one"],
    ...pieces.map(({ name, size, shippingMass, lugs }) => [
      name,
      length(size.x),
      length(size.y),
      length(size.z),
      mass(shippingMass),
      String(lugs.length),
      lugs.length === 0 ? "" : mass(Math.max(...lugs.map((lug) => lug.mass))),
    ]),
  ];
  const table = tableItems("pieces", rows, ["start", "end", "end", "end", "end", "end", "end"], textScale, left, top);
  const low = top - (rows.length + 0.4) * 14 * textScale;
  const caution = "lifting: figures for a rigging plan; qualified riggers and local codes decide";
  return [...table, words("lifting caution", "fail", [left, low], caution, { size: "small" })];
}
