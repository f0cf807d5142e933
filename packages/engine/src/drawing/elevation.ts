import type { Arrangement } from "#arrangement/arrange";
import { type AirwayAxis, airwayAxis } from "#chart/airway-axis";
import { line } from "#chart/items";
import { textSizes } from "#chart/text-size";
import type { UnitSystem } from "#quantity/kind";
import type { DisplayItem, DisplayList } from "#section/display";
import type { Casing } from "#unit/casing";
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
  /** Kept between drawings by whoever draws again and again: what each section looks like in its place. */
  readonly pictures?: SectionPictures;
}

/** Pictures of sections; they hold as long as the casing is the same. */
export interface SectionPictures {
  casing: Casing | undefined;
  of: WeakMap<UnitSection, readonly DisplayItem[]>;
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
  const pictures = unit.sections.flatMap((section) => keptPicture(unit, section, options.pictures));
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
  let least = Number.POSITIVE_INFINITY;
  for (const item of items) {
    if (item.shape !== "line") least = Math.min(least, item.y);
    else for (let index = 1; index < item.points.length; index += 2) least = Math.min(least, item.points[index]!);
  }
  return least;
}

/** mm: the highest point of lines and of the heads of letters. */
function highest(items: readonly DisplayItem[], textScale: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const item of items) {
    if (item.shape === "line")
      for (let index = 1; index < item.points.length; index += 2) most = Math.max(most, item.points[index]!);
    else most = Math.max(most, item.y + (item.shape === "circle" ? item.radius : textSizes[item.size] * textScale));
  }
  return most;
}

/** What the supports stand on. */
function groundLine(box: CabinetBox, y: number): DisplayItem {
  return line("ground", "quiet", [box.left - 250, y, box.right + 250, y], { reference: { part: "ground" } });
}

/** The section's picture out of those kept, drawn when it is not there. */
function keptPicture(unit: Unit, section: UnitSection, kept: SectionPictures | undefined): readonly DisplayItem[] {
  if (kept === undefined) return sectionPicture(unit, section);
  if (kept.casing !== unit.casing) {
    kept.casing = unit.casing;
    kept.of = new WeakMap();
  }
  const picture = kept.of.get(section) ?? sectionPicture(unit, section);
  kept.of.set(section, picture);
  return picture;
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
