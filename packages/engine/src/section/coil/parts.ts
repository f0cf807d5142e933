import { finMaterials, tubeMaterials } from "#component/finned-surface/material";
import type { Liquid } from "#fluid/liquid";
import { liquidDensity } from "#fluid/liquid";
import type { MaterialName, SheetMetal } from "#standard/material";
import { partMasses } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import { assembly, blank, boxOf, type SectionPart, sheetPart, solidPart, weighedPart } from "../part.ts";
import { blankOffs } from "../service-parts.ts";
import { type CoilBlock, casingFlange } from "./block.ts";
import { type CoilPiping, fillingTemperature, headersOf, tubeMetal, type Zones, zonesOf } from "./connections.ts";

/** What goes with the cores of a section's coils. */
export interface CoilFittings extends CoilPiping {
  /** Water runs over the fins: stainless casing, water on the fins. */
  readonly wet: boolean;
  /** m: the tubes inside that spread steam. */
  readonly inner?: { readonly outsideDiameter: number; readonly wall: number };
  /** The airway beside the coils is closed with sheet. */
  readonly blankOff: boolean;
}

/** The filling of coils whose liquid the duty names: weighed as water, which glycol passes by 5 % at most. */
export const fillingWater: Liquid = { substance: "water", massFraction: 0 };
/** m between supports of long tubes; common practice. */
const supportSpacing = 1.2;

/** The coils of a section with casing, fins, tubes, headers and filling, on their supports, with blank-offs. */
export function coilParts(block: CoilBlock, frame: Frame, fittings: CoilFittings): readonly SectionPart[] {
  const zones = zonesOf(block, frame, fittings);
  const coils = Array.from({ length: block.stacked }, (_, index) => coilAssembly(block, index, zones, fittings));
  const open = {
    ...coilSpan(block, frame, fittings),
    z: block.base,
    height: block.pitch * (block.stacked - 1) + block.casingHeight,
  };
  const sheets = fittings.blankOff ? blankOffs(frame, block.start, open, fittings.wet) : [];
  return [...coils, ...supports(block, zones, fittings), ...sheets.filter((sheet) => sheet.key !== "blank-off below")];
}

/** m from the right wall to the coils' casings, and their width. */
export function coilSpan(
  block: CoilBlock,
  frame: Frame,
  piping: Pick<CoilPiping, "liquid">,
): { readonly y: number; readonly width: number } {
  const y = Math.max(0, zonesOf(block, frame, piping).from - casingFlange);
  return { y, width: Math.min(frame.width - y, block.coil.finnedLength + 2 * casingFlange) };
}

function coilAssembly(block: CoilBlock, index: number, zones: Zones, fittings: CoilFittings): SectionPart {
  const children = [
    ...casingOf(block, index, zones, fittings),
    coreOf(block, index, zones, fittings),
    ...headersOf(block, index, zones, fittings),
  ];
  return assembly(`coil ${index + 1}`, block.stacked === 1 ? "coil" : `coil ${index + 1} from below`, children, {
    pulled: true,
  });
}

function casingOf(block: CoilBlock, index: number, zones: Zones, { wet }: CoilFittings): readonly SectionPart[] {
  const { finnedLength } = block.coil;
  const metal: SheetMetal = wet ? "stainless steel 304" : "galvanized steel";
  const z = block.base + index * block.pitch;
  const top = z + block.casingHeight - casingFlange;
  const plate = (key: string, name: string, at: number) =>
    sheetPart(
      key,
      name,
      "sheet",
      metal,
      "16",
      boxOf(block.start, zones.from, at, block.casingDepth, finnedLength, casingFlange),
      [blank(finnedLength, block.casingDepth + 2 * casingFlange)],
      { wet },
    );
  const sheetWidth = Math.min(casingFlange, zones.from);
  const tubeSheet = (key: string, y: number) =>
    sheetPart(
      key,
      "tube sheet",
      "sheet",
      metal,
      "16",
      boxOf(block.start, y, z, block.casingDepth, sheetWidth, block.casingHeight),
      [blank(block.casingHeight, block.casingDepth + 2 * casingFlange)],
      { wet },
    );
  return [
    plate("bottom plate", "bottom plate", z),
    plate("top plate", "top plate", top),
    tubeSheet("tube sheet right", zones.from - sheetWidth),
    tubeSheet("tube sheet left", zones.from + finnedLength),
  ];
}

