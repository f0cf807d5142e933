import { blank, type SectionPart, type SheetCut, solidPart, type WallPart, weighedPart } from "#section/part";
import { roundForm } from "#section/part-form";
import { partMasses } from "#standard/part-mass";
import type { Unit, UnitSection } from "#unit/unit";
import { type PanelBuild, panelFilling, panelMass, panelSheets } from "./panel-build.ts";
import { type Part, type Point, partGroup, placedPart } from "./part.ts";

/** A section's parts in the unit, and the openings that they ask of the walls. */
export interface PlacedSection {
  readonly section: UnitSection;
  readonly part: Part;
  readonly openings: readonly PlacedOpening[];
}

/** A door, hatch or opening in its wall, unit millimetres. */
export interface PlacedOpening {
  readonly wall: WallPart;
  /** m² of the wall that gives way to it. */
  readonly area: number;
  /** mm along the airflow. */
  readonly from: number;
  readonly to: number;
}

/** Asks a section for its parts and puts them into place. */
export function placeSection(unit: Unit, section: UnitSection, build: PanelBuild): PlacedSection {
  const { behaviour, design, layout, start, name } = section;
  const { inside, walls } = behaviour.parts?.(design, unit.frame) ?? { inside: [], walls: [] };
  const panel = 1000 * unit.casing.panelThickness;
  const entry = 1000 * start;
  const shift: Point = { x: layout.outside > 0 ? entry - 1000 * layout.outside - panel : entry, y: 0, z: 0 };
  // Openings of the wall behind a hood are told from the cabinet's entry plane.
  const wallShift: Point = { x: entry, y: 0, z: 0 };
  const parts = [
    ...inside.map((part) => placedPart(part, name, name, shift)),
    ...walls.flatMap((wall) => {
      const own = wall.window === true ? [wallPart(wall, build), windowPart(wall, build)] : [wallPart(wall, build)];
      return own.map((part) => placedPart(part, name, name, wallShift));
    }),
  ];
  const openings = walls.filter(isHole).map((wall): PlacedOpening => {
    const { length, width, height } = wall.box;
    const sides = [length, width, height].filter((side) => side > 0);
    const area = sides.length < 2 ? 0 : sides.reduce((product, side) => product * side, 1) / 1e6;
    return { wall, area, from: wall.box.x + entry, to: wall.box.x + length + entry };
  });
  return { section, part: partGroup(name, name, name, parts), openings };
}

/** A fixture is screwed on, and a pipe goes through: neither takes panel away that would count. */
function isHole({ kind }: WallPart): boolean {
  return kind !== "pipe" && kind !== "fixture";
}

/** m: sheet of an opening's frame or a collar, unrolled; both sides of the wall. */
const collarUnrolled = 0.18;

/** A door, hatch or collar with the wall's thickness and build. */
function wallPart(wall: WallPart, build: PanelBuild): SectionPart {
  const box = throughWall(wall, 1000 * build.thickness);
  const [long = 0, wide = 0] = [wall.box.length, wall.box.width, wall.box.height]
    .sort((a, b) => b - a)
    .map((side) => side / 1000);
  const edge = 2 * (long + wide) * collarUnrolled * build.inner.mass;
  const strip: SheetCut = {
    metal: build.inner.metal,
    gauge: build.inner.gauge,
    blanks: [blank(long, collarUnrolled, 2), blank(wide, collarUnrolled, 2)],
  };
  if (wall.kind === "pipe") return pipePart(wall, 1000 * build.thickness);
  if (wall.kind === "fixture") return fixturePart(wall, 1000 * build.thickness);
  if (wall.kind === "collar") return { ...leafOf(wall, "collar", box, edge, build), sheets: [strip] };
  const window = wall.window === true ? windowSize.width * windowSize.height : 0;
  const hardware = wall.kind === "door" ? partMasses.doorHardware : partMasses.hatchHardware;
  const mass = panelMass(build, long, wide, window) + edge + hardware;
  return {
    ...leafOf(wall, "door", box, mass, build),
    sheets: [...panelSheets(build, long, wide), strip],
    filling: panelFilling(build, long, wide),
    fittings: [`hinges, latches and gasket of a ${wall.kind}`],
  };
}

/** mm that a pipe stands out of the wall, capped for shipping; the site's pipe is joined to it. */
const stubOutside = 40;
/** m: wall of a pipe stub. */
const stubWall = 0.004;

/** A pipe from what it joins through the wall, sealed in a sleeve. */
function pipePart({ key, name, face, box, reach = 0, fittings }: WallPart, thickness: number): SectionPart {
  const inward = 1000 * reach;
  const width = inward + thickness + stubOutside;
  const y = face === "right" ? box.y - thickness - stubOutside : box.y - inward;
  const diameter = box.length / 1000;
  const volume = Math.PI * (diameter - stubWall) * stubWall * (width / 1000);
  const pipe = solidPart(key, name, "pipe", "steel", { ...box, y, width }, Math.max(0, volume), {
    form: roundForm("y"),
    shares: true,
  });
  return fittings === undefined ? pipe : { ...pipe, fittings };
}

/** mm that a fixture stands out of the wall. */
const fixtureDepth = 110;

/** A box on the outside of the wall: a disconnect. */
function fixturePart({ key, name, face, box, bought }: WallPart, thickness: number): SectionPart {
  const y = face === "right" ? box.y - thickness - fixtureDepth : box.y + thickness;
  const extras = bought === undefined ? {} : { bought };
  const place = { ...box, y, width: fixtureDepth };
  return weighedPart(key, name, "box", "mixed", place, partMasses.disconnect, partMasses.source, extras);
}

/** m: a view port: its share of the door is as common in the trade. */
const windowSize = { width: 0.2, height: 0.25 };

/** The window of a door, in the upper half of its leaf. */
function windowPart(wall: WallPart, build: PanelBuild): SectionPart {
  const box = throughWall(wall, 1000 * build.thickness);
  const [width, height] = [1000 * windowSize.width, 1000 * windowSize.height];
  const place = {
    ...box,
    x: box.x + (box.length - width) / 2,
    z: box.z + 0.72 * box.height - height / 2,
    length: width,
    height,
  };
  const mass = windowSize.width * windowSize.height * partMasses.window;
  return weighedPart(`${wall.key} window`, "window", "window", "glass", place, mass, partMasses.source, {
    shares: true,
    bought: "window of a door",
  });
}

function leafOf(wall: WallPart, kind: "door" | "collar", box: SectionPart["box"], mass: number, build: PanelBuild) {
  return {
    key: wall.key,
    name: wall.name,
    kind,
    material: build.inner.metal,
    box,
    mass,
    massSource: "manufacturers-standard-gauge skins, core and frame by area; hardware from-memory",
  } satisfies SectionPart;
}

/** Gives a flat opening the thickness of the wall, outwards from the clear cabinet. */
function throughWall({ face, box }: WallPart, thickness: number): SectionPart["box"] {
  switch (face) {
    case "entry":
      return { ...box, x: box.x - thickness, length: thickness };
    case "exit":
      return { ...box, length: thickness };
    case "right":
      return { ...box, y: -thickness, width: thickness };
    case "left":
      return { ...box, width: thickness };
    case "top":
      return { ...box, height: thickness };
    case "bottom":
      return { ...box, z: -thickness, height: thickness };
  }
}
