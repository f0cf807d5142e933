import { sheetMass } from "#component/sheet-metal";
import { type MaterialName, materialSource, materials, type SheetMetal } from "#standard/material";
import type { SheetGaugeName } from "#standard/sheet-gauge";

/** What a part is, so that a drawing can show it and a list can group it. */
export type PartKind =
  | "assembly"
  | "panel"
  | "sheet"
  | "frame"
  | "rail"
  | "roof"
  | "door"
  | "window"
  | "collar"
  | "pan"
  | "screen"
  | "blades"
  | "damper"
  | "actuator"
  | "filter"
  | "fins"
  | "tubes"
  | "header"
  | "pipe"
  | "wheel"
  | "housing"
  | "shaft"
  | "bearing"
  | "motor"
  | "drive"
  | "guard"
  | "spring"
  | "flexible"
  | "restraint"
  | "trap"
  | "light"
  | "lug"
  | "fastener"
  | "box";

/** A box in millimetres: x along the airflow, y from the right wall to the left as the air sees them, z up. */
export interface PartBox {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** What fills a part's box where that is not a plain box, for solids and silhouettes. */
export type PartForm =
  | { readonly shape: "cylinder"; readonly axis: "x" | "y" | "z" }
  /** Outlines drawn out along an axis over the whole box: pairs of shares (0…1) of its two other sides, in the order x, y, z. */
  | {
      readonly shape: "prisms";
      readonly axis: "x" | "y" | "z";
      readonly outlines: () => readonly (readonly number[])[];
    };

/** A rectangle of sheet to be cut, mm, flanges included. */
export interface Blank {
  readonly length: number;
  readonly width: number;
  readonly count: number;
}

/** A size in millimetres, along the airflow, across and up, and how many pieces have it. */
export interface PieceSize {
  readonly size: readonly [number, number, number];
  readonly count: number;
}

/** Blanks of one sheet. */
export interface SheetCut {
  readonly metal: SheetMetal;
  readonly gauge: SheetGaugeName;
  readonly blanks: readonly Blank[];
}

/** A part of a section in the section's own millimetres: x from its entry plane, y from the right wall, z from the floor. */
export interface SectionPart {
  /** Told apart among the parts of its parent. */
  readonly key: string;
  readonly name: string;
  readonly kind: PartKind;
  /** Undefined for assemblies. */
  readonly material?: MaterialName;
  readonly box: PartBox;
  readonly form?: PartForm;
  /** kg, dry, without what its children weigh. */
  readonly mass: number;
  /** kg that it carries when the unit runs: water in tubes and on fins, dust in filters. */
  readonly carried?: number;
  readonly massSource: string;
  /** Water stands on it or runs over it. */
  readonly wet?: boolean;
  /** It lies in the same space as its neighbours: fins on tubes, a wheel in its housing. */
  readonly shares?: boolean;
  /** It is drawn out through the service side as a whole: a coil with its tube sheets and headers. */
  readonly pulled?: boolean;
  /** Pieces alike in the box. */
  readonly count?: number;
  /** Sizes of pieces that do not fill the box, mm: depth, width, height of each, and how many. */
  readonly pieces?: readonly PieceSize[];
  /** What is cut for it. */
  readonly sheets?: readonly SheetCut[];
  /** What fills it besides its sheets: m³ of foam or wool between two skins. */
  readonly filling?: { readonly material: MaterialName; readonly volume: number };
  /** What it is ordered by: the catalogue record, or a family and a size. */
  readonly bought?: string;
  /** Bought things on it, one of each: hinges and latches of a door. */
  readonly fittings?: readonly string[];
  /** Cents, where its price was entered with it. */
  readonly price?: number;
  readonly children?: readonly SectionPart[];
}

/** Walls of the cabinet, as the air sees them. */
export type WallFace = "entry" | "exit" | "right" | "left" | "top" | "bottom";

/** A door, hatch or opening in a wall; the arrangement gives it the wall's thickness and takes it out of the panel. */
export interface WallPart {
  readonly key: string;
  readonly name: string;
  readonly kind: "door" | "hatch" | "collar" | "pipe" | "fixture";
  readonly face: WallFace;
  /** In the section's own millimetres; flat in the direction across the wall. */
  readonly box: PartBox;
  /** What air passes an opening; undefined for doors and hatches. */
  readonly air?: "outside" | "return" | "supply";
  /** Which way a door opens; against the wall pressure when left out. */
  readonly opens?: "outward" | "inward";
  /** Edge on which a door is hinged; the arrangement chooses when left out. */
  readonly hinges?: "upstream" | "downstream";
  readonly window?: boolean;
  /** m that a pipe reaches into the cabinet, to what it joins. */
  readonly reach?: number;
  /** What a fixture on the outside is ordered by. */
  readonly bought?: string;
  /** Bought things on a pipe, one of each: a valve, a vent. */
  readonly fittings?: readonly string[];
}

/** What a section is built of. */
export interface SectionParts {
  readonly inside: readonly SectionPart[];
  readonly walls: readonly WallPart[];
}

/** A box from metres. */
export function boxOf(x: number, y: number, z: number, length: number, width: number, height: number): PartBox {
  return {
    x: 1000 * x,
    y: 1000 * y,
    z: 1000 * z,
    length: 1000 * length,
    width: 1000 * width,
    height: 1000 * height,
  };
}

/** A blank from metres. */
export function blank(length: number, width: number, count = 1): Blank {
  return { length: 1000 * length, width: 1000 * width, count };
}

type Extras = Partial<Pick<SectionPart, "wet" | "shares" | "count" | "pieces" | "carried" | "bought" | "form">>;

/** A part cut from sheet: its mass is that of its blanks. */
export function sheetPart(
  key: string,
  name: string,
  kind: PartKind,
  metal: SheetMetal,
  gauge: SheetGaugeName,
  box: PartBox,
  blanks: readonly Blank[],
  extras: Extras = {},
): SectionPart {
  const area = blanks.reduce((sum, each) => sum + each.count * each.length * each.width, 0) / 1e6;
  return {
    key,
    name,
    kind,
    material: metal,
    box,
    mass: area * sheetMass(metal, gauge),
    massSource: `manufacturers-standard-gauge ${gauge} ga, blanks`,
    sheets: [{ metal, gauge, blanks }],
    ...extras,
  };
}

/** A part of `volume` (m³) of a material. */
export function solidPart(
  key: string,
  name: string,
  kind: PartKind,
  material: MaterialName,
  box: PartBox,
  volume: number,
  extras: Extras = {},
): SectionPart {
  const mass = volume * materials[material].density;
  return { key, name, kind, material, box, mass, massSource: materialSource, ...extras };
}

/** A part whose mass (kg) is known from a record or a table. */
export function weighedPart(
  key: string,
  name: string,
  kind: PartKind,
  material: MaterialName,
  box: PartBox,
  mass: number,
  massSource: string,
  extras: Extras = {},
): SectionPart {
  return { key, name, kind, material, box, mass, massSource, ...extras };
}

/** Parts that belong together; the box is the one around them. */
export function assembly(
  key: string,
  name: string,
  children: readonly SectionPart[],
  extras: Pick<SectionPart, "shares" | "pulled"> = {},
): SectionPart {
  const box = boxAround(children.map((each) => each.box));
  return { key, name, kind: "assembly", box, mass: 0, massSource: "definition sum of its parts", children, ...extras };
}

/** The box around boxes; nothing at the origin when there are none. */
export function boxAround(boxes: readonly PartBox[]): PartBox {
  if (boxes.length === 0) return { x: 0, y: 0, z: 0, length: 0, width: 0, height: 0 };
  let [x, y, z] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [toX, toY, toZ] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const box of boxes) {
    x = Math.min(x, box.x);
    y = Math.min(y, box.y);
    z = Math.min(z, box.z);
    toX = Math.max(toX, box.x + box.length);
    toY = Math.max(toY, box.y + box.width);
    toZ = Math.max(toZ, box.z + box.height);
  }
  return { x, y, z, length: toX - x, width: toY - y, height: toZ - z };
}
