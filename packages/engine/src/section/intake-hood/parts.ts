import type { Frame } from "../contract.ts";
import {
  type Blank,
  blank,
  boxOf,
  type PartForm,
  type SectionPart,
  type SectionParts,
  sheetPart,
  solidPart,
} from "../part.ts";
import { prisms } from "../part-form.ts";
import { screenPart } from "../screen-part.ts";
import type { IntakeHoodDesign } from "./design.ts";

/** m: sheet as drawn, fold round each edge, drain under a hood that has a floor. */
const sheetDepth = 0.003;
const flange = 0.05;
const drain = 0.034;

/** The hood before the cabinet: roof, two cheeks, front or floor with its drain, screen; its throat in the entry wall. */
export function intakeHoodParts(design: IntakeHoodDesign, frame: Frame): SectionParts {
  const { projection, width, throatHeight } = design;
  const y = (frame.width - width) / 2;
  const bottom = frame.height - throatHeight;
  const slope = Math.min(0.55 * projection, 0.32 * throatHeight);
  const hood: Hood = { projection, width, y, bottom, high: throatHeight, slope, front: throatHeight - slope };
  const throat = boxOf(0, y, bottom, 0, width, throatHeight);
  return {
    inside: [...hoodSheets(hood), ...(design.facesDown ? openBelow(design, hood) : openBefore(design, hood))],
    walls: [{ key: "throat", name: "throat of the hood", kind: "collar", air: "outside", face: "entry", box: throat }],
  };
}

/** m: how far it stands out, how wide and where, its foot, height at the wall, fall of its roof, height in front. */
interface Hood {
  readonly projection: number;
  readonly width: number;
  readonly y: number;
  readonly bottom: number;
  readonly high: number;
  readonly slope: number;
  readonly front: number;
}

function hoodSheets({ projection, width, y, bottom, high, slope, front }: Hood): readonly SectionPart[] {
  const long = Math.hypot(projection, slope) + 0.05;
  const low = bottom + 0.03;
  const fall = slope / (high - 0.03);
  const thick = sheetDepth / (high - 0.03);
  const roof = prisms("y", () => [[0, 1 - fall - thick, 1, 1 - thick, 1, 1, 0, 1 - fall]]);
  const cheek = prisms("y", () => [[0, 0, 1, 0, 1, 1, 0, 1 - fall]]);
  const cheekHeight = (high + front) / 2;
  const side = (key: string, at: number) =>
    hoodSheet(key, "hood cheek", "sheet", boxOf(0, at, low, projection, sheetDepth, high - 0.03), cheek, [
      blank(projection + flange, cheekHeight + 2 * flange),
    ]);
  return [
    hoodSheet("roof", "hood roof", "roof", boxOf(0, y, low, projection, width, high - 0.03), roof, [
      blank(long + flange, width + 2 * flange),
    ]),
    side("cheek right", y),
    side("cheek left", y + width - sheetDepth),
  ];
}

/** A front sheet; the screen lies in the opening below, where the drip edge sheds what the hood catches. */
function openBelow(design: IntakeHoodDesign, hood: Hood): readonly SectionPart[] {
  const { projection, width, y, bottom, front } = hood;
  const box = boxOf(0, y, bottom + 0.03, sheetDepth, width, front - 0.03);
  return [
    hoodSheet("front", "hood front with drip edge", "sheet", box, undefined, [
      blank(front + 2 * flange, width + 2 * flange),
    ]),
    screenPart("bird screen", design.screen, boxOf(0, y, bottom + 0.02, projection, width, 0.005)),
  ];
}

/** A floor that falls to its drain; the screen stands in the front. */
function openBefore(design: IntakeHoodDesign, hood: Hood): readonly SectionPart[] {
  const { projection, width, y, bottom, front } = hood;
  const floor = boxOf(0, y, bottom + 0.03, projection, width, sheetDepth);
  const pipe = boxOf(0.1 * projection, y + width / 2 - drain / 2, bottom, drain, drain, 0.03);
  return [
    hoodSheet("floor", "hood floor", "sheet", floor, undefined, [blank(projection + 2 * flange, width + 2 * flange)]),
    solidPart("drain", "hood drain", "pipe", "stainless steel 304", pipe, Math.PI * drain * 0.003 * 0.06, {
      wet: true,
    }),
    {
      ...screenPart("bird screen", design.screen, boxOf(0.04, y, bottom + 0.034, 0.005, width, front - 0.04)),
      shares: true,
    },
  ];
}

function hoodSheet(
  key: string,
  name: string,
  kind: "roof" | "sheet",
  box: SectionPart["box"],
  form: PartForm | undefined,
  blanks: readonly Blank[],
): SectionPart {
  const extras = { shares: true, wet: true, ...(form === undefined ? {} : { form }) };
  return sheetPart(key, name, kind, "galvanized steel", "16", box, blanks, extras);
}
