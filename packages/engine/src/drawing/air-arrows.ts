import { line, words } from "#chart/items";
import { textSizes, textWidth } from "#chart/text-size";
import type { DisplayItem, Ink } from "#section/display";
import type { Unit } from "#unit/unit";
import { type CabinetBox, roofTop } from "./casing-lines.ts";
import type { WallOpening } from "./wall-opening.ts";

/** An arrow from one point to another with an open head. */
export function arrow(
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

/** Arrows and words for the air that comes and goes. `textScale` is mm per pt. */
export function airArrows(
  unit: Unit,
  box: CabinetBox,
  openings: readonly WallOpening[],
  textScale: number,
  isRoofed: boolean,
): readonly DisplayItem[] {
  return openings.flatMap((opening) => {
    const outside = outsideOf(unit, opening);
    if (opening.air === "outside" && outside > 0) return hoodArrows(box, opening, outside, textScale);
    return openingArrow(box, opening, textScale, isRoofed);
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

/** Level when they fit into the hood, upright when they do not. */
function hoodWords(middle: number, foot: number, outside: number, textScale: number): DisplayItem {
  const fits = textWidth(airWords.outside, "small") * textScale < outside - 10 * textScale;
  const key = "air-outside-name";
  if (fits) return words(key, airInks.outside, [middle, foot], airWords.outside, { size: "small", anchor: "middle" });
  const at = [middle + 4 * textScale, foot] as const;
  return words(key, airInks.outside, at, airWords.outside, { size: "small", anchor: "start", turn: 90 });
}

/** Straight through an opening of a wall. */
function openingArrow(
  box: CabinetBox,
  opening: WallOpening,
  textScale: number,
  isRoofed: boolean,
): readonly DisplayItem[] {
  const { air, face } = opening;
  const ink = airInks[air];
  const head = 9 * textScale;
  const middle = (opening.from + opening.to) / 2;
  const key = `air-${air}-${opening.key}`;
  const long = 30 * textScale;
  const line = 1.3 * textSizes.small * textScale;
  if (face === "top" || face === "bottom") {
    const wall = face === "top" ? (isRoofed ? roofTop(box) : box.ceiling) : box.floor;
    const away = face === "top" ? 1 : -1;
    const near = [middle, wall + away * 6 * textScale] as const;
    const far = [middle, wall + away * (6 * textScale + long)] as const;
    const [from, to] = air === "supply" ? [near, far] : [far, near];
    const y = face === "top" ? far[1] + 0.5 * line : far[1] - line;
    return [
      ...arrow(key, ink, from, to, head),
      words(`${key}-name`, ink, [middle, y], airWords[air], { size: "small", anchor: "middle" }),
    ];
  }
  const wall = face === "entry" ? box.left : box.right;
  const away = face === "entry" ? -1 : 1;
  const near = [wall + away * 8 * textScale, middle] as const;
  const far = [wall + away * (8 * textScale + 1.5 * long), middle] as const;
  const [from, to] = air === "supply" ? [near, far] : [far, near];
  const at = [Math.min(near[0], far[0]), middle + 0.6 * line] as const;
  return [...arrow(key, ink, from, to, head), words(`${key}-name`, ink, at, airWords[air], { size: "small" })];
}
