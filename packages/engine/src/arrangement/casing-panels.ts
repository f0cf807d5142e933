import type { SectionPart, WallFace } from "#section/part";
import type { Unit } from "#unit/unit";
import { type PanelBuild, panelBuild, panelFilling, panelMass, panelSheets } from "./panel-build.ts";
import { type Part, partGroup, placedPart } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";
import { standsWet, type WetZone } from "./wet-zone.ts";

const origin = { x: 0, y: 0, z: 0 };
const sideFaces = ["right", "left", "top", "bottom"] as const;

/** Walls, ceiling, floor and ends, panel by panel. */
export function casingPanels(unit: Unit, placed: readonly PlacedSection[], wetZones: readonly WetZone[]): Part {
  const wall = panelBuild(unit.casing, "wall");
  const floor = panelBuild(unit.casing, "floor");
  const panels: Part[] = [];
  for (const section of placed) {
    for (const face of sideFaces) {
      panels.push(...sidePanels(unit, section, face, face === "bottom" ? floor : wall, wetZones));
    }
  }
  panels.push(...bulkheads(unit, placed, wall));
  for (const face of ["entry", "exit"] as const) {
    const end = endPanel(unit, placed, face, wall);
    if (end !== undefined) panels.push(end);
  }
  return partGroup("casing", "casing", undefined, panels);
}

/** Panels of one face of one section: as many as the widest panel asks, all alike. */
function sidePanels(
  unit: Unit,
  placed: PlacedSection,
  face: (typeof sideFaces)[number],
  build: PanelBuild,
  wetZones: readonly WetZone[],
): Part[] {
  const { section } = placed;
  const length = section.layout.length;
  if (length <= 0) return [];
  const across = face === "right" || face === "left" ? unit.frame.height : unit.frame.width;
  const count = Math.ceil(length / unit.casing.panelWidth - 1e-9);
  const step = length / count;
  return Array.from({ length: count }, (_, index) => {
    const from = 1000 * (section.start + index * step);
    const open = placed.openings.reduce((sum, opening) => {
      if (opening.wall.face !== face) return sum;
      const shared = Math.min(opening.to, from + 1000 * step) - Math.max(opening.from, from);
      return sum + (shared > 0 ? (opening.area * shared) / (opening.to - opening.from) : 0);
    }, 0);
    const key = `${section.name}, ${face} ${index + 1}`;
    const box = panelBox(unit, face, from, 1000 * step);
    const zone = { place: { x: box.x, y: 0, z: 0 }, size: { x: box.length, y: 0, z: 0 } };
    const part: SectionPart = {
      ...panelPart(key, `${faceNames[face]} panel`, build, step, across, open),
      box,
      // What stands on a floor wets its inner skin.
      material: face === "bottom" ? build.inner.metal : build.outer.metal,
      wet: face === "bottom" && standsWet(zone, wetZones),
    };
    return placedPart(part, "casing", section.name, origin);
  });
}

const faceNames: Readonly<Record<WallFace, string>> = {
  entry: "entry",
  exit: "exit",
  right: "right wall",
  left: "left wall",
  top: "ceiling",
  bottom: "floor",
};

function panelPart(
  key: string,
  name: string,
  build: PanelBuild,
  long: number,
  wide: number,
  open: number,
): SectionPart {
  return {
    key,
    name,
    kind: "panel",
    material: build.outer.metal,
    box: { x: 0, y: 0, z: 0, length: 0, width: 0, height: 0 },
    mass: panelMass(build, long, wide, open),
    massSource: "manufacturers-standard-gauge skins with folded edges; core by density, from-memory",
    sheets: panelSheets(build, long, wide),
    filling: panelFilling(build, long, wide),
  };
}

/** The box of a panel from `from` mm along the airflow, outside the clear cabinet. */
function panelBox(unit: Unit, face: (typeof sideFaces)[number], from: number, length: number): SectionPart["box"] {
  const thickness = 1000 * unit.casing.panelThickness;
  const width = 1000 * unit.frame.width;
  const height = 1000 * unit.frame.height;
  switch (face) {
    case "right":
      return { x: from, y: -thickness, z: 0, length, width: thickness, height };
    case "left":
      return { x: from, y: width, z: 0, length, width: thickness, height };
    case "top":
      return { x: from, y: 0, z: height, length, width, height: thickness };
    case "bottom":
      return { x: from, y: 0, z: -thickness, length, width, height: thickness };
  }
}

/** Walls across the cabinet at the end of sections that blow through them into the next one: a housed fan before its plenum. */
function bulkheads(unit: Unit, placed: readonly PlacedSection[], build: PanelBuild): readonly Part[] {
  const { width, height } = unit.frame;
  return placed.slice(0, -1).flatMap(({ section, openings }) => {
    if (section.layout.wallBehind !== true) return [];
    const open = openings.reduce((sum, { wall, area }) => sum + (wall.face === "exit" ? area : 0), 0);
    const x = 1000 * (section.start + section.layout.length - build.thickness);
    return [
      placedPart(
        crossPanel(unit, `${section.name}, bulkhead`, "bulkhead", build, x, width * height, open),
        "casing",
        section.name,
        origin,
      ),
    ];
  });
}

function crossPanel(
  unit: Unit,
  key: string,
  name: string,
  build: PanelBuild,
  x: number,
  area: number,
  open: number,
): SectionPart {
  const { width, height } = unit.frame;
  const box = {
    x,
    y: 0,
    z: 0,
    length: 1000 * build.thickness,
    width: 1000 * width,
    height: 1000 * height,
  };
  return { ...panelPart(key, name, build, area / width, width, open), box };
}

/** The wall at an end, less what opens in it; an end where the air comes or goes and nothing is told of it is left open. */
function endPanel(
  unit: Unit,
  placed: readonly PlacedSection[],
  face: "entry" | "exit",
  build: PanelBuild,
): Part | undefined {
  const { width, height } = unit.frame;
  const air = face === "entry" ? "outside" : "supply";
  const place = face === "entry" ? 0 : placed.length - 1;
  const outlets = placed.flatMap((each, index) =>
    each.openings.filter(({ wall }) => wall.air === air && (wall.face !== face || index === place)),
  );
  const own = outlets.filter(({ wall }) => wall.face === face);
  const leavesElsewhere = outlets.some(({ wall }) => wall.face === "top" || wall.face === "bottom");
  if (own.length === 0 && !leavesElsewhere) return undefined;
  const open = own.reduce((sum, each) => sum + each.area, 0);
  if (open >= 0.98 * width * height) return undefined;
  const x = face === "entry" ? -1000 * unit.casing.panelThickness : 1000 * unit.length;
  const part = crossPanel(unit, face, `${faceNames[face]} panel`, build, x, width * height, open);
  return placedPart(part, "casing", placed[place]?.section.name, origin);
}
