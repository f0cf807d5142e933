import { massOf } from "#arrangement/mass";
import type { Weighing } from "#arrangement/weigh";
import { printQuantity } from "#quantity/print";
import type { DisplayItem, DisplayList } from "#section/display";
import type { Unit } from "#unit/unit";
import { cabinetBox, roofTop, supportHeight } from "./casing-lines.ts";
import { type DimensionStyle, levelDimension, uprightDimension } from "./dimension.ts";
import { elevation } from "./elevation.ts";
import { listBox } from "./list-box.ts";
import { type ViewOptions, viewAxis } from "./plan.ts";
import { type CentreMark, centreMarks, lugMark, splitMarks } from "./rigging-marks.ts";

/** The side elevation as a shop needs it: with heights and whole lengths, joints, lugs, centres of gravity, connections. */
export function shopElevation(unit: Unit, weighing: Weighing, options: ViewOptions = {}): DisplayList {
  const { arrangement } = weighing;
  const axis = viewAxis(unit, options.width);
  const style: DimensionStyle = { textScale: 1 / axis.scale, system: options.system ?? "ip" };
  const { textScale } = style;
  const list = elevation(unit, arrangement, {
    axis,
    system: style.system,
    ...(options.picked === undefined ? {} : { picked: options.picked }),
  });
  const box = cabinetBox(unit);
  const top = roofTop(arrangement, box);
  const own = listBox(list.items, textScale);
  const marks: readonly DisplayItem[] = [
    ...splitMarks(arrangement.splits, box.railFoot - supportHeight, top + 6 * textScale, textScale),
    ...lugMarks(unit, weighing),
    ...centres(weighing, style),
    ...heights(unit, weighing, style),
    ...lengths(unit, weighing, style, own.low - 10 * textScale),
  ];
  const items = [...list.items, ...marks];
  const { low, high } = listBox(items, textScale);
  const edge = 6 * textScale;
  return { ...list, box: { ...list.box, y: low - edge, height: high - low + 2 * edge }, items };
}

function lugMarks(unit: Unit, { arrangement }: Weighing): readonly DisplayItem[] {
  const { railFoot, floor } = cabinetBox(unit);
  const size = Math.min(100, 0.6 * (floor - railFoot));
  const near = arrangement.lugs.filter(({ y }) => y < 0);
  return near.flatMap(({ x }, index) => lugMark(`lug ${index + 1}`, [x, (railFoot + floor) / 2], size));
}

function centres({ arrangement, pieces }: Weighing, { textScale, system }: DimensionStyle): readonly DisplayItem[] {
  const whole = massOf(arrangement.whole, "operating");
  const each = pieces.length < 2 ? [] : pieces;
  const said = `running ${printQuantity(whole.mass, "mass", system)}`;
  const marks: readonly CentreMark[] = [
    { key: "centre of gravity", at: [whole.centre.x, whole.centre.z], text: said },
    ...each.map(({ name, dry }) => ({
      key: `centre of ${name}`,
      at: [dry.centre.x, dry.centre.z] as const,
      text: name,
      size: 5,
    })),
  ];
  return centreMarks(marks, textScale);
}

/** Rail, cabinet and the whole, behind the exit. */
function heights(unit: Unit, { arrangement }: Weighing, style: DimensionStyle): readonly DisplayItem[] {
  const { right, floor, ceiling, railFoot } = cabinetBox(unit);
  const roof = arrangement.whole.children.find(({ key }) => key === "roof");
  const top = roof === undefined ? ceiling : roof.place.z + roof.size.z;
  const { textScale } = style;
  // Past the arrow of the supply air and its words.
  const at = right + 100 * textScale;
  const thing = right + 20 * textScale;
  return [
    ...uprightDimension({ key: "rail height", from: railFoot, to: floor, at, thing }, style),
    ...uprightDimension({ key: "cabinet height", from: floor, to: ceiling, at, thing }, style),
    ...uprightDimension({ key: "whole height", from: railFoot, to: top, at: at + 17 * textScale, thing }, style),
  ];
}

/** Pieces, cabinet and the whole with its hood, under the chain of sections. */
function lengths(unit: Unit, { arrangement }: Weighing, style: DimensionStyle, from: number): readonly DisplayItem[] {
  const { left, right } = cabinetBox(unit);
  const outside = 1000 * Math.max(0, ...unit.sections.map(({ layout }) => layout.outside));
  const row = 18 * style.textScale;
  const { splits } = arrangement;
  const pieces = splits.length < 2 ? [] : splits;
  const first = from - row;
  const second = pieces.length > 0 ? first - row : first;
  return [
    ...pieces.flatMap(({ name, from: start, to }) =>
      levelDimension({ key: `length of ${name}`, from: start, to, at: first }, style),
    ),
    ...levelDimension({ key: "cabinet length", from: left, to: right, at: second }, style),
    ...(outside > 0
      ? levelDimension({ key: "length with hood", from: left - outside, to: right, at: second - row }, style)
      : []),
  ];
}
