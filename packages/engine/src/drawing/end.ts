import { massOf } from "#arrangement/mass";
import type { Part } from "#arrangement/part";
import type { Weighing } from "#arrangement/weigh";
import { line, rectangle, words } from "#chart/items";
import type { DisplayItem, DisplayList } from "#section/display";
import type { Unit } from "#unit/unit";
import { cabinetBox, supportHeight } from "./casing-lines.ts";
import { type DimensionStyle, levelDimension, uprightDimension } from "./dimension.ts";
import { listBox } from "./list-box.ts";
import type { ViewOptions } from "./plan.ts";
import { farthestFirst, paperBox, silhouettes, type View } from "./projection.ts";
import { centreMarks } from "./rigging-marks.ts";

/** Both ends of the unit side by side: before the entry, as the air sees it, and behind the exit, looking back. */
export function endViews(unit: Unit, weighing: Weighing, options: ViewOptions = {}): DisplayList {
  const { system = "ip", width = 900 } = options;
  // A first guess of the scale, then the one at which both ends and what is beside them fill the width.
  const guess = endsAt(unit, weighing, { textScale: 8, system });
  const textScale = Math.max(guess.width / width, 3.2);
  const drawn = endsAt(unit, weighing, { textScale, system });
  const edge = 6 * textScale;
  const { low, high, left } = listBox(drawn.items, textScale);
  const spare = Math.max(0, width * textScale - drawn.width) / 2;
  return {
    title: "End views",
    unit: "mm",
    up: true,
    box: {
      x: left - spare - edge,
      y: low - edge,
      width: Math.max(drawn.width, width * textScale),
      height: high - low + 2 * edge,
    },
    items: drawn.items,
  };
}

function endsAt(unit: Unit, weighing: Weighing, style: DimensionStyle) {
  const entry = endView(unit, weighing, "entry", style);
  const exit = endView(unit, weighing, "exit", style);
  const [one, other] = [listBox(entry, style.textScale), listBox(exit, style.textScale)];
  const shift = one.right - other.left + 34 * style.textScale;
  const items = [...entry, ...exit.map((item) => shifted(item, shift))];
  return { items, width: other.right + shift - one.left + 12 * style.textScale };
}

function shifted(item: DisplayItem, shift: number): DisplayItem {
  const { key } = item;
  if (item.shape !== "line") return { ...item, key, x: item.x + shift };
  return { ...item, key, points: item.points.map((value, index) => (index % 2 === 0 ? value + shift : value)) };
}

/** One end: what is seen of it, room beside it, centre of gravity, widths and heights. Keys begin with the end's name. */
function endView(
  unit: Unit,
  weighing: Weighing,
  side: "entry" | "exit",
  style: DimensionStyle,
): readonly DisplayItem[] {
  const view: View = { side, width: 1000 * unit.frame.width };
  const items = [
    ...endParts(weighing, view),
    ...besideUnit(weighing, view),
    ...endSupports(unit, view, style.textScale),
    ...endMarks(weighing, view, style),
    ...endDimensions(unit, weighing, view, style),
  ];
  return items.map((item) => ({ ...item, key: `${side}: ${item.key}` }));
}

/** Kinds that close an end or stand before it. */
const endGroups = new Set(["base", "frame", "casing", "roof"]);