/** Fins, tubes and their supports share one space; the tubes carry the filling, wet fins the water on them. */
function coreOf(block: CoilBlock, index: number, zones: Zones, { wet, liquid, inner }: CoilFittings): SectionPart {
  const { coil } = block;
  const { bank } = coil;
  const z = block.base + index * block.pitch + casingFlange;
  const box = boxOf(
    block.start + casingFlange,
    zones.from,
    z,
    bank.depth,
    coil.finnedLength,
    block.casingHeight - 2 * casingFlange,
  );
  const tubes = bank.rows * bank.tubesPerRow;
  const round = (outside: number, inside: number) => (Math.PI * (outside ** 2 - inside ** 2)) / 4;
  const metal = round(bank.tubeOutsideDiameter, bank.tubeInsideDiameter);
  const bends = liquid === undefined ? 0 : ((tubes - coil.circuits) * Math.PI * bank.transversePitch) / 2;
  const filling = liquid === undefined ? 0 : coil.tubeVolume * liquidDensity(liquid, fillingTemperature);
  const shares = { shares: true, wet } as const;
  const tubeMass = metal * (tubes * coil.finnedLength + bends) * tubeMaterials[coil.tubeMaterial].density;
  const finMass = (bank.finArea / 2) * coil.finThickness * finMaterials[coil.finMaterial].density;
  const children: SectionPart[] = [
    weighedPart("fins", "fins", "fins", finMetal(coil.finMaterial), box, finMass, "definition area by thickness", {
      ...shares,
      count: Math.round(coil.finnedLength * coil.finsPerLength),
      carried: wet ? partMasses.waterOnFins * bank.finArea : 0,
    }),
    weighedPart("tubes", "tubes", "tubes", tubeMetal(coil.tubeMaterial), box, tubeMass, "definition walls by length", {
      ...shares,
      count: tubes,
      carried: filling,
    }),
  ];
  if (inner !== undefined) children.push(innerTubes(coil.finnedLength, tubes, inner, box));
  const between = Math.ceil(coil.finnedLength / supportSpacing) - 1;
  if (between > 0) {
    const sheet = wet ? "stainless steel 304" : "galvanized steel";
    const size = blank(block.casingHeight - 2 * casingFlange, bank.depth + 2 * casingFlange, between);
    children.push(
      sheetPart("supports", "tube supports", "sheet", sheet, "16", box, [size], { ...shares, count: between }),
    );
  }
  return assembly("core", "finned core", children);
}

/** Tubes inside that spread the steam. */
function innerTubes(
  length: number,
  tubes: number,
  { outsideDiameter, wall }: { readonly outsideDiameter: number; readonly wall: number },
  box: ReturnType<typeof boxOf>,
): SectionPart {
  const volume = tubes * length * Math.PI * (outsideDiameter - wall) * wall;
  return solidPart("inner tubes", "steam-distributing tubes", "tubes", "copper", box, volume, {
    shares: true,
    count: tubes,
  });
}

/** Two rails under the lowest coil; stacked ones stand on one another's casings. */
function supports(block: CoilBlock, zones: Zones, { wet }: CoilFittings): readonly SectionPart[] {
  const width = block.coil.finnedLength;
  const height = Math.min(0.035, block.base);
  return [0.01, block.casingDepth - 0.05].map((at, index) =>
    sheetPart(
      `support ${index + 1}`,
      "coil support",
      "rail",
      wet ? "stainless steel 304" : "galvanized steel",
      "12",
      boxOf(block.start + Math.max(0.005, at), zones.from, block.base - height, 0.03, width, height),
      [blank(width, height + 0.09)],
      { wet },
    ),
  );
}

function finMetal(name: keyof typeof finMaterials): MaterialName {
  if (name === "copper") return "copper";
  return name === "stainless steel" ? "stainless steel 304" : "aluminium";
}
