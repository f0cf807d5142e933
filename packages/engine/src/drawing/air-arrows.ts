import { line, words } from "#chart/items";
import { textSizes, textWidth } from "#chart/text-size";
import type { DisplayItem, Ink } from "#section/display";
import type { Unit } from "#unit/unit";
import type { CabinetBox } from "./casing-lines.ts";
import type { WallOpening } from "./wall-opening.ts";

/** An arrow from one point to another with an open head. */
function arrow(
  key: string,
  ink: Ink,
  [x, y]: readonly [number, number],
  [toX, toY]: readonly [number, number],
  head: number,
): readonly DisplayItem[] {
  const length = Math.hypot(toX - x, toY - y);
  const [ux, uy] = [(toX - x) / length, (toY - y) / length];
  const barb = (side: number) => [toX - head * (ux - 0.55 * side * uy), toY - head * (uy + 0.55 * side * ux)] as const;
  return [line(`${key}-shaft`, ink, [x, y, toX, toY]), line(`${key}-head`, ink, [...barb(1), toX, toY, ...barb(-1)])];
}

const airWords = { outside: "outside air", return: "return air", supply: "supply air" } as const;
const airInks = { outside: "water", return: "steam", supply: "water" } as const;

/** Arrows and words for the air that comes and goes. `textScale` is mm per pt; `top` mm of the roof. */
export function airArrows(
  unit: Unit,
  box: CabinetBox,
  openings: readonly WallOpening[],
  pictures: readonly DisplayItem[],
  textScale: number,
  top: number,
): readonly DisplayItem[] {
  return openings.flatMap((opening) => {
    const outside = outsideOf(unit, opening);
    if (opening.air === "outside" && outside > 0) {
      return opening.hood === "facing out"
        ? frontArrow(box, opening, outside, textScale)
        : hoodArrows(box, opening, outside, textScale);
    }
    return openingArrow(wallBefore(box, opening, pictures, top), opening, textScale);
  });
}

/** mm that the hood before the intake stands out. */
function outsideOf(unit: Unit, opening: WallOpening): number {
  return opening.air === "outside" ? Math.max(0, ...unit.sections.map((each) => 1000 * each.layout.outside)) : 0;
}

/** Up through the open underside of a hood; the words stand inside it, where there is room. */
function hoodArrows(box: CabinetBox, opening: WallOpening, outside: number, textScale: number): readonly DisplayItem[] {
  const head = 7 * textScale;
  const [foot, tip] = [opening.from - 20 * textScale, opening.from + 16 * textScale];
  const middle = box.left - outside / 2;
  const count = outside > 60 * textScale ? 3 : 2;
  const arrows = Array.from({ length: count }, (_, index) => {
    const x = middle + ((index - (count - 1) / 2) * outside) / (count + 1);
    return arrow(`air-outside-${index}`, airInks.outside, [x, foot], [x, tip], head);
  });
  return [...arrows.flat(), hoodWords(middle, tip + 6 * textScale, outside, textScale)];
}

/** Straight into the open front of a hood. */
function frontArrow(box: CabinetBox, opening: WallOpening, outside: number, textScale: number): readonly DisplayItem[] {
  const y = opening.from + 0.4 * (opening.to - opening.from);
  const [tail, tip] = [box.left - outside - 18 * textScale, box.left - outside + 18 * textScale];
  const at = [box.left - outside + 14 * textScale, opening.from + 6 * textScale] as const;
  return [
    ...arrow("air-outside", airInks.outside, [tail, y], [tip, y], 7 * textScale),
    words("air-outside-name", airInks.outside, at, airWords.outside, { size: "small", turn: 90 }),
  ];
}

/** Level when they fit into the hood, upright when they do not. */
function hoodWords(middle: number, foot: number, outside: number, textScale: number): DisplayItem {
  const fits = textWidth(airWords.outside, "small") * textScale < outside - 10 * textScale;
  const key = "air-outside-name";
  if (fits) return words(key, airInks.outside, [middle, foot], airWords.outside, { size: "small", anchor: "middle" });
  const at = [middle + 4 * textScale, foot] as const;
  return words(key, airInks.outside, at, airWords.outside, { size: "small", anchor: "start", turn: 90 });
}

/** mm where the arrow of an opening may begin: the wall or roof, or what the section's picture shows outside of it. */
function wallBefore(
  box: CabinetBox,
  { section, face }: WallOpening,
  pictures: readonly DisplayItem[],
  top: number,
): number {
  const own = pictures.filter((item) => item.reference.section === section);
  const reach = (axis: 0 | 1, sign: 1 | -1) => Math.max(...own.map((item) => furthest(item, axis, sign)), -1e9);
  if (face === "top") return Math.max(top, reach(1, 1));
  if (face === "bottom") return Math.min(box.floor, -reach(1, -1));
  return face === "entry" ? Math.min(box.left, -reach(0, -1)) : Math.max(box.right, reach(0, 1));
}

/** How far an item reaches along an axis, to the plus (1) or the minus (−1) side. */
function furthest(item: DisplayItem, axis: 0 | 1, sign: 1 | -1): number {
  if (item.shape === "line") {
    return Math.max(...item.points.filter((_, index) => index % 2 === axis).map((value) => sign * value));
  }
  const radius = item.shape === "circle" ? item.radius : 0;
  return sign * (axis === 0 ? item.x : item.y) + radius;
}

/** Straight through an opening, outside of `wall` (mm). */
function openingArrow(wall: number, opening: WallOpening, textScale: number): readonly DisplayItem[] {
  const { air, face } = opening;
  const ink = airInks[air];
  const isAlong = face === "top" || face === "bottom";
  const away = face === "top" || face === "exit" ? 1 : -1;
  const middle = (opening.from + opening.to) / 2;
  const near = wall + away * 6 * textScale;
  const far = near + away * (isAlong ? 30 : 40) * textScale;
  const at = (distance: number) => (isAlong ? ([middle, distance] as const) : ([distance, middle] as const));
  const [from, to] = air === "supply" ? [at(near), at(far)] : [at(far), at(near)];
  const line = textSizes.small * textScale;
  const key = `air-${air}-${opening.key}`;
  const name = isAlong
    ? words(`${key}-name`, ink, [middle, far + (face === "top" ? 0.5 : -1.2) * line], airWords[air], {
        size: "small",
        anchor: "middle",
      })
    : words(`${key}-name`, ink, [Math.min(near, far), middle + 0.7 * line], airWords[air], { size: "small" });
  return [...arrow(key, ink, from, to, 8 * textScale), name];
}