/** Base, frame, roof, the end's wall with its openings, and what is seen through them or stands before them. */
function endParts({ arrangement }: Weighing, view: View): readonly DisplayItem[] {
  const { whole, sections } = arrangement;
  const isEntry = view.side === "entry";
  const placed = isEntry ? sections : sections.toReversed();
  const end = placed.find(({ section }) => section.layout.length > 0);
  const hoods = sections.filter(({ section }) => isEntry && section.layout.outside > 0).map(({ part }) => part);
  const reach = end === undefined ? 0 : isEntry ? end.part.place.x + 600 : end.part.place.x + end.part.size.x - 600;
  const isSeen = (part: Part) =>
    isEntry ? part.place.x < reach && part.kind !== "pan" : part.place.x + part.size.x > reach && part.kind !== "light";
  const shell = whole.children.filter(({ key }) => endGroups.has(key)).flatMap(({ children }) => children);
  const outer = farthestFirst(view, shell).filter((part) => isEndShell(part, view, whole));
  const inside = farthestFirst(view, end === undefined ? [] : [end.part]).filter(
    (part) =>
      isSeen(part) && part.kind !== "door" && part.kind !== "window" && part.kind !== "pipe" && part.kind !== "sheet",
  );
  const openings = (end?.part.children ?? []).filter(
    ({ kind, size }) => kind === "collar" && size.x < size.y && size.x < size.z,
  );
  const opened = isEntry ? hoods.flatMap(({ children }) => children.filter(({ kind }) => kind === "collar")) : openings;
  return [
    ...outer.flatMap((part) => silhouettes(view, part, { fill: "paper" })),
    ...opened.map((part) =>
      rectangle(part.key, "outline", paperBox(view, part), {
        fill: "paper",
        label: part.name,
        reference: { part: part.key },
      }),
    ),
    ...(isEntry
      ? inside.flatMap((part) => silhouettes(view, part, part.kind === "blades" ? { ink: "fine" } : {}))
      : []),
    ...farthestFirst(view, hoods)
      .filter(({ kind }) => kind !== "collar" && kind !== "pipe")
      .flatMap((part) => silhouettes(view, part, part.kind === "screen" ? { ink: "hairline" } : {})),
    ...(isEntry ? [] : crosses(opened, view)),
  ];
}

/** Of base, frame, casing and roof, what is seen from the end. */
function isEndShell(part: Part, view: View, whole: Part): boolean {
  if (part.kind === "roof") return part.key === "roof/sheet";
  const casing = whole.children.find(({ key }) => key === "casing");
  const isAtEnd =
    view.side === "entry"
      ? part.place.x <= (casing?.place.x ?? 0) + 1
      : part.place.x + part.size.x >= (casing === undefined ? 0 : casing.place.x + casing.size.x) - 1;
  return isAtEnd && !part.shares;
}

/** Open ends of ducts: a stroke from corner to corner. */
function crosses(openings: readonly Part[], view: View): readonly DisplayItem[] {
  return openings.map((part) => {
    const [left, low, right, high] = paperBox(view, part);
    return line(`${part.key}/open`, "hairline", [left, low, right, high], { reference: { part: part.key } });
  });
}

/** What stands out of the sides, and the room that is kept clear there: the deepest of each use. */
function besideUnit({ arrangement }: Weighing, view: View): readonly DisplayItem[] {
  const { whole, sections, spaces } = arrangement;
  const fitted = whole.children.filter(({ key }) => key === "fitted").flatMap(({ children }) => children);
  const outside = [
    ...sections.flatMap(({ part }) =>
      part.children.filter(({ kind, key }) => kind === "pipe" || key.endsWith("/disconnect")),
    ),
    ...fitted.filter(({ kind }) => kind === "trap"),
    ...(whole.children.find(({ key }) => key === "lugs")?.children ?? []),
  ];
  const uses = ["coil pull", "electrical working space"] as const;
  const rooms = uses.flatMap((use) => {
    const same = spaces.filter((space) => space.use === use);
    const deepest = same.toSorted((one, other) => other.size.y - one.size.y)[0];
    if (deepest === undefined) return [];
    const ink = use === "coil pull" ? "quiet" : "heat";
    const [left, low, right, high] = paperBox(view, deepest);
    // Coils come out farther than a person needs: their words stand in that farther part.
    const far = left < 0 ? left + 0.3 * (right - left) : right - 0.3 * (right - left);
    const said = use === "coil pull" ? use : "electrical";
    return [
      rectangle(`room ${use}`, ink, [left, low, right, high], {
        dash: "long",
        label: deepest.name,
        reference: { part: deepest.part },
      }),
      words(
        `room ${use}/words`,
        ink,
        [use === "coil pull" ? far : (left + right) / 2, low + 0.6 * (high - low)],
        said,
        {
          size: "small",
          anchor: "middle",
        },
      ),
    ];
  });
  return [
    ...rooms,
    ...outside
      .filter(({ place, size }) => place.y < 0 || place.y + size.y > view.width)
      .flatMap((part) =>
        silhouettes(
          view,
          outerPiece(part, view.width),
          part.kind === "lug" ? { ink: "outline", fill: "paper" } : { fill: "paper" },
        ),
      ),
  ];
}

