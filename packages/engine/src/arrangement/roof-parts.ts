import { sheetMass } from "#component/sheet-metal";
import { blank, type PartForm, type SectionPart } from "#section/part";
import { prisms } from "#section/part-form";
import type { Unit } from "#unit/unit";
import { type Part, partGroup, placedPart } from "./part.ts";

const origin = { x: 0, y: 0, z: 0 };
/** mm between ceiling panel and the low edge of the roof. */
const roofGap = 35;
/** Seams, drip edges and the purlins under the sheet, over its area; common practice. */
const seamsAndPurlins = 0.45;

/** Where a unit stands, as far as its roof asks. */
export type Placement = "roof" | "ground" | "indoor";

/** True when the unit has a weather roof. */
export function hasRoof(unit: Unit, placement: Placement): boolean {
  return unit.casing.roof === "weather roof" || (unit.casing.roof === "as placed" && placement !== "indoor");
}

/** mm from the ceiling panel's top to the roof's highest point. */
export function roofRise(unit: Unit): number {
  const across = 1000 * (unit.frame.width + 2 * unit.casing.panelThickness + 2 * unit.casing.roofOverhang);
  return roofGap + across * unit.casing.roofSlope + 40;
}

/** The sheet in shares of the roof's box: low on the side away from the doors, with a drip edge on both. */
function slopedForm(unit: Unit, { height }: SectionPart["box"]): PartForm {
  const [low, high] = [roofGap / height, (height - 20) / height];
  const [thick, drip] = [12 / height, 30 / height];
  const edge = 0.004;
  const at = (y: number, z: number) => (unit.frame.hand === "right" ? [1 - y, z] : [y, z]);
  const outline = [
    ...[at(0, low - drip), at(0, low + thick), at(1, high + thick), at(1, high - drip), at(1 - edge, high - drip)],
    ...[at(1 - edge, high), at(edge, low), at(edge, low - drip)],
  ];
  return prisms("x", () => [outline.flat()]);
}

/** The weather roof over the cabinet: seamed sheet on purlins, falling away from the doors. */
export function roofParts(unit: Unit, placement: Placement): Part | undefined {
  if (!hasRoof(unit, placement)) return undefined;
  const { panelThickness, roofOverhang, roofSlope, outerMetal } = unit.casing;
  const beyond = panelThickness + roofOverhang;
  const length = unit.length + 2 * beyond;
  const width = unit.frame.width + 2 * beyond;
  const sloped = width * Math.hypot(1, roofSlope);
  const box = {
    x: -1000 * beyond,
    y: -1000 * beyond,
    z: 1000 * (unit.frame.height + panelThickness),
    length: 1000 * length,
    width: 1000 * width,
    height: roofRise(unit),
  };
  const perArea = sheetMass(outerMetal, "18");
  const common = { kind: "roof", material: outerMetal, box, shares: true, wet: true } as const;
  const sheet: SectionPart = {
    ...common,
    form: slopedForm(unit, box),
    key: "sheet",
    name: "roof sheet",
    mass: length * sloped * perArea,
    massSource: "manufacturers-standard-gauge 18 ga by area",
    sheets: [
      {
        metal: outerMetal,
        gauge: "18",
        blanks: [blank(sloped, length / Math.ceil(length / 1.2) + 0.08, Math.ceil(length / 1.2))],
      },
    ],
  };
  const rest: SectionPart = {
    ...common,
    key: "purlins",
    name: "seams, drip edges and purlins",
    mass: seamsAndPurlins * length * sloped * perArea,
    massSource: "from-memory share of the sheet, as common in the trade",
  };
  return partGroup(
    "roof",
    "weather roof",
    undefined,
    [sheet, rest].map((part) => placedPart(part, "roof", undefined, origin)),
  );
}
