import type { Arrangement } from "#arrangement/arrange";
import { type AirwayAxis, airwayAxis } from "#chart/airway-axis";
import { line } from "#chart/items";
import { textSizes } from "#chart/text-size";
import type { UnitSystem } from "#quantity/kind";
import type { DisplayItem, DisplayList } from "#section/display";
import type { Unit, UnitSection } from "#unit/unit";
import { airArrows } from "./air-arrows.ts";
import { type CabinetBox, cabinetBox, railLines, roofLines, roofTop, supportHeight } from "./casing-lines.ts";
import { cutWalls } from "./cut-walls.ts";
import { dimensionChain } from "./dimension-chain.ts";
import { doorLines, trapLines } from "./near-side.ts";
import { wallOpenings } from "./wall-opening.ts";

/** What the elevation is drawn on and for. */
export interface ElevationOptions {
  /** The axis that the profiles hang on as well; without it the drawing is laid out for 900 pt. */
  readonly axis?: AirwayAxis;
  readonly system?: UnitSystem;
  /** Name of the section that is picked. */
  readonly picked?: string;
}

/**
 * The whole unit from the side, to scale, in millimetres: rail, supports, walls, roof, doors and traps projected from its
 * parts, the cabinet cut open, every section as what it is, lengths and names.
 */
export function elevation(unit: Unit, arrangement: Arrangement, options: ElevationOptions = {}): DisplayList {
  const { system = "ip", picked } = options;
  const axis = options.axis ?? airwayAxis(unit, 900, 0);
  const textScale = 1 / axis.scale;
  const box = cabinetBox(unit);
  const openings = wallOpenings(unit);
  const ground = box.railFoot - supportHeight;
  const roof = roofTop(arrangement, box);
  const pictures = unit.sections.flatMap((section) => sectionPicture(unit, section));
  const arrows = airArrows(unit, box, openings, pictures, textScale, roof);
  const traps = trapLines(arrangement);
  const chainTop = Math.min(ground, lowest([...arrows, ...traps]) - 4 * textScale);
  const chain = dimensionChain(unit, chainTop, textScale, system, picked);
  const items = [
    ...railLines(unit, arrangement, box),
    ...cutWalls(arrangement, { side: "side", width: 1000 * unit.frame.width }),
    ...roofLines(unit, arrangement),
    ...doorLines(arrangement, pictures),
    ...pictures,
    ...traps,
    ...sectionLimits(unit),
    ...arrows,
    groundLine(box, ground),
    ...chain.items,
  ];
  const top = Math.max(roof + 8 * textScale, highest([...pictures, ...arrows], textScale));
  const foot = chainTop - chain.depth * textScale;
  return {
    title: "Side elevation",
    unit: "mm",
    up: true,
    box: { x: axis.from, y: foot, width: axis.to - axis.from, height: top - foot },
    items,
  };
}

/** mm: the lowest point of lines and feet of letters. */
function lowest(items: readonly DisplayItem[]): number {
  const heights = items.flatMap((item) =>
    item.shape === "line" ? item.points.filter((_, index) => index % 2 === 1) : [item.y],
  );
  return Math.min(...heights);
}

/** mm: the highest point of lines and of the heads of letters. */
function highest(items: readonly DisplayItem[], textScale: number): number {
  const heights = items.flatMap((item) => {
    if (item.shape === "line") return item.points.filter((_, index) => index % 2 === 1);
    return [item.shape === "circle" ? item.y + item.radius : item.y + textSizes[item.size] * textScale];
  });
  return Math.max(...heights);
}

/** What the supports stand on. */
function groundLine(box: CabinetBox, y: number): DisplayItem {
  return line("ground", "quiet", [box.left - 250, y, box.right + 250, y], { reference: { part: "ground" } });
}

/** The section's own picture at its place in the cabinet; a hood stands before the outer skin. */
function sectionPicture(unit: Unit, section: UnitSection): readonly DisplayItem[] {
  const { outside } = section.layout;
  const shift = 1000 * (section.start - (outside > 0 ? outside + unit.casing.panelThickness : 0));
  return section.behaviour.picture(section.design, unit.frame, section.name).map((item) => moved(item, shift));
}

function moved(item: DisplayItem, shift: number): DisplayItem {
  if (shift === 0) return item;
  if (item.shape !== "line") return { ...item, x: item.x + shift };
  return { ...item, points: item.points.map((value, index) => (index % 2 === 0 ? value + shift : value)) };
}

/** Thin lines where one section ends and the next begins. */
function sectionLimits(unit: Unit): readonly DisplayItem[] {
  const height = 1000 * unit.frame.height;
  return unit.sections.slice(1).map((section) => {
    const x = 1000 * section.start;
    return line(`limit-${section.name}`, "hairline", [x, 0, x, height], { dash: "short" });
  });
}