/** Of a pipe through the wall, what is seen outside of it. */
function outerPiece(part: Part, width: number): Part {
  if (part.kind !== "pipe") return part;
  const isRight = part.place.y < 0;
  const from = isRight ? part.place.y : width;
  const to = isRight ? 0 : part.place.y + part.size.y;
  const shown = Math.min(90, to - from);
  return { ...part, place: { ...part.place, y: isRight ? from : to - shown }, size: { ...part.size, y: shown } };
}

function endSupports(unit: Unit, view: View, textScale: number): readonly DisplayItem[] {
  const { left, railFoot, panel } = { ...cabinetBox(unit), left: 0 };
  const ground = railFoot - supportHeight;
  const feet = [left - panel + 60, view.width + panel - 60].map((x, index) =>
    line(`support ${index}`, "outline", [x - 60, railFoot, x + 60, railFoot, x + 60, ground, x - 60, ground], {
      closed: true,
      fill: "paper",
    }),
  );
  return [
    ...feet,
    line("ground", "quiet", [-panel - 30 * textScale, ground, view.width + panel + 30 * textScale, ground]),
  ];
}

function endMarks({ arrangement }: Weighing, view: View, { textScale }: DimensionStyle): readonly DisplayItem[] {
  const { centre } = massOf(arrangement.whole, "operating");
  const across = view.side === "entry" ? view.width - centre.y : centre.y;
  const title = view.side === "entry" ? "entry end, along the airflow" : "exit end, against the airflow";
  const roof = arrangement.whole.place.z + arrangement.whole.size.z;
  return [
    ...centreMarks([{ key: "centre of gravity", at: [across, centre.z] }], textScale),
    words("title", "strong", [view.width / 2, roof + 34 * textScale], title, { size: "normal", anchor: "middle" }),
  ];
}

function endDimensions(
  unit: Unit,
  { arrangement }: Weighing,
  view: View,
  style: DimensionStyle,
): readonly DisplayItem[] {
  const { textScale } = style;
  const { panel, floor, ceiling, railFoot } = cabinetBox(unit);
  const { whole } = arrangement;
  const roof = whole.children.find(({ key }) => key === "roof");
  const top = roof === undefined ? ceiling : roof.place.z + roof.size.z;
  const row = 18 * textScale;
  // Heights stand on the side that is not served.
  const isServedLeft = (unit.frame.hand === "left") !== (view.side === "exit");
  const sign = isServedLeft ? 1 : -1;
  const edge = isServedLeft ? view.width + panel : -panel;
  const at = (place: number) => edge + sign * (1.6 + place) * row;
  const low = railFoot - supportHeight - row;
  return [
    ...uprightDimension({ key: "rail", from: railFoot, to: floor, at: at(0), thing: edge }, style),
    ...uprightDimension({ key: "cabinet", from: floor, to: ceiling, at: at(0), thing: edge }, style),
    ...uprightDimension({ key: "whole", from: railFoot, to: top, at: at(1), thing: edge }, style),
    ...levelDimension({ key: "clear", from: 0, to: view.width, at: low, thing: railFoot }, style),
    ...levelDimension({ key: "width", from: -panel, to: view.width + panel, at: low - row, thing: railFoot }, style),
  ];
}
