import { channelSection } from "#component/base-rail";
import type { SectionPart } from "#section/part";
import { materialSource, materials } from "#standard/material";
import { partMasses } from "#standard/part-mass";
import type { Unit } from "#unit/unit";
import { type Part, partGroup, placedPart } from "./part.ts";

const origin = { x: 0, y: 0, z: 0 };
/** mm between cross members; common practice. */
const crossSpacing = 610;

/** A lifting lug, mm. */
export interface Lug {
  readonly x: number;
  readonly y: number;
}

/** Channels along both sides and across; nothing when the unit has no rail. */
export function baseParts(unit: Unit): Part | undefined {
  const { railHeight, railThickness, railFlange, panelThickness } = unit.casing;
  if (railHeight < 0.03) return undefined;
  const panel = 1000 * panelThickness;
  const height = 1000 * railHeight;
  const flange = Math.min(1000 * railFlange, 400 * unit.frame.width);
  const length = 1000 * unit.length + 2 * panel;
  const width = 1000 * unit.frame.width + 2 * panel;
  const z = -panel - height;
  const section = channelSection(railHeight, railFlange, Math.min(railThickness, railHeight / 3));
  const perMillimetre = (section.area * materials.steel.density) / 1000;
  const parts: SectionPart[] = [
    channel("rail right", "base rail", { x: -panel, y: -panel, z, length, width: flange, height }, perMillimetre),
    channel(
      "rail left",
      "base rail",
      { x: -panel, y: width - panel - flange, z, length, width: flange, height },
      perMillimetre,
    ),
    ...crossMembers(length, width - 2 * flange, flange, { x: -panel, y: flange - panel, z, height }, perMillimetre),
  ];
  return partGroup(
    "base",
    "base",
    undefined,
    parts.map((part) => placedPart(part, "base", undefined, origin)),
  );
}

function channel(key: string, name: string, box: SectionPart["box"], perMillimetre: number): SectionPart {
  const mass = Math.max(box.length, box.width) * perMillimetre;
  return { key, name, kind: "rail", material: "steel", box, mass, massSource: materialSource };
}

/** Channels across at both ends and between, the inner ones two thirds as heavy. */
function crossMembers(
  length: number,
  inside: number,
  flange: number,
  at: { readonly x: number; readonly y: number; readonly z: number; readonly height: number },
  perMillimetre: number,
): readonly SectionPart[] {
  const bays = Math.max(1, Math.round((length - flange) / crossSpacing));
  const deep = Math.min(flange, (0.8 * (length - flange)) / bays);
  return Array.from({ length: bays + 1 }, (_, index) => {
    const isEnd = index === 0 || index === bays;
    const x = at.x + ((length - deep) * index) / bays;
    const box = { x, y: at.y, z: at.z, length: deep, width: inside, height: at.height };
    const name = isEnd ? "end rail" : "cross member";
    return {
      ...channel(`across ${index + 1}`, name, box, perMillimetre),
      mass: inside * perMillimetre * (isEnd ? 1 : 2 / 3),
    };
  });
}

/** The lugs on the rails; nothing when there are none. */
export function lugParts(unit: Unit, lugs: readonly Lug[]): Part | undefined {
  if (lugs.length === 0) return undefined;
  const height = 1000 * unit.casing.railHeight;
  const z = -1000 * unit.casing.panelThickness - height;
  const parts = lugs.map((lug, index) => placedPart(lugPart(lug, index, z, height), "lugs", undefined, origin));
  return partGroup("lugs", "lifting lugs", undefined, parts);
}

/** A lug outside the rail's web. */
function lugPart(lug: Lug, index: number, z: number, height: number): SectionPart {
  const size = Math.min(100, height);
  const box = {
    x: lug.x - size / 2,
    y: lug.y < 0 ? lug.y - size : lug.y,
    z: z + (height - size) / 2,
    length: size,
    width: size,
    height: size,
  };
  return {
    key: `lug ${index + 1}`,
    name: "lifting lug",
    kind: "lug",
    material: "steel",
    box,
    mass: partMasses.liftingLug,
    massSource: partMasses.source,
  };
}
