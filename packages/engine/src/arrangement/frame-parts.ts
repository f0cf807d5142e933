import type { SectionPart } from "#section/part";
import { ringForm } from "#section/part-form";
import { casingFrameSource, casingFrames } from "#standard/casing-frame";
import type { Unit } from "#unit/unit";
import { type Part, partGroup, placedPart } from "./part.ts";

const origin = { x: 0, y: 0, z: 0 };

/** mm: the outside of the cabinet, from −panel to the size and a panel. */
interface Outside {
  readonly panel: number;
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** The edges of the cabinet: four along it, four at each end, and a ring at each joint of pieces. */
export function frameParts(unit: Unit, joints: readonly number[]): Part {
  const panel = 1000 * unit.casing.panelThickness;
  const size = { panel, length: 1000 * unit.length, width: 1000 * unit.frame.width, height: 1000 * unit.frame.height };
  const parts = [...longEdges(unit, size), ...endEdges(unit, size), ...jointRings(unit, size, joints)];
  return partGroup(
    "frame",
    "frame",
    undefined,
    parts.map((part) => placedPart(part, "frame", undefined, origin)),
  );
}

/** kg for each mm of edge. */
function perMillimetre(unit: Unit): number {
  return (casingFrames[unit.casing.frame].massPerLength * (unit.casing.panelThickness / 0.05)) / 1000;
}

function edge(unit: Unit, key: string, box: SectionPart["box"], pieces = 1): SectionPart {
  const long = Math.max(box.length, box.width, box.height);
  return {
    key,
    name: "frame edge",
    kind: "frame",
    material: casingFrames[unit.casing.frame].material,
    box,
    mass: pieces * long * perMillimetre(unit),
    massSource: casingFrameSource,
    bought: unit.casing.frame === "self-supporting panels" ? "corner angle" : `${unit.casing.frame} profile`,
  };
}

/** Edges along the unit, in the corners that the panels leave free. */
function longEdges(unit: Unit, { panel, length, width, height }: Outside): readonly SectionPart[] {
  const corners = [
    ["right below", -panel, -panel],
    ["left below", width, -panel],
    ["right above", -panel, height],
    ["left above", width, height],
  ] as const;
  return corners.map(([key, y, z]) =>
    edge(unit, key, { x: -panel, y, z, length: length + 2 * panel, width: panel, height: panel }),
  );
}

/** Posts and cross pieces at both ends. */
function endEdges(unit: Unit, { panel, length, width, height }: Outside): readonly SectionPart[] {
  return [
    ["entry", -panel],
    ["exit", length],
  ].flatMap(([name, at]) => {
    const x = at as number;
    const along = { x, length: panel };
    return [
      edge(unit, `${name} post right`, { ...along, y: -panel, z: 0, width: panel, height }),
      edge(unit, `${name} post left`, { ...along, y: width, z: 0, width: panel, height }),
      edge(unit, `${name} sill`, { ...along, y: 0, z: -panel, width, height: panel }),
      edge(unit, `${name} head`, { ...along, y: 0, z: height, width, height: panel }),
    ];
  });
}

/** A joint of two pieces: a ring of edges on both sides, built into the panels, with gasket and bolts. */
function jointRings(unit: Unit, { panel, width, height }: Outside, joints: readonly number[]): readonly SectionPart[] {
  return joints.map((at, index) => {
    const box = {
      x: at - panel,
      y: -panel,
      z: -panel,
      length: 2 * panel,
      width: width + 2 * panel,
      height: height + 2 * panel,
    };
    const around = 2 * (width + height + 4 * panel);
    // Sponge gasket an inch wide: 0.08 kg/m, from memory. The bolts are among the fasteners.
    return {
      ...edge(unit, `joint ${index + 1}`, box),
      name: "joint with gasket",
      mass: around * (2 * perMillimetre(unit) + 0.000_08),
      shares: true,
      form: ringForm("x", panel / box.width, panel / box.height),
    };
  });
}
